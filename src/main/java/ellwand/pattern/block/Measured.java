package ellwand.pattern.block;

import ellwand.pattern.Body;
import java.util.Map;

/**
 * A body in one size, and how much easier than it the garment is.
 *
 * @param easeMm by name; see {@link Block#usualEaseMm}
 */
public record Measured(Body body, String size, Map<String, Double> easeMm) {

  public Measured {
    easeMm = Map.copyOf(easeMm);
  }

  /**
   * A body measure, mm.
   *
   * @throws ellwand.problem.InputException if it is not given
   */
  double mm(String measure) {
    return body.mm(measure, size);
  }

  /** Ease, mm. */
  double ease(String of) {
    return easeMm.get(of);
  }

  /** A body measure with its ease, mm. */
  double eased(String measure) {
    return mm(measure) + ease(measure);
  }
}
