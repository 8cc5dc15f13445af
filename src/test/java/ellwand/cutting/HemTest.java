package ellwand.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.geometry.Region;
import ellwand.pattern.Piece;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Hems that are turned back lie on the piece. */
class HemTest {

  @Property(tries = 100)
  void turnedBackItsEndsLieOnItsNeighboursCuttingLines(
      @ForAll @DoubleRange(min = -100, max = 100) double flare,
      @ForAll @DoubleRange(min = 0, max = 20) double side,
      @ForAll @DoubleRange(min = 1, max = 50) double hem) {
    Piece piece =
        Drawn.from(0, 0)
            .line(200, flare, side)
            .line(200, 300 + flare / 2, 5)
            .line(0, 300, side)
            .hem(0, 0, hem)
            .piece();
    Outline cutting = Drawn.cutting(piece);
    assertEquals(-hem, cutting.box().minX(), 1e-9);
    for (Point p : cutting.points()) {
      if (p.x() < -1e-9) {
        assertTrue(
            cutting.distance(new Point(-p.x(), p.y())) < 1e-6, () -> p + " turns to nowhere");
      }
    }
  }

  @Test
  void aPlainHemWouldFallShort() {
    Piece plain =
        Drawn.from(0, 0).line(200, 50, 0).line(200, 250, 0).line(0, 300, 0).line(0, 0, 40).piece();
    Outline cutting = Drawn.cutting(plain);
    Region turned = Region.of(cutting.moved(new ellwand.geometry.Motion(true, 180, 0, 0)));
    assertTrue(turned.minus(Region.of(cutting)).intersect(right()).area() > 100);
  }

  private static Region right() {
    return Region.of(new ellwand.geometry.Box(0, -1000, 1000, 1000));
  }

  @Test
  void aCurvedNeighbourIsMirroredAsACurve() {
    Piece piece =
        Drawn.from(0, 0)
            .curve(40, 15, 100, 25, 200, 25, 10)
            .line(200, 275, 10)
            .curve(100, 275, 40, 285, 0, 300, 10)
            .hem(0, 0, 40)
            .piece();
    Outline cutting = Drawn.cutting(piece);
    for (Point p : cutting.points()) {
      if (p.x() < -1e-9) {
        assertTrue(cutting.distance(new Point(-p.x(), p.y())) < 1e-6);
      }
    }
    assertTrue(cutting.points().stream().filter(p -> p.x() < -1).count() > 4);
  }

  @Test
  void withoutAllowanceThereIsNothingToTurnBack() {
    Piece slanting =
        Drawn.from(0, 0).hem(200, 20, 0).line(200, 120, 0).line(0, 100, 0).line(0, 0, 0).piece();
    Same.points(Drawn.cutting(slanting), 0, 0, 200, 20, 200, 120, 0, 100);
    Piece pointed = Drawn.from(-20, 0).hem(50, 0, 0).line(-10, 20, 8).line(-20, 0, 8).piece();
    assertEquals(0, Drawn.cutting(pointed).box().minY(), 1e-9);
  }

  @Test
  void twoHemsThatMeetAreMitred() {
    Piece napkin =
        Drawn.from(0, 0).hem(400, 0, 20).hem(400, 400, 20).hem(0, 400, 20).hem(0, 0, 20).piece();
    Same.points(Drawn.cutting(napkin), -20, -20, 420, -20, 420, 420, -20, 420);
  }
}
