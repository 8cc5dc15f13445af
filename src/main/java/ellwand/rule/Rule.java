package ellwand.rule;

import java.util.List;

/**
 * Something a marker must or should keep.
 *
 * @param id short and stable, for files and scripts
 * @param hard whether a marker that breaks it is illegal
 * @param unit what amounts are counted in; 0 is kept
 * @param name in plain words, what is asked for
 * @param measure finds every place where a marker does not keep it
 */
public record Rule(String id, boolean hard, Counted unit, String name, Measure measure) {

  /** Lengths may be off by so much, mm: files and drawings are rounded. */
  static final double ROUNDING_MM = 0.01;

  /** What the amount of a finding is counted in. */
  public enum Counted {
    MM,
    SQUARE_MM,
    DEGREES,
    /** Pieces of cloth: too few, too many or wrong. */
    PIECES,
    /** A share of 1. */
    SHARE,
    /** 1 for each fault. */
    FAULTS
  }

  /** How a rule looks at a marker. */
  @FunctionalInterface
  public interface Measure {

    /** One finding for each place where the rule is broken, none if it is kept. */
    List<Finding> findings(Rule rule, Inspection of);
  }

  /** Every place where the marker breaks this rule. */
  public List<Finding> findings(Inspection of) {
    return measure.findings(this, of);
  }
}
