package ellwand.trial;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * Says what is wrong with a marker, from the numbers in its file and in its job alone: with plane
 * geometry of its own and JTS, and with nothing of the program. Where a number leaves a doubt (a
 * piece that is its own mirror image but for a tenth of a mm), nothing is said.
 */
final class Judge {

  /** Files are rounded to a millionth of a mm, lines to a hundredth. */
  static final double ROUNDING_MM = 0.011;

  private final JsonNode job;
  private final JsonNode cloth;
  private final JsonNode marker;
  private final List<Laid> copies = new ArrayList<>();
  private final Map<String, Drawing> drawings = new HashMap<>();
  private final List<String> faults = new ArrayList<>();
  private final boolean shrunk;

  /** Bare numbers of the job are mm. */
  private Judge(JsonNode job, JsonNode marker) {
    this.job = job;
    this.marker = marker;
    cloth = job.get("cloths").get(marker.get("cloth").asText());
    marker.get("copies").forEach(c -> copies.add(Laid.of(c)));
    job.get("style")
        .get("pieces")
        .fields()
        .forEachRemaining(
            e -> {
              if (e.getValue().has("outline")) {
                drawings.put(e.getKey(), Drawing.of(e.getValue()));
              }
            });
    shrunk = cloth.has("shrinkage");
  }

  static List<String> faults(JsonNode job, JsonNode marker) {
    Judge judge = new Judge(job, marker);
    judge.judge();
    return judge.faults;
  }

  private void judge() {
    folds();
    faults.addAll(new Counts(job, marker, copies, drawings, shrunk).faults());
    Map<String, List<Laid>> alike =
        copies.stream()
            .collect(
                Collectors.groupingBy(
                    c -> c.piece() + "/" + c.size() + "/" + c.form().equals("half"),
                    LinkedHashMap::new,
                    Collectors.toList()));
    alike.values().forEach(this::sameDrawing);
    copies.forEach(this::grain);
    copies.forEach(this::onFold);
    copies.forEach(this::inZone);
    headings();
    gaps();
    // Half a width may be cut on either side of the fold: the marker does not say which.
    OnTheRoll roll = new OnTheRoll(job, cloth, marker, copies, drawings, usable());
    List<List<String>> ways = Sheets.of(marker, usable()).stream().map(roll::faults).toList();
    faults.addAll(
        ways.stream().min((a, b) -> Integer.compare(a.size(), b.size())).orElse(List.of()));
  }

  private double number(JsonNode node, String key) {
    return node.path(key).asDouble(0);
  }

  /** What of the width may be cut; of a tube, its whole round. */
  private double usable() {
    double width = number(cloth, "width") * (cloth.path("tubular").asBoolean() ? 2 : 1);
    if (cloth.path("shrinkage").path("when").asText().equals("before cutting")) {
      width *= 1 - share(cloth.get("shrinkage"), "across");
    }
    return width - 2 * number(cloth, "selvedge");
  }

  private double share(JsonNode node, String key) {
    return node.has(key) ? Double.parseDouble(node.get(key).asText().replace(" %", "")) / 100 : 0;
  }

  private void fault(String what) {
    faults.add(what);
  }

  private void folds() {
    Set<String> allowed = new HashSet<>();
    JsonNode fold = cloth.path("fold");
    if (fold.isArray()) {
      fold.forEach(f -> allowed.add(f.asText()));
    } else if (!fold.isMissingNode()) {
      allowed.add(fold.asText());
    }
    String used = marker.get("fold").asText();
    if (!allowed.isEmpty() && !allowed.contains("any") && !allowed.contains(used)) {
      fault("the cloth lies in a " + used);
    }
    double longest = copies.stream().mapToDouble(c -> box(c).getMaxX()).max().orElse(0);
    if (Math.abs(longest - marker.get("length").asDouble()) > ROUNDING_MM) {
      fault("the marker is " + longest + " mm long, not " + marker.get("length"));
    }
  }

  private static Envelope box(Laid copy) {
    return copy.outline().getEnvelopeInternal();
  }

  /** All copies are one drawing, moved as they say, and that drawing is the job's. */
  private void sameDrawing(List<Laid> alike) {
    Laid first = alike.get(0);
    Polygon drawn = first.drawn();
    for (Laid copy : alike) {
      if (Laid.farthest(drawn, copy.drawn()) > 2 * ROUNDING_MM) {
        fault(copy + " is not drawn like the others");
      }
    }
    Drawing drawing = drawings.get(first.piece());
    if (drawing == null || shrunk || job.has("sizes")) {
      return;
    }
    boolean whole = drawing.fold().isEmpty() || first.form().equals("half");
    Geometry sewing = whole ? drawing.sewing() : drawing.opened();
    double widest = drawing.widest(job.get("style").path("allowance").asDouble());
    double off = sewing.difference(drawn).getArea() / sewing.getLength();
    double beyond =
        drawn.difference(sewing.buffer(4 * widest + 0.2)).getArea() / sewing.getLength();
    if (off > 0.1 || beyond > 0.01) {
      fault(first + " is not what the job draws: " + off + ", " + beyond);
    }
  }

