package ellwand.rule;

import ellwand.cloth.Zone;
import ellwand.geometry.Box;
import ellwand.geometry.FreeRectangle;
import ellwand.geometry.Outline;
import ellwand.lay.Marker;
import java.util.List;
import java.util.Locale;

/** What is left over hangs together in one large piece that is worth keeping. */
final class OneLeftOver {

  private static final double CM2 = 100;

  /** Amount: what is left over besides the largest rectangle, square mm of cloth. */
  static final Rule RULE =
      new Rule(
          "one-left-over",
          false,
          Rule.Counted.SQUARE_MM,
          "What is left over is one large piece rather than many small",
          OneLeftOver::findings);

  private OneLeftOver() {}

  /** Cloth under no wanted piece from the cut end to the marker's, or to that of a remnant. */
  static double leftMm2(Marker marker) {
    double cloth =
        marker.zones().stream().mapToDouble(z -> z.plies() * laid(marker, z).area()).sum();
    return Math.max(0, cloth - marker.lay().wantedAreaMm2());
  }

  /** The largest free rectangle of any zone, all its plies, square mm. */
  static double largestMm2(Marker marker) {
    List<Outline> taken = marker.covered();
    return marker.zones().stream()
        .mapToDouble(
            z ->
                z.plies()
                    * FreeRectangle.largest(laid(marker, z), taken).map(Box::area).orElse(0.0))
        .max()
        .orElse(0);
  }

  /** As much of a zone as counts: cloth that is bought ends with the marker. */
  private static Box laid(Marker marker, Zone zone) {
    Box box = zone.box();
    double end = marker.lay().cloth().stock().isPresent() ? box.maxX() : marker.lengthMm();
    return new Box(
        box.minX(), box.minY(), Math.max(box.minX(), Math.min(box.maxX(), end)), box.maxY());
  }

  private static List<Finding> findings(Rule rule, Inspection of) {
    double left = leftMm2(of.marker());
    double scrap = left - largestMm2(of.marker());
    return Finding.ofWhole(
        rule,
        scrap,
        unit ->
            String.format(
                Locale.ROOT,
                "%.0f of %.0f square cm left over lie outside the largest rectangle.",
                scrap / CM2,
                left / CM2));
  }
}
