package ellwand.cutting;

import static ellwand.cutting.FoldedAway.darted;
import static ellwand.cutting.FoldedAway.polar;
import static ellwand.cutting.FoldedAway.turned;
import static ellwand.cutting.FoldedAway.walked;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.pattern.Intake;
import ellwand.pattern.Piece;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Folds the cut cloth of a dart closed, by angles about its point, and measures where it ends. */
class DartMouthTest {

  /** What the folded edge may miss by, mm: a tenth of what a blade keeps to. */
  private static final double CLOSE_MM = 0.1;

  private static final Point POINT = new Point(0, 300);

  /**
   * The farthest that any layer of the folded dart ends from where the cloth ends that it lies on,
   * and that the two sides end from one another at the leg, mm.
   */
  private static double misses(Piece piece, Outline cutting) {
    Intake dart = piece.edge("waist").intakes().get(0);
    Point point = dart.first().inner();
    Point first = dart.first().outward();
    double angle = dart.angleDegrees();
    double most = 0;
    int inMouth = 0;
    for (Point p : walked(cutting, 0.5)) {
      double at = degrees(first, p.minus(point));
      if (p.distance(point) > 260 || at < 0 || at > angle) {
        continue;
      }
      inMouth++;
      Point lies;
      if (dart.towardsFirst()) {
        lies = at <= angle / 2 ? turned(p, point, -2 * at) : turned(p, point, -angle);
      } else {
        lies = at <= angle / 2 ? turned(p, point, angle) : turned(p, point, 2 * (angle - at));
      }
      most = Math.max(most, cutting.distance(lies));
    }
    assertTrue(inMouth > 5, "the mouth has a cutting line");
    return Math.max(
        most, Math.abs(out(cutting, point, first) - out(cutting, point, dart.second().outward())));
  }

  private static double degrees(Point from, Point to) {
    return Math.toDegrees(Math.atan2(from.cross(to), from.dot(to)));
  }

  /** How far out from the point the line is cut by a ray, mm. */
  private static double out(Outline line, Point point, Point direction) {
    List<Point> ring = new java.util.ArrayList<>(line.points());
    ring.add(ring.get(0));
    Point far = point.plus(direction.times(400));
    return Crossing.nearest(List.of(point, far), ring, point).orElseThrow().at().distance(point);
  }

  private static Outline cut(Piece piece) {
    return Cutter.cut(piece, 1, 1).cutting();
  }

  /**
   * Straight edge, upright dart 40 wide and 100 deep, allowance 15, by hand: the legs are as long
   * as the root of 100² + 20², the edge leaves the first at 90 degrees and half the dart's angle.
   * Its image in the leg crosses the dart's middle at the root of 20² + 100² by sin (90 + h) / sin
   * (90 - 2 h) from the point, h being half the angle.
   */
  @Test
  void theSewingLineInTheMouthIsARoof() {
    double half = Math.toDegrees(Math.atan(20 / 100.0));
    Piece piece =
        darted(
            POINT,
            90 - half,
            2 * half,
            Math.hypot(100, 20),
            new Point(200, 400),
            new Point(-200, 400),
            0,
            15,
            true);
    double ridge =
        Math.hypot(100, 20)
            * Math.sin(Math.toRadians(90 + half))
            / Math.sin(Math.toRadians(90 - 2 * half));
    double highest =
        piece.edge("waist").line().flattened(0.01).stream().mapToDouble(Point::y).max().orElse(0);
    assertEquals(300 + ridge, highest, 1e-6);
    assertEquals(400 - 40, piece.edge("waist").sewnMm(), 1e-6);
    // The cutting line meets each leg where the allowance ends, and rises like the sewing line.
    assertEquals(0, misses(piece, cut(piece)), 1e-6);
  }

  @Property(tries = 300)
  void foldedClosedTheCuttingLineRunsOn(
      @ForAll @DoubleRange(min = -25, max = 25) double slant,
      @ForAll @DoubleRange(min = 3, max = 40) double angle,
      @ForAll @DoubleRange(min = 60, max = 140) double leg,
      @ForAll @DoubleRange(min = -20, max = 20) double rightRise,
      @ForAll @DoubleRange(min = -20, max = 20) double leftRise,
      @ForAll @DoubleRange(min = -8, max = 8) double bulge,
      @ForAll @DoubleRange(min = 5, max = 30) double allowance,
      @ForAll boolean towardsFirst) {
    double firstDegrees = 90 + slant - angle / 2;
    Point a = polar(POINT, firstDegrees, leg);
    Point b = polar(POINT, firstDegrees + angle, leg);
    Point right = new Point(a.x() + 200, a.y() + rightRise);
    Point left = new Point(b.x() - 200, b.y() + leftRise);
    Piece piece =
        darted(POINT, firstDegrees, angle, leg, right, left, bulge, allowance, towardsFirst);
    double misses = misses(piece, cut(piece));
    assertTrue(misses < CLOSE_MM, "misses by " + misses);
  }
}
