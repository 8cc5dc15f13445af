package ellwand.rule;

import ellwand.geometry.Point;
import ellwand.lay.Copy;
import ellwand.lay.Marker;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The pieces of one garment lie near each other, so that its bundle is soon picked up. */
final class GarmentsTogether {

  /** Amount: how far pieces lie from the middle of their garment, on average, mm. */
  static final Rule RULE =
      new Rule(
          "garments-together",
          false,
          Rule.Counted.MM,
          "The pieces of a garment lie near each other",
          GarmentsTogether::findings);

  private GarmentsTogether() {}

  /** Mean distance of all pieces' middles from the mean of those of their garment, mm. */
  static double spreadMm(Marker marker) {
    record Garment(String size, int number) {}
    Map<Garment, List<Copy>> garments = new HashMap<>();
    for (Copy copy : marker.copies()) {
      for (int garment : copy.garments()) {
        garments
            .computeIfAbsent(new Garment(copy.size(), garment), g -> new ArrayList<>())
            .add(copy);
      }
    }
    return garments.values().stream().mapToDouble(GarmentsTogether::sumMm).sum()
        / Math.max(1, garments.values().stream().mapToInt(List::size).sum());
  }

  private static double sumMm(List<Copy> garment) {
    List<Point> middles = garment.stream().map(c -> c.outline().box().centre()).toList();
    double x = middles.stream().mapToDouble(Point::x).average().orElseThrow();
    double y = middles.stream().mapToDouble(Point::y).average().orElseThrow();
    return middles.stream().mapToDouble(m -> Math.hypot(m.x() - x, m.y() - y)).sum();
  }

  private static List<Finding> findings(Rule rule, Inspection of) {
    double spread = spreadMm(of.marker());
    return Finding.ofWhole(
        rule,
        spread,
        unit ->
            "Pieces lie "
                + Say.length(spread, unit)
                + " from the middle of their garment on average.");
  }
}