  private void grain(Laid copy) {
    Drawing drawing = drawings.get(copy.piece());
    if (drawing == null) {
      return;
    }
    JsonNode piece = drawing.piece();
    double turn = copy.flipped() ? -copy.turn() : copy.turn();
    String grain = piece.path("grain").asText("along");
    double off =
        switch (grain) {
          case "along" -> Math.IEEEremainder(turn, 180);
          case "across" -> Math.IEEEremainder(turn - 90, 180);
          case "either" -> Math.IEEEremainder(turn, 90);
          case "bias" -> Math.IEEEremainder(turn - 45, 90);
          case "any" -> 0;
          default -> Math.IEEEremainder(turn - Double.parseDouble(grain.split(" ")[0]), 180);
        };
    String most =
        piece.has("grain-tolerance")
            ? piece.get("grain-tolerance").asText()
            : cloth.path("grain-tolerance").asText("0 deg");
    double may =
        cloth.has("repeat") || copy.form().equals("half")
            ? 0
            : Double.parseDouble(most.split(" ")[0]);
    if (Math.abs(off) > may + 1e-6) {
      fault(copy + " lies " + off + " degrees off its grain");
    }
  }

  private void onFold(Laid copy) {
    if (!copy.form().equals("half") || drawings.get(copy.piece()) == null) {
      return;
    }
    Optional<JsonNode> zone = copy.zoneOf(marker);
    LineString fold = drawings.get(copy.piece()).fold().orElseThrow();
    double best = Double.POSITIVE_INFINITY;
    for (JsonNode edge : zone.map(z -> z.get("foldEdges")).orElse(marker.get("keepOuts"))) {
      String side = edge.asText();
      double line =
          zone.get()
              .get(side.equals("low-y") ? "y0" : side.equals("high-y") ? "y1" : "x0")
              .asDouble();
      double off = 0;
      for (Coordinate c : fold.getCoordinates()) {
        Coordinate at = copy.at(grown(copy.piece(), c));
        off = Math.max(off, Math.abs((side.endsWith("y") ? at.y : at.x) - line));
      }
      best = Math.min(best, off);
    }
    if (best > ROUNDING_MM) {
      fault(copy + " lies " + best + " mm off the fold");
    }
  }

  /** Where a drawn place lies on a piece that is cut larger for cloth that shrinks later. */
  private Coordinate grown(String piece, Coordinate drawn) {
    if (!cloth.path("shrinkage").path("when").asText().equals("after")) {
      return drawn;
    }
    double along = 1 / (1 - share(cloth.get("shrinkage"), "along"));
    double across = 1 / (1 - share(cloth.get("shrinkage"), "across"));
    return switch (drawings.get(piece).piece().path("grain").asText("along")) {
      case "along" -> new Coordinate(along * drawn.x, across * drawn.y);
      case "across" -> new Coordinate(across * drawn.x, along * drawn.y);
      default ->
          new Coordinate(Math.max(along, across) * drawn.x, Math.max(along, across) * drawn.y);
    };
  }

  private void inZone(Laid copy) {
    Optional<JsonNode> zone = copy.zoneOf(marker);
    if (zone.isEmpty()) {
      fault(copy + " lies in no zone");
      return;
    }
    Envelope in =
        new Envelope(
            zone.get().get("x0").asDouble(),
            zone.get().get("x1").asDouble(),
            zone.get().get("y0").asDouble(),
            zone.get().get("y1").asDouble());
    in.expandBy(ROUNDING_MM);
    if (!in.contains(box(copy))) {
      fault(copy + " sticks out of its zone");
    }
  }

  private void headings() {
    String direction = cloth.path("direction").asText("any way");
    Map<String, Set<Integer>> ups = new HashMap<>();
    for (Laid copy : copies) {
      Drawing drawing = drawings.get(copy.piece());
      if (drawing == null || !drawing.piece().path("grain").asText("along").equals("along")) {
        continue;
      }
      String own = drawing.piece().path("direction").asText(direction);
      if (own.equals("one way")) {
        ups.computeIfAbsent("all", k -> new HashSet<>()).add(copy.up());
      } else if (own.equals("one way per garment")) {
        copy.garments().forEach(g -> ups.computeIfAbsent(g, k -> new HashSet<>()).add(copy.up()));
      }
    }
    ups.forEach(
        (which, headings) -> {
          if (headings.size() > 1) {
            fault("pieces of " + which + " head both ways");
          }
        });
  }

  private void gaps() {
    double gap = number(cloth, "gap");
    for (int i = 0; i < copies.size(); i++) {
      for (int k = i + 1; k < copies.size() && gap > 0; k++) {
        double apart = copies.get(i).outline().distance(copies.get(k).outline());
        if (apart < gap - ROUNDING_MM) {
          fault(copies.get(i) + " and " + copies.get(k) + " are only " + apart + " mm apart");
        }
      }
    }
  }
}
