package ellwand.trial;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/**
 * A job made at random, as its file has it (JSON is YAML): everything that a job may say of pieces
 * and cloths, in mm, legal or nearly so. A number makes the same job each time.
 */
final class RandomJob {

  private static final ObjectMapper JSON = new ObjectMapper();

  private static final List<String> FOLDS =
      List.of(
          "open",
          "lengthwise fold",
          "part fold",
          "double fold",
          "crosswise fold",
          "crosswise turned");

  private final Dice dice;
  private final ObjectNode job = JSON.createObjectNode();
  private final List<String> pieces = new ArrayList<>();
  private final boolean sizes;
  private final boolean lining;
  private final boolean stripes;

  /** About how large pieces are, mm. */
  private final double scale;

  private RandomJob(long number) {
    dice = new Dice(number);
    sizes = dice.chance(6);
    lining = dice.chance(4);
    stripes = dice.chance(4);
    scale = dice.between(30, 300);
  }

  static JsonNode of(long number) {
    return new RandomJob(number).job();
  }

  private JsonNode job() {
    job.put("ellwand", 1).put("unit", "mm");
    ObjectNode style = job.putObject("style");
    style.put("name", "Tabard").put("allowance", dice.chance(2) ? 0 : dice.between(0, 20));
    if (sizes) {
      style.put("size", "M");
    }
    ObjectNode drawn = style.putObject("pieces");
    int count = 1 + dice.nextInt(4);
    for (int i = 0; i < count; i++) {
      String name = "piece " + (char) ('a' + i);
      pieces.add(name);
      drawn.set(name, piece());
    }
    if (dice.chance(7)) {
      drawn.set("strip", computed());
    }
    if (stripes && count > 1) {
      matches(style.putArray("match"));
    }
    if (sizes) {
      grading();
    }
    ObjectNode cloths = job.putObject("cloths");
    cloths.set("main", cloth());
    if (lining) {
      cloths.set("lining", cloth());
    }
    ObjectNode order = job.putObject("order");
    if (sizes) {
      order.putObject("garments").put("S", 1).put("M", 1).put("L", 1);
    } else {
      order.put("garments", dice.chance(4) ? 2 : 1);
    }
    return job;
  }

  private ObjectNode piece() {
    ObjectNode piece = JSON.createObjectNode();
    boolean half = dice.chance(3);
    double length = scale * dice.share(0.4, 2);
    double width = scale * dice.share(0.3, 1.5);
    ArrayNode outline = piece.putArray("outline");
    double[][] points =
        half ? RandomShape.half(dice, length, width) : RandomShape.whole(dice, length, width);
    boolean acrossFold = half && dice.chance(9);
    double dx = half ? 0 : dice.between(-50, 50);
    double dy = half ? 0 : dice.between(-50, 50);
    int n = points.length;
    for (int i = 0; i < n; i++) {
      ObjectNode at = outline.addObject().put("point", "n" + i);
      double x = acrossFold ? points[i][1] : points[i][0] + dx;
      double y = acrossFold ? points[i][0] : points[i][1] + dy;
      place(at.putArray("at"), x, y);
    }
    if (dice.chance(6)) {
      bow(outline, half ? 2 : 1);
    }
    ObjectNode edges = piece.putObject("edges");
    // Of a half the fold comes first.
    if (half) {
      edges.putObject("centre").put("from", "n0").put("to", "n1");
      piece.put("fold", "centre");
    }
    ObjectNode side = edges.putObject("side").put("from", "n1").put("to", "n2");
    if (dice.chance(3)) {
      side.put("allowance", dice.chance(3) ? 0 : dice.between(0, 30));
      if (dice.chance(2)) {
        side.put("turned-back", true);
      }
    }
    ObjectNode cut = piece.putObject("cut");
    cut.put("main", how(half));
    if (lining && dice.chance(2)) {
      cut.put("lining", how(half));
    }
    if (dice.chance(4)) {
      piece.put("allowance", dice.chance(2) ? 0 : dice.between(0, 15));
    }
    if (dice.chance(4)) {
      piece.put(
          "grain",
          dice.any(List.of("along", "across", "either", "bias", "any", "30 deg", "-17.5 deg")));
    }
    if (dice.chance(8)) {
      piece.put("grain-tolerance", (1 + dice.nextInt(10)) + " deg");
    }
    if (dice.chance(8)) {
      piece.put("direction", dice.any(List.of("any way", "one way")));
    }
    double edge = Math.hypot(points[2][0] - points[1][0], points[2][1] - points[1][1]);
    if (dice.chance(4)) {
      // They need an allowance to be cut into.
      piece.put("allowance", 6);
      side.remove("allowance");
      piece.putArray("notches").addObject().put("edge", "side").put("at", edge * 0.3);
    }
    if (dice.chance(6)) {
      ArrayNode path = piece.putObject("lines").putObject("dart").putArray("path");
      place(path.addArray(), dx + length * 0.2, dy + width * 0.2);
      place(path.addArray(), dx + length * 0.5, dy + width * 0.3);
    }
    if (stripes && dice.chance(3)) {
      ObjectNode at = piece.putObject("place").put("at", mark(edge));
      if (dice.chance(2)) {
        at.put("along", dice.between(-20, 20));
      }
      at.put("across", dice.between(-20, 20));
    }
    return piece;
  }

