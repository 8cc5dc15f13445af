package ellwand.rule;

import ellwand.cloth.Cloth;
import ellwand.geometry.Motion;
import ellwand.lay.Lay;
import ellwand.pattern.Grain;
import java.util.List;
import java.util.Locale;

/** Grain lines lie as the pieces ask. */
final class OnGrain {

  /** Rounding in a stated turn that is none, degrees; a copy 10 m long moves under 0.001 mm. */
  private static final double ROUNDING_DEGREES = 1e-6;

  /** A fold edge may lean so little and still lie along or across, degrees. */
  private static final double LEVEL_DEGREES = 0.1;

  /** Amount: degrees beyond the cloth's tolerance off the nearest turn that is on grain. */
  static final Rule RULE =
      new Rule(
          "grain",
          true,
          Rule.Counted.DEGREES,
          "Every grain line lies to the warp as its piece asks",
          OnGrain::findings);

  private OnGrain() {}

  private static List<Finding> findings(Rule rule, Inspection of) {
    Lay lay = of.marker().lay();
    Cloth cloth = lay.cloth();
    return of.placed().stream()
        .filter(p -> p.cut().isPresent())
        .filter(p -> !(off(p, lay) <= tolerance(cloth, p) + ROUNDING_DEGREES))
        .map(
            p ->
                p.finding(
                    rule,
                    off(p, lay) - tolerance(cloth, p),
                    unit ->
                        Say.capital(p.name())
                            + " lies "
                            + String.format(Locale.ROOT, "%.1f", off(p, lay))
                            + " degrees off its grain "
                            + Say.near(p.box().centre(), unit)
                            + "; it wants its grain "
                            + words(grain(p))
                            + "."))
        .toList();
  }

  private static Grain grain(Placed p) {
    return p.cut().orElseThrow().piece().grain();
  }

  /** On the ply on which it is farther off. */
  private static double off(Placed p, Lay lay) {
    Motion motion = p.copy().motion();
    double off = grain(p).offDegrees(motion.turnDegrees(), motion.flipped());
    double twin =
        p.twinTurn(lay).stream()
            .map(turn -> grain(p).offDegrees(turn, false))
            .findFirst()
            .orElse(0);
    return twin > off + LEVEL_DEGREES ? twin : off;
  }

  private static double tolerance(Cloth cloth, Placed p) {
    // What lies in the bars of a repeat is matched along them.
    return cloth.repeat().isPresent()
        ? 0
        : grain(p).toleranceDegrees().orElse(cloth.grainToleranceDegrees());
  }

  private static String words(Grain grain) {
    return switch (grain.word()) {
      case "along" -> "along the warp";
      case "across" -> "across the warp";
      case "either" -> "along or across the warp";
      case "bias" -> "at 45 degrees to the warp";
      default -> "at " + grain.word() + " to the warp";
    };
  }
}
