package ellwand.draw.sheet;

import ellwand.units.Unit;

/**
 * How large letters and line widths must be drawn to read well once the drawing is scaled down.
 *
 * @param scale mm drawn for one mm on the paper that is read
 */
public record Reading(double scale) {

  private static final double MM_PER_POINT = Unit.INCH.mm() / 72;

  /** Sizes on paper, in points. Labels stay at 7 points or more, figures at 9 or more. */
  public static final double TITLE = 15;

  public static final double VALUE = 11;
  public static final double TEXT = 9;
  public static final double SMALL = 7.5;

  /** So many mm on the paper. */
  public double mm(double onPaper) {
    return onPaper * scale;
  }

  /** Type of so many points on the paper, as mm drawn. */
  public double points(double onPaper) {
    return onPaper * MM_PER_POINT * scale;
  }
}
