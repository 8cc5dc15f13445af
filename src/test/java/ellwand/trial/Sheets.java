package ellwand.trial;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * Where each zone of a marker lies on the cloth as it comes off the roll, right side up: x along it
 * from the cut end, y across from the first line that may be cut, mm.
 */
final class Sheets {

  /**
   * One ply of a zone: a place x, y of the laid cloth is at {@code fromX + x * alongX, fromY + y *
   * alongY} of the unrolled cloth.
   */
  record Sheet(double fromX, int alongX, double fromY, int alongY) {

    Polygon unrolled(Polygon laid) {
      return (Polygon) new AffineTransformation(alongX, 0, fromX, 0, alongY, fromY).transform(laid);
    }

    double x(double laid) {
      return fromX + alongX * laid;
    }

    double y(double laid) {
      return fromY + alongY * laid;
    }
  }

  private static Sheet across(double fromY, int alongY) {
    return new Sheet(0, 1, fromY, alongY);
  }

  private Sheets() {}

  /**
   * Every way the marker's cloth can have been folded, each by zone; the last ply of a zone is the
   * one that lies as the cloth comes off the roll.
   *
   * @param usable what may be cut across the open cloth, mm
   */
  static List<Map<String, List<Sheet>>> of(JsonNode marker, double usable) {
    Map<String, JsonNode> zones = new HashMap<>();
    marker.get("zones").forEach(z -> zones.put(z.get("id").asText(), z));
    double turn = 0;
    for (JsonNode zone : zones.values()) {
      turn = zone.get("plies").asInt() == 2 ? Math.max(turn, zone.get("x1").asDouble()) : turn;
    }
    String fold = marker.get("fold").asText();
    boolean endOverEnd = fold.startsWith("crosswise");
    List<Double> lines = new ArrayList<>();
    for (String first : List.of("folded", "first fold", "double")) {
      if (zones.containsKey(first)) {
        double low = zones.get(first).get("y0").asDouble();
        double high = zones.get(first).get("y1").asDouble();
        switch (fold) {
          case "lengthwise fold" -> lines.addAll(List.of(high, usable - high));
          case "crosswise turned" -> lines.add(low > 0 ? (low + usable) / 2 : high / 2);
          default -> lines.add(high);
        }
      }
    }
    if (lines.isEmpty()) {
      lines.add(0.0);
    }
    List<Map<String, List<Sheet>>> ways = new ArrayList<>();
    for (double line : lines) {
      Map<String, List<Sheet>> way = new HashMap<>();
      way.put("open", List.of(across(0, 1)));
      way.put("opened", List.of(new Sheet(endOverEnd ? turn : 0, 1, 0, 1)));
      way.put("single", List.of(across(line, 1)));
      way.put("first fold", List.of(across(line, -1), across(line, 1)));
      if (zones.containsKey("second fold")) {
        double second = zones.get("second fold").get("y1").asDouble();
        way.put("second fold", List.of(across(line + 2 * second, -1), across(line, 1)));
      }
      way.put("tube", List.of(across(usable, -1), across(0, 1)));
      way.put("double", List.of(across(2 * line, -1), new Sheet(turn, 1, 0, 1)));
      way.put(
          "folded",
          fold.equals("crosswise fold")
              ? List.of(new Sheet(turn, -1, 0, 1), new Sheet(turn, 1, 0, 1))
              : List.of(across(line, -1), across(line, 1)));
      ways.add(way);
    }
    return ways;
  }
}
