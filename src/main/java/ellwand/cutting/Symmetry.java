package ellwand.cutting;

import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.pattern.Grain;

/** Whether turning a piece over makes no difference. */
final class Symmetry {

  /** How far two cutting lines may lie apart and still count as the same, mm. */
  static final double SAME_MM = 0.05;

  private Symmetry() {}

  /** Whether the outline turned over, and then turned as its grain allows, is the outline again. */
  static boolean of(Outline outline, Grain grain) {
    int first = grain.turns().get(0);
    return grain.turns().stream()
        .anyMatch(turn -> same(outline, outline.moved(new Motion(true, turn - first, 0, 0))));
  }

  private static boolean same(Outline a, Outline b) {
    Point from = b.box().centre();
    Point to = a.box().centre();
    Outline moved = b.moved(Motion.NONE.shifted(to.x() - from.x(), to.y() - from.y()));
    return near(a, moved) && near(moved, a);
  }

  private static boolean near(Outline a, Outline b) {
    return a.points().stream().allMatch(p -> b.distance(p) <= SAME_MM);
  }
}
