package ellwand.rule;

import ellwand.geometry.Box;
import ellwand.lay.Marker;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The lay can be cut straight across between pieces, into stretches that are easily handled. */
final class StraightCuts {

  /** Amount: how long the stretches between straight cuts are on average, mm. */
  static final Rule RULE =
      new Rule(
          "straight-cuts",
          false,
          Rule.Counted.MM,
          "Straight cuts across the lay cut through no piece",
          StraightCuts::findings);

  private StraightCuts() {}

  /**
   * Where a straight cut across all zones parts the pieces and cuts none, mm from where the marker
   * begins; each midway between the pieces that it parts.
   */
  static List<Double> placesMm(Marker marker) {
    List<Box> boxes =
        marker.copies().stream()
            .map(c -> c.outline().box())
            .sorted(Comparator.comparingDouble(Box::minX))
            .toList();
    List<Double> places = new ArrayList<>();
    double reached = Double.POSITIVE_INFINITY;
    for (Box box : boxes) {
      boolean free = box.minX() >= reached - Rule.ROUNDING_MM;
      if (free) {
        places.add((reached + box.minX()) / 2);
      }
      reached =
          free || reached == Double.POSITIVE_INFINITY ? box.maxX() : Math.max(reached, box.maxX());
    }
    return places;
  }

  /** Length of the lay for each stretch that straight cuts divide it into, mm. */
  static double stretchMm(Marker marker) {
    return marker.lengthMm() / (placesMm(marker).size() + 1);
  }

  private static List<Finding> findings(Rule rule, Inspection of) {
    double stretch = stretchMm(of.marker());
    return Finding.ofWhole(
        rule,
        stretch,
        unit ->
            Say.number(placesMm(of.marker()).size(), "straight cut", "straight cuts")
                + " across: stretches of "
                + Say.length(stretch, unit)
                + " on average.");
  }
}
