package ellwand.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class RegionTest {

  private static final Region SQUARE = Region.of(new Box(0, 0, 100, 100));

  @Test
  void areasOfOverlays() {
    Region other = Region.of(new Box(50, 50, 150, 150));
    assertEquals(2500, SQUARE.intersect(other).area(), 1e-6);
    assertEquals(7500, SQUARE.minus(other).area(), 1e-6);
    assertEquals(17500, Region.union(List.of(SQUARE, other)).area(), 1e-6);
    assertTrue(Region.union(List.of()).isEmpty());
  }

  @Property(tries = 300)
  void shapesThatShareASlantingLineAreTakenApart(
      @ForAll @DoubleRange(min = 0, max = 360) double turn,
      @ForAll @DoubleRange(min = 0.05, max = 0.95) double from) {
    // Found with random pieces: an edge without allowance lies on its cutting line, all but
    // rounding.
    Motion motion = new Motion(false, turn, 17.3, -5.1);
    Point a = motion.apply(new Point(0, 0));
    Point b = motion.apply(new Point(300, 0));
    Point p = a.towards(b, from / 2);
    Point q = a.towards(b, from / 2 + 0.3);
    Region whole =
        Region.of(
            Outline.of(
                List.of(a, b, motion.apply(new Point(300, 200)), motion.apply(new Point(0, 200)))));
    Region part =
        Region.of(
            Outline.of(
                List.of(
                    p, q, motion.apply(new Point(160, 150)), motion.apply(new Point(40, 150)))));
    assertEquals(0, part.minus(whole).area(), 1e-3);
    assertEquals(part.area(), part.intersect(whole).area(), 1e-3);
    assertEquals(whole.area() - part.area(), whole.minus(part).area(), 1e-3);
  }

  @Test
  void aDifferenceThatUnsnappedJtsGetsWrong() {
    Outline sewing =
        Outline.of(
            List.of(
                new Point(237.19098525792205, 33.256235372482784),
                new Point(-118.77443331568003, 303.4123557773418),
                new Point(-249.21475475067245, -139.1054804175034),
                new Point(122.44697812648302, -309.38446763267854)));
    Outline cutting =
        Outline.of(
            List.of(
                new Point(-123.88612606796067, 307.29181993481933),
                new Point(-258.85710618953624, -150.59624270893366),
                new Point(127.28840558427582, -326.4185679513238),
                new Point(245.59970203692967, 26.874530341407592)));
    assertEquals(0, Region.of(sewing).minus(Region.of(cutting)).area(), 1e-3);
  }

  @Test
  void aLineThatCrossesItselfEnclosesWhatItRunsRoundForwards() {
    // A bow tie: one wing forwards, one backwards.
    Region bow =
        Region.enclosedBy(
            List.of(new Point(0, 0), new Point(100, 100), new Point(100, 0), new Point(0, 100)));
    assertEquals(2500, bow.area(), 1e-3);
    assertTrue(bow.contains(new Point(10, 50)));
    assertTrue(!bow.contains(new Point(90, 50)));
    // Twice round is still inside.
    List<Point> twice = new ArrayList<>(Outline.of(new Box(0, 0, 10, 10)).points());
    twice.addAll(Outline.of(new Box(0, 0, 10, 20)).points());
    assertEquals(200, Region.enclosedBy(twice).area(), 1e-3);
  }

  @Test
  void whatALineEnclosesIsToldAlikeEachTime() {
    // Three loops beside a body, each turned the other way.
    List<Point> line = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      line.add(new Point(100 * i, 0));
      line.add(new Point(100 * i + 60, 0));
      line.add(new Point(100 * i + 40, -20));
      line.add(new Point(100 * i + 30, 10));
    }
    line.add(new Point(300, 100));
    line.add(new Point(0, 100));
    List<Outline> first = Region.enclosedBy(line).shells();
    for (int i = 0; i < 20; i++) {
      assertEquals(first, Region.enclosedBy(line).shells());
    }
  }

  @Test
  void crossingsAreFound() {
    Point at =
        Region.crossing(
                List.of(new Point(0, 0), new Point(10, 10), new Point(10, 0), new Point(0, 10)))
            .orElseThrow();
    assertTrue(at.distance(new Point(5, 5)) < 1e-9);
    assertTrue(Region.crossing(Outline.of(new Box(0, 0, 1, 1)).points()).isEmpty());
  }

  @Test
  void itsWidestPlaceIsInTheMiddleOfASquare() {
    assertEquals(100, SQUARE.thickness(), 0.05);
    assertTrue(SQUARE.middle().distance(new Point(50, 50)) < 1);
    assertEquals(0, Region.EMPTY.thickness());
  }
}
