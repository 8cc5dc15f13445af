package ellwand.draw.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class PenTourTest {

  private static final Point START = new Point(0, 0);

  @Property(tries = 100)
  void neverGoesFartherAndLosesNothing(
      @ForAll @IntRange(max = 60) int count, @ForAll @IntRange(max = 100_000) int seed) {
    List<Stroke> plain = strokes(count, new Random(seed));
    List<Stroke> tour = PenTour.shortened(plain, START);
    assertTrue(PenTour.travelMm(tour, START) <= PenTour.travelMm(plain, START) + 1e-9);
    assertEquals(names(plain), names(tour));
  }

  @Property(tries = 40)
  void isNotMuchLongerThanTheBestOfAll(
      @ForAll @IntRange(min = 1, max = 5) int count, @ForAll @IntRange(max = 100_000) int seed) {
    List<Stroke> plain = new ArrayList<>();
    for (Stroke stroke : strokes(3 * count, new Random(seed))) {
      if (!stroke.closed() && plain.size() < count) {
        plain.add(stroke);
      }
    }
    double best = best(plain, START);
    double found = PenTour.travelMm(PenTour.shortened(plain, START), START);
    assertTrue(found >= best - 1e-9);
    assertTrue(found <= 1.5 * best + 1e-9, found + " mm, the best is " + best);
  }

  @Test
  void rowsOfNotchesAreDrawnOnceAlong() {
    List<Stroke> plain = new ArrayList<>();
    for (int i = 0; i < 50; i++) {
      plain.add(new Stroke(List.of(new Point(10 * i, 0), new Point(10 * i, 3)), false));
    }
    Collections.shuffle(plain, new Random(1));
    // Every second one is drawn downwards.
    assertEquals(490, PenTour.travelMm(PenTour.shortened(plain, START), START), 1e-9);
  }

  /** By trying all orders and directions. */
  private static double best(List<Stroke> left, Point at) {
    if (left.isEmpty()) {
      return 0;
    }
    double best = Double.POSITIVE_INFINITY;
    for (int i = 0; i < left.size(); i++) {
      List<Stroke> others = new ArrayList<>(left);
      Stroke next = others.remove(i);
      best = Math.min(best, at.distance(next.start()) + best(others, next.end()));
      best = Math.min(best, at.distance(next.end()) + best(others, next.start()));
    }
    return best;
  }

  private static List<Stroke> strokes(int count, Random random) {
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Point at = new Point(1000 * random.nextDouble(), 1000 * random.nextDouble());
      List<Point> points = new ArrayList<>(List.of(at));
      for (int k = 0; k < 2 + random.nextInt(3); k++) {
        points.add(at.plus(new Point(50 * random.nextDouble(), 50 * random.nextDouble())));
      }
      strokes.add(new Stroke(points, random.nextBoolean()));
    }
    return strokes;
  }

  /** What strokes are, whichever end or corner they begin at. */
  private static List<String> names(List<Stroke> strokes) {
    return strokes.stream()
        .map(
            s -> {
              TreeSet<String> points = new TreeSet<>();
              s.points().forEach(p -> points.add(p.toString()));
              return s.closed() + " " + points;
            })
        .sorted()
        .toList();
  }
}
