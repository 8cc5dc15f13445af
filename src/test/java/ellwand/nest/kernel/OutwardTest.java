package ellwand.nest.kernel;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.RandomOutlines;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Thinned outlines judged by JTS: nothing of the true one is lost, nothing far from it is added.
 */
class OutwardTest {

  @Property(tries = 60)
  void roughOutlinesKeepTheBound(
      @ForAll long seed, @ForAll @IntRange(min = 17, max = 120) int points) {
    SplittableRandom random = new SplittableRandom(seed);
    judge(RandomOutlines.star(random, points, 100, 0.3), 2);
  }

  @Property(tries = 30)
  void smoothOutlinesKeepTheBound(
      @ForAll long seed, @ForAll @IntRange(min = 160, max = 250) int points) {
    double[] smooth = RandomOutlines.smooth(new SplittableRandom(seed), points, 100);
    judge(smooth, 0.5);
    assertTrue(Outward.thinned(smooth, 0.5, 16).length < smooth.length / 2);
  }

  private static void judge(double[] ring, double bound) {
    judge(ring, bound, 16);
    judge(ring, bound, 6);
  }

  private static void judge(double[] ring, double bound, int few) {
    Polygon before = Shapes.polygon(ring, 0, 0);
    Polygon after = Shapes.polygon(Outward.thinned(ring, bound, few), 0, 0);
    assertTrue(after.isValid());
    double lost = OverlayNGRobust.overlay(before, after, OverlayNG.DIFFERENCE).getArea();
    assertTrue(lost < 1e-9 * before.getArea(), "lost " + lost);
    double beyond = after.difference(before.buffer(bound * 1.001, 64)).getArea();
    assertTrue(beyond < 1e-9 * before.getArea(), "beyond the bound " + beyond);
  }

  @Test
  void outlinesOfFewPointsStayAsTheyAre() {
    double[] comb = RandomOutlines.comb(new SplittableRandom(1), 2);
    assertArrayEquals(comb, Outward.thinned(comb, 1, 16));
  }

  /** Sides that are parallel but for rounding meet a long way off, where differences are lost. */
  @Test
  void aSideBetweenParallelOnesIsNotRemoved() {
    for (int k = 1; k <= 100; k++) {
      judge(tongue(k * 0.001), 0.3);
    }
  }

  /** 100 long and 10 wide with a round end, turned. */
  private static double[] tongue(double turn) {
    int round = 40;
    double[] tongue = new double[2 * (round + 2)];
    for (int i = 0; i < round + 2; i++) {
      double end = Math.PI * (i - 1) / (round - 1);
      boolean square = i == 0 || i == round + 1;
      double x = square ? 0 : 100 + 5 * Math.sin(end);
      double y = i == 0 ? 0 : square ? 10 : 5 - 5 * Math.cos(end);
      tongue[2 * i] = Math.cos(turn) * x - Math.sin(turn) * y;
      tongue[2 * i + 1] = Math.sin(turn) * x + Math.cos(turn) * y;
    }
    return tongue;
  }
}
