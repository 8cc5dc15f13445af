package ellwand.trial;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.SplittableRandom;

/** A small job made at random whose pieces match each other on cloth that lies folded, in mm. */
final class MatchedJob {

  private static final ObjectMapper JSON = new ObjectMapper();

  private final SplittableRandom dice;

  private MatchedJob(long number) {
    dice = new SplittableRandom(number);
  }

  static JsonNode of(long number) {
    return new MatchedJob(number).job();
  }

  private <T> T any(List<T> of) {
    return of.get(dice.nextInt(of.size()));
  }

  private JsonNode job() {
    ObjectNode job = JSON.createObjectNode().put("ellwand", 1).put("unit", "mm");
    ObjectNode style = job.putObject("style").put("name", "Tabard").put("allowance", 5);
    ObjectNode pieces = style.putObject("pieces");
    ArrayNode matches = style.putArray("match");
    int count = 2 + dice.nextInt(2);
    for (int i = 0; i < count; i++) {
      pieces.set("piece " + i, piece(i == 0));
      if (i > 0) {
        ObjectNode match = matches.addObject();
        match.put("bars", any(List.of("across", "along", "along", "both")));
        match
            .putArray("points")
            .add("piece " + (i - 1) + ".side @ 40")
            .add("piece " + i + ".side @ 40");
      }
    }
    ObjectNode cloth = job.putObject("cloths").putObject("main");
    cloth.put("width", 400 + dice.nextInt(500)).put("selvedge", dice.nextInt(20));
    cloth.put("direction", any(List.of("any way", "one way", "one way per garment")));
    cloth.put(
        "fold", any(List.of("lengthwise fold", "part fold", "double fold", "crosswise turned")));
    ObjectNode repeat = cloth.putObject("repeat").put("across", 30 + dice.nextInt(60));
    if (dice.nextBoolean()) {
      repeat.put("along", 30 + dice.nextInt(60));
    }
    repeat.putObject("start").put("across", dice.nextInt(30));
    job.putObject("order").put("garments", 1 + dice.nextInt(2));
    return job;
  }

  /** Its side lies along the cloth, leans, or lies across it. */
  private ObjectNode piece(boolean first) {
    ObjectNode piece = JSON.createObjectNode();
    boolean half = dice.nextInt(3) == 0;
    double length = 100 + dice.nextInt(100);
    double width = 60 + dice.nextInt(100);
    double slip = any(List.of(0, 0, 10, 40));
    // Of the whole ones some are their own mirror image.
    double low = half ? 0 : any(List.of(0.0, slip));
    double[][] points = {{0, 0}, {length, low}, {length, width - slip}, {0, width}};
    ArrayNode outline = piece.putArray("outline");
    for (int i = 0; i < points.length; i++) {
      ObjectNode at = outline.addObject().put("point", "n" + i);
      at.putArray("at").add(points[i][0]).add(points[i][1]);
    }
    ObjectNode edges = piece.putObject("edges");
    if (half) {
      edges.putObject("centre").put("from", "n0").put("to", "n1");
      piece.put("fold", "centre");
    }
    int side = any(List.of(1, 2, 2));
    edges.putObject("side").put("from", "n" + side).put("to", "n" + (side + 1));
    String cut =
        half ? any(List.of("1 on fold", "2 on fold")) : any(List.of("1", "2", "3", "pair"));
    piece.putObject("cut").put("main", cut);
    if (first && dice.nextInt(3) == 0) {
      piece.putObject("place").put("at", "side @ 40").put("across", dice.nextInt(15) - 7);
    }
    return piece;
  }
}
