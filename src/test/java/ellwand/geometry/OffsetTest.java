package ellwand.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class OffsetTest {

  private static Segment.Cubic random(long seed) {
    SplittableRandom r = new SplittableRandom(seed);
    Point start = new Point(0, 0);
    Point end = new Point(50 + 300 * r.nextDouble(), 0);
    return new Segment.Cubic(
        start,
        new Point(end.x() * r.nextDouble() / 2, 150 * r.nextDouble() - 75),
        new Point(end.x() * (1 - r.nextDouble() / 2), 150 * r.nextDouble() - 75),
        end);
  }

  private static double strays(Segment curve, double mm, List<Point> line) {
    double most = 0;
    for (int i = 0; i <= 500; i++) {
      Point p = Offset.beside(curve, i / 500.0, mm);
      double least = Double.POSITIVE_INFINITY;
      for (int k = 1; k < line.size(); k++) {
        least = Math.min(least, Offset.distance(p, line.get(k - 1), line.get(k)));
      }
      most = Math.max(most, least);
    }
    return most;
  }

  @Property(tries = 100)
  void theTrueOffsetStaysWithinTheTolerance(@ForAll long seed) {
    Segment.Cubic curve = random(seed);
    for (double mm : new double[] {0, 15, 40}) {
      double off = strays(curve, mm, Offset.right(curve, mm, 0.07));
      assertTrue(off < 0.08, () -> off + " mm at " + mm);
    }
  }

  @Property(tries = 100)
  void backwardsItIsTheSameLine(@ForAll long seed) {
    Segment.Cubic curve = random(seed);
    List<Point> there = Offset.right(curve, 0, 0.07);
    List<Point> back = new ArrayList<>(Offset.right(curve.reversed(), 0, 0.07));
    Collections.reverse(back);
    assertEquals(there.size(), back.size());
    for (int i = 0; i < there.size(); i++) {
      assertTrue(there.get(i).distance(back.get(i)) < 0.01);
    }
  }

  @Test
  void itsEndsLieSquareToTheCurvesEnds() {
    Segment.Cubic curve = random(5);
    List<Point> line = Offset.right(curve, 20, 0.07);
    assertEquals(Offset.beside(curve, 0, 20), line.get(0));
    assertEquals(Offset.beside(curve, 1, 20), line.get(line.size() - 1));
    assertEquals(0, line.get(0).minus(curve.start()).dot(curve.direction(0)), 1e-9);
    assertTrue(curve.direction(0).cross(line.get(0).minus(curve.start())) < 0);
  }

  @Test
  void aCurveThatIsStraightNeedsNoPointsBetween() {
    Segment.Cubic straight =
        new Segment.Cubic(new Point(0, 0), new Point(30, 0), new Point(60, 0), new Point(90, 0));
    assertEquals(List.of(new Point(0, -10), new Point(90, -10)), Offset.right(straight, 10, 0.07));
  }

  @Test
  void aQuarterCircleNeedsFewPoints() {
    double k = 4 * (Math.sqrt(2) - 1) / 3 * 100;
    Segment.Cubic quarter =
        new Segment.Cubic(
            new Point(100, 0), new Point(100, k), new Point(k, 100), new Point(0, 100));
    // Chords that stray 0.07 mm to both sides of a circle of radius 100 are 10.6 mm long: 15 of
    // them.
    assertTrue(Offset.right(quarter, 0, 0.07).size() <= 17);
  }
}
