package ellwand.cloth;

import ellwand.problem.InputException;
import java.util.List;

/**
 * How a cloth is to be laid and pieces on it. Lengths in mm.
 *
 * @param folds the ways it may lie, best liked first
 * @param gapMm least distance between two pieces; none at fold edge, selvedge or cut end
 * @param endsMm what is lost at both cut ends together
 * @param grainToleranceDegrees how far a piece may turn off its grain
 * @param fusingMarginMm what is kept free round each piece; gap, selvedges and ends allow for it
 *     already
 * @param withinMm how wide the cloth may lie on the table, between its selvedges; infinite where
 *     there is room enough
 */
public record Laying(
    List<Fold> folds,
    Direction direction,
    double gapMm,
    double endsMm,
    double grainToleranceDegrees,
    double fusingMarginMm,
    double withinMm) {

  /** Farther off it is another grain. */
  public static final double MOST_TOLERANCE_DEGREES = 10;

  public Laying {
    folds = List.copyOf(folds);
    InputException.unless(
        gapMm >= 0 && fusingMarginMm >= 0 && endsMm >= 0,
        "a gap, fusing margin or end of a cloth is less than 0",
        "Give them as 0 or more");
    InputException.unless(
        grainToleranceDegrees >= 0 && grainToleranceDegrees <= MOST_TOLERANCE_DEGREES,
        "the grain tolerance of a cloth is not 0 to 10 degrees",
        "Write 10 deg or less");
    InputException.unless(
        !folds.isEmpty(),
        "it is not said how a cloth may lie",
        "Write for example fold: lengthwise fold, or open");
  }

  /** In these ways, pieces heading any way on their grain, with no gap between them. */
  public static Laying in(List<Fold> folds) {
    return new Laying(folds, Direction.ANY_WAY, 0, 0, 0, 0, Double.POSITIVE_INFINITY);
  }

  public static Laying in(Fold... folds) {
    return in(List.of(folds));
  }

  /** To lie only so. */
  public Laying folded(List<Fold> ways) {
    return new Laying(
        ways, direction, gapMm, endsMm, grainToleranceDegrees, fusingMarginMm, withinMm);
  }

  public Laying heading(Direction way) {
    return new Laying(folds, way, gapMm, endsMm, grainToleranceDegrees, fusingMarginMm, withinMm);
  }

  public Laying gap(double mm) {
    return new Laying(
        folds, direction, mm, endsMm, grainToleranceDegrees, fusingMarginMm, withinMm);
  }

  public Laying ends(double mm) {
    return new Laying(folds, direction, gapMm, mm, grainToleranceDegrees, fusingMarginMm, withinMm);
  }

  public Laying offGrain(double degrees) {
    return new Laying(folds, direction, gapMm, endsMm, degrees, fusingMarginMm, withinMm);
  }

  /** So much kept free all round each piece: twice as much between two, once at each end. */
  Laying fusingMargin(double mm) {
    return new Laying(
        folds,
        direction,
        Math.max(2 * mm, gapMm),
        endsMm + 2 * mm,
        grainToleranceDegrees,
        mm,
        withinMm);
  }

  /** To lie no wider than that. */
  Laying within(double mm) {
    return new Laying(folds, direction, gapMm, endsMm, grainToleranceDegrees, fusingMarginMm, mm);
  }
}