  private String how(boolean half) {
    if (half) {
      return (1 + dice.nextInt(2)) + " on fold";
    }
    return dice.any(List.of("1", "2", "2", "3", "pair", "pair", "2 pairs"));
  }

  private static String mark(double edge) {
    return "side @ " + Math.max(1, Math.rint(edge * 0.4));
  }

  private void place(ArrayNode at, double x, double y) {
    at.add(Math.rint(x * 1000) / 1000).add(Math.rint(y * 1000) / 1000);
  }

  /** Bows the edge that leads to a point. */
  private void bow(ArrayNode outline, int to) {
    JsonNode from = outline.get(to - 1).get("at");
    JsonNode at = outline.get(to).get("at");
    double x = at.get(0).asDouble() - from.get(0).asDouble();
    double y = at.get(1).asDouble() - from.get(1).asDouble();
    double out = dice.share(-0.1, 0.2);
    ArrayNode curve = ((ObjectNode) outline.get(to)).putArray("curve");
    for (double part : new double[] {0.3, 0.7}) {
      place(
          curve.addArray(),
          from.get(0).asDouble() + part * x + out * y,
          from.get(1).asDouble() + part * y - out * x);
    }
  }

  private ObjectNode computed() {
    ObjectNode strip = JSON.createObjectNode();
    if (dice.chance(2)) {
      strip.putObject("cut").put("main", dice.any(List.of("1", "2", "1 on fold")));
      ObjectNode gathered = strip.putObject("gathered");
      gathered.putArray("from").add(dice.any(pieces) + ".side");
      gathered.put("fullness", 1 + dice.nextInt(3) / 2.0).put("length", dice.between(20, 150));
    } else {
      strip.putObject("cut").put("main", "1");
      ObjectNode binding = strip.putObject("binding");
      binding.putArray("from").add(dice.any(pieces) + ".side");
      binding
          .put("width", dice.between(15, 45))
          .put("cut-as", dice.any(List.of("strips", "square")));
    }
    return strip;
  }

  private void matches(ArrayNode match) {
    JsonNode drawn = job.get("style").get("pieces");
    for (int i = 1; i < pieces.size(); i++) {
      if (dice.chance(2)) {
        String bars = dice.any(List.of("across", "across", "along", "both"));
        ObjectNode at = match.addObject().put("bars", bars);
        ArrayNode points = at.putArray("points");
        for (String piece : List.of(pieces.get(i - 1), pieces.get(i))) {
          JsonNode outline = drawn.get(piece).get("outline");
          JsonNode from = outline.get(1).get("at");
          JsonNode to = outline.get(2).get("at");
          double x = to.get(0).asDouble() - from.get(0).asDouble();
          points.add(
              piece + "." + mark(Math.hypot(x, to.get(1).asDouble() - from.get(1).asDouble())));
        }
      }
    }
  }

