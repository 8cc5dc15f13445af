package ellwand.nest.turning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.ConvexParts;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.geometry.RandomOutlines;
import ellwand.geometry.Region;
import ellwand.nest.turning.Body.Posture;
import ellwand.nest.turning.Body.Walls;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class TurnerTest {

  private static final Walls WIDE = new Walls(0, 0, 200);

  private static Body body(double[] ring, double most) {
    return new Body(
        ConvexParts.of(ring), ConvexParts.of(ring), ring, WIDE, true, true, -most, most);
  }

  private static Turner turner(List<Body> bodies) {
    return new Turner(bodies, looked -> false);
  }

  /**
   * A flaw's side leans 2 degrees. A piece whose one side is at 2 degrees to the other, drawn so
   * that the first is upright, ends soonest, 60 mm from the start, with the other upright.
   */
  @Test
  void aPieceTurnsUntilItLiesFlush() {
    double lean = 100 * Math.tan(Math.toRadians(2));
    double[] flaw = {-50, 0, 0, 0, lean, 100, -50, 100};
    Outline laid =
        new Outline(
            List.of(
                new Point(-30, -50),
                new Point(30, -50),
                new Point(30, 50),
                new Point(-30 + lean, 50)));
    double[] drawn =
        laid.moved(new Motion(false, -2, 0, 0)).points().stream()
            .flatMapToDouble(p -> DoubleStream.of(p.x(), p.y()))
            .toArray();
    Turner turner = turner(List.of(Body.fixed(List.of(flaw)), body(drawn, 0.1)));
    List<Posture> better =
        turner.straightened(
            turner.shortened(List.of(new Posture(0, 0, 0), new Posture(60, 52, 0))));
    assertEquals(60, turner.lengthMm(better), 0.1);
    assertEquals(Math.toRadians(2), better.get(1).turn(), 0.001);
  }

  /** What may not turn still moves together. */
  @Test
  void squaresMoveTogether() {
    double[] square = {-50, -50, 50, -50, 50, 50, -50, 50};
    Turner turner = turner(List.of(body(square, 0), body(square, 0), body(square, 0)));
    List<Posture> better =
        turner.shortened(
            List.of(new Posture(70, 50, 0), new Posture(190, 60, 0), new Posture(320, 140, 0)));
    assertEquals(300, turner.lengthMm(better), 0.05);
    better.forEach(place -> assertEquals(0, place.turn()));
  }

  /** Beside a longest piece that may not move along there is nothing to gain, so it ends soon. */
  @Test
  void whatCannotGetShorterEnds() {
    double[] square = {-50, -50, 50, -50, 50, 50, -50, 50};
    double[] small = {-30, -30, 30, -30, 30, 30, -30, 30};
    Body standing = new Body(List.of(square), List.of(square), square, WIDE, false, true, 0, 0);
    AtomicInteger asked = new AtomicInteger();
    Turner turner =
        new Turner(List.of(standing, body(small, 0.1)), looked -> asked.incrementAndGet() > 1000);
    List<Posture> better =
        turner.shortened(List.of(new Posture(150, 50, 0), new Posture(50, 150, 0)));
    assertEquals(200, turner.lengthMm(better), 1e-9);
    assertTrue(asked.get() < 100, asked + " trials");
  }

  /** A lone piece that lies askew for nothing is laid straight again. */
  @Test
  void whatLiesAskewForNothingIsStraightened() {
    double[] square = {-50, -50, 50, -50, 50, 50, -50, 50};
    Turner turner = turner(List.of(body(square, 0.1)));
    assertEquals(0, turner.straightened(List.of(new Posture(60, 60, 0.08))).get(0).turn());
  }

  /** Hollow stars about flaws: shorter or as they were, legal by another library's areas. */
  @Property(tries = 60)
  void theResultIsLegalAndNotLonger(@ForAll long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<double[]> rings = new ArrayList<>();
    List<Body> bodies = new ArrayList<>();
    List<Posture> places = new ArrayList<>();
    double x = 0;
    int count = 2 + random.nextInt(5);
    for (int i = 0; i < count; i++) {
      double[] ring = RandomOutlines.star(random, 4 + random.nextInt(9), 40, 0.5);
      rings.add(ring);
      boolean flaw = random.nextInt(6) == 0;
      bodies.add(flaw ? Body.fixed(ConvexParts.of(ring)) : body(ring, 0.1 * random.nextInt(2)));
      x += 90;
      places.add(new Posture(x, 60 + random.nextInt(80), 0));
    }
    Turner turner = turner(bodies);
    List<Posture> shorter = turner.shortened(places);
    List<Posture> straight = turner.straightened(shorter);
    assertTrue(turner.lengthMm(shorter) <= turner.lengthMm(places));
    assertTrue(turner.lengthMm(straight) <= turner.lengthMm(shorter) + 0.051);
    for (List<Posture> result : List.of(shorter, straight)) {
      List<Outline> laid = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        Posture at = result.get(i);
        assertTrue(at.turn() >= bodies.get(i).leastTurn() && at.turn() <= bodies.get(i).mostTurn());
        laid.add(laid(rings.get(i), at));
      }
      for (int i = 0; i < count; i++) {
        if (bodies.get(i).slidesAlong()) {
          assertTrue(laid.get(i).box().minX() >= -1e-4 && laid.get(i).box().minY() >= -1e-4);
          assertTrue(laid.get(i).box().maxY() <= 200 + 1e-4);
        }
        for (int k = 0; k < i; k++) {
          double shared = Region.of(laid.get(i)).intersect(Region.of(laid.get(k))).area();
          assertEquals(0, shared, 1e-6, "stars " + k + " and " + i);
        }
      }
    }
    for (int i = 0; i < count; i++) {
      assertTrue(Math.abs(straight.get(i).turn()) <= Math.abs(shorter.get(i).turn()));
    }
  }

  private static Outline laid(double[] ring, Posture at) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < ring.length; i += 2) {
      points.add(new Point(ring[i], ring[i + 1]));
    }
    return new Outline(points).moved(new Motion(false, Math.toDegrees(at.turn()), at.x(), at.y()));
  }
}
