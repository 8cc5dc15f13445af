package ellwand.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Outline;
import ellwand.pattern.Piece;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Where all allowances are equal, other libraries draw the same line. */
class CutterReferenceTest {

  @Property(tries = 20)
  void evenAllowancesAreTheMitredBufferOfJts(@ForAll long seed) {
    Piece piece = Blobs.even(seed);
    double mm = piece.edges().get(0).allowanceMm();
    double apart = Reference.apart(List.of(Drawn.cutting(piece)), Reference.jts(piece, mm));
    // Two lines, each as far off as curves may stray, cross further off where the corner is sharp.
    double half = Math.toRadians(Math.min(90, Blobs.sharpestDegrees(piece) / 2));
    double most = 1.05 * Run.FLATTENING_MM / Math.sin(half);
    assertTrue(apart < most, () -> apart + " mm apart, " + most + " allowed");
  }

  @Property(tries = 6)
  void evenAllowancesAreTheStrokedAreaOfTheJdk(@ForAll long seed) {
    Piece piece = Blobs.even(seed);
    // The JDK squares sharp corners off elsewhere.
    Assume.that(Blobs.sharpestDegrees(piece) > 40);
    double mm = piece.edges().get(0).allowanceMm();
    Outline cutting = Drawn.cutting(piece);
    List<Outline> awt = Reference.awt(piece, mm);
    // One way only: the JDK leaves spikes without width where its stroke starts.
    double apart = Reference.oneWay(List.of(cutting), awt);
    assertTrue(apart < 0.1, () -> apart + " mm apart");
    double area = awt.stream().mapToDouble(Outline::area).max().orElseThrow();
    assertEquals(area, cutting.area(), 1e-3 * area);
  }

  @Test
  void aDeepNarrowCurveLosesItsLoopAsInJts() {

    // A bowl cut into the top, tighter at its bottom than the allowance.
    Piece tight =
        Drawn.from(0, 0)
            .line(300, 0, 15)
            .line(300, 200, 15)
            .line(180, 200, 15)
            .curve(160, 60, 140, 60, 120, 200, 15)
            .line(0, 200, 15)
            .line(0, 0, 15)
            .piece();
    Outline looped = Drawn.cutting(tight);
    assertTrue(Reference.apart(List.of(looped), Reference.jts(tight, 15)) < 0.1);
  }

  @Test
  void aQuarterCircleIsOffsetToALargerOne() {
    // A cubic with handles of 0.5523 r stays within 0.03 % of a circle.
    double r = 100;
    double k = 4 * (Math.sqrt(2) - 1) / 3 * r;
    Piece quarter =
        Drawn.from(0, 0).line(r, 0, 0).curve(r, k, k, r, 0, r, 20).line(0, 0, 0).piece();
    Outline cutting = Drawn.cutting(quarter);
    assertEquals(Math.PI * 120 * 120 / 4, cutting.area(), 0.001 * Math.PI * 120 * 120 / 4);
  }
}
