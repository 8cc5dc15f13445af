package ellwand.pattern;

import ellwand.geometry.Point;
import ellwand.problem.InputException;
import java.util.Map;

/** How far a point lies, in each size, from where it is drawn in the base size; mm. */
public sealed interface GradeRule {

  /**
   * The shift in one size.
   *
   * @param size one of the sizes of the style
   * @param steps how many sizes it is above the base, negative below
   */
  Point shiftMm(String size, int steps);

  /**
   * Under which name stands the rule of the handle by which a curve, drawn in the order of the
   * points, leaves a point; without one it keeps its direction.
   */
  static String curveFrom(String point) {
    return "curve from " + point;
  }

  /** The same of the handle by which a curve arrives at a point. */
  static String curveTo(String point) {
    return "curve to " + point;
  }

  private static void checkNear(Point shift) {
    if (!(shift.norm() <= Piece.FARTHEST_MM)) {
      throw InputException.of(
          "it moves the point by more than 100 m", "See that the number and its unit are right");
    }
  }

  /** The same shift from each size to the next larger one. */
  record Step(Point aSizeMm) implements GradeRule {

    public Step {
      checkNear(aSizeMm);
    }

    @Override
    public Point shiftMm(String size, int steps) {
      return aSizeMm.times(steps);
    }
  }

  /** A shift of its own for each size but the base. */
  record EachSize(Map<String, Point> bySizeMm) implements GradeRule {

    public EachSize {
      bySizeMm = Map.copyOf(bySizeMm);
      bySizeMm.values().forEach(GradeRule::checkNear);
    }

    @Override
    public Point shiftMm(String size, int steps) {
      return bySizeMm.get(size);
    }
  }
}
