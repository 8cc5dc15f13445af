package ellwand.rule;

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
        marker.zones().stream()
            .mapToDouble(z -> z.plies() * FreePlace.counted(marker, z).area())
            .sum();
    return Math.max(0, cloth - marker.lay().wantedAreaMm2());
  }

  private static List<Finding> findings(Rule rule, Inspection of) {
    double left = leftMm2(of.marker());
    double scrap = left - FreePlace.largestMm2(FreePlace.of(of.marker()));
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
