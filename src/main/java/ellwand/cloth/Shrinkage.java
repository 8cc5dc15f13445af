package ellwand.cloth;

import ellwand.problem.InputException;

/**
 * How much the cloth shrinks.
 *
 * @param along share lost along the warp, 0 up to but not 1
 * @param across share lost across, 0 up to but not 1
 * @param when whether it is washed before it is cut
 */
public record Shrinkage(double along, double across, When when) {

  public static final Shrinkage NONE = new Shrinkage(0, 0, When.BEFORE_CUTTING);

  /** When the cloth shrinks. */
  public enum When {
    /** Washed first: buy more, lay on the narrower cloth. */
    BEFORE_CUTTING,
    /** Washed as a garment: the cutting lines grow. */
    AFTER
  }

  public Shrinkage {
    if (!(along >= 0 && along < 1 && across >= 0 && across < 1)) {
      throw InputException.of(
          "cloth cannot shrink by less than 0 % or by 100 %", "Write for example 3 %");
    }
  }

  /** What cutting lines are stretched by along the warp: 1/(1-s) when it shrinks after cutting. */
  public double growthAlong() {
    return when == When.AFTER ? 1 / (1 - along) : 1;
  }

  /** What cutting lines are stretched by across. */
  public double growthAcross() {
    return when == When.AFTER ? 1 / (1 - across) : 1;
  }

  /** How wide bought cloth of the given width is when it comes to the table. */
  public double laidWidth(double boughtMm) {
    return when == When.BEFORE_CUTTING ? boughtMm * (1 - across) : boughtMm;
  }

  /** How much to buy for a length on the table, both in mm. */
  public double boughtLength(double laidMm) {
    return when == When.BEFORE_CUTTING ? laidMm / (1 - along) : laidMm;
  }
}