  private void grading() {
    ObjectNode graded = job.putObject("sizes");
    graded.putArray("names").add("S").add("M").add("L");
    ObjectNode grade = graded.putObject("grade");
    for (String piece : pieces) {
      if (dice.chance(2)) {
        place(
            grade.putObject(piece).putArray("n2"),
            scale * dice.share(-0.01, 0.05),
            scale * dice.share(0, 0.04));
      }
    }
  }

  private ObjectNode cloth() {
    ObjectNode cloth = JSON.createObjectNode();
    double width = scale * dice.share(1.5, 7);
    cloth.put("width", Math.rint(width * 1000) / 1000);
    boolean tube = dice.chance(10);
    if (tube) {
      cloth.put("tubular", true);
    } else if (dice.chance(2)) {
      cloth.put("selvedge", dice.between(0, 15));
    }
    if (dice.chance(2)) {
      cloth.put("gap", dice.between(0, 6));
    }
    if (dice.chance(2)) {
      cloth.put("direction", dice.any(List.of("any way", "one way", "one way per garment")));
    }
    if (tube && dice.chance(2)) {
      cloth.put("fold", "tubular knit");
    } else if (!tube && !dice.chance(5)) {
      ArrayNode folds = cloth.putArray("fold");
      folds.add(dice.any(FOLDS));
      if (dice.chance(3) && !folds.get(0).asText().equals("open")) {
        folds.add("open");
      }
    }
    if (dice.chance(6)) {
      cloth.put("grain-tolerance", (1 + dice.nextInt(8)) + " deg");
    }
    if (dice.chance(3)) {
      cloth.put("ends", dice.between(0, 60));
    }
    if (stripes) {
      repeat(cloth.putObject("repeat"));
    }
    if (dice.chance(5)) {
      flaws(cloth.putArray("flaws"), width);
    }
    if (dice.chance(8) && !cloth.has("flaws") && !stripes) {
      cloth
          .putObject("shrinkage")
          .put("along", dice.nextInt(9) + " %")
          .put("across", dice.nextInt(9) + " %")
          .put("when", dice.any(List.of("before cutting", "after")));
    }
    if (dice.chance(4)) {
      ArrayNode wishes = cloth.putArray("wishes");
      for (String wish :
          List.of("garments together", "one left-over", "straight cuts", "small off the end")) {
        if (dice.chance(2)) {
          wishes.add(wish);
        }
      }
    }
    return cloth;
  }

  private void repeat(ObjectNode repeat) {
    boolean checks = dice.chance(2);
    if (checks || dice.chance(2)) {
      repeat.put("along", dice.between(20, 100));
    }
    if (checks || !repeat.has("along")) {
      repeat.put("across", dice.between(20, 100));
    }
    if (checks && dice.chance(4)) {
      repeat.put("half-drop", true);
    }
    if (dice.chance(4)) {
      repeat.putArray("uneven").add(repeat.has("along") ? "along" : "across");
    }
    if (dice.chance(2)) {
      ObjectNode start = repeat.putObject("start");
      if (repeat.has("along")) {
        start.put("along", dice.between(0, 30));
      }
      if (repeat.has("across")) {
        start.put("across", dice.between(0, 30));
      }
    }
  }

  private void flaws(ArrayNode flaws, double width) {
    int count = 1 + dice.nextInt(3);
    for (int i = 0; i < count; i++) {
      ObjectNode flaw = flaws.addObject().put("name", "hole " + i);
      place(flaw.putArray("at"), dice.between(0, 2 * scale), dice.between(0, width * 0.9));
      if (dice.chance(2)) {
        flaw.put("radius", dice.between(1, scale / 4));
      } else {
        flaw.put("length", dice.between(1, scale / 3)).put("width", dice.between(1, width * 0.1));
      }
    }
  }
}
