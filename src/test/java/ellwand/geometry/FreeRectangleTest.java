package ellwand.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class FreeRectangleTest {

  private static final Box CLOTH = new Box(0, 0, 1000, 600);

  private static Outline box(double x0, double y0, double x1, double y1) {
    return Outline.of(new Box(x0, y0, x1, y1));
  }

  private static void near(Box expected, Optional<Box> found) {
    Box box = found.orElseThrow();
    assertEquals(expected.minX(), box.minX(), 1e-6);
    assertEquals(expected.minY(), box.minY(), 1e-6);
    assertEquals(expected.maxX(), box.maxX(), 1e-6);
    assertEquals(expected.maxY(), box.maxY(), 1e-6);
  }

  @Test
  void emptyClothIsLeftOverWhole() {
    near(CLOTH, FreeRectangle.largest(CLOTH, List.of()));
  }

  @Test
  void fullClothLeavesNothing() {
    assertEquals(Optional.empty(), FreeRectangle.largest(CLOTH, List.of(box(-10, -10, 1010, 610))));
    assertEquals(Optional.empty(), FreeRectangle.largest(new Box(5, 0, 5, 9), List.of()));
  }

  @Test
  void sidesLieExactlyOnTheOutlines() {
    near(
        new Box(123.456, 0, 1000, 432.1),
        FreeRectangle.largest(
            CLOTH, List.of(box(0, 0, 123.456, 600), box(123.456, 432.1, 1000, 600))));
  }

  /** The largest rectangle in a right triangle has half its area, from the middle of its slope. */
  @Test
  void halfOfATriangleIsFound() {
    Outline other =
        Outline.of(List.of(new Point(0, 600), new Point(1000, 0), new Point(1000, 600)));
    Box found = FreeRectangle.largest(CLOTH, List.of(other)).orElseThrow();
    assertEquals(150_000, found.area(), 1500);
    assertTrue(found.area() <= 150_000.001);
  }

  @Test
  void aNarrowOneCanBePassedOver() {
    // Free are a strip of 1000 x 100 and, above the taken middle, a corner of 250 x 300.
    List<Outline> taken = List.of(box(0, 100, 750, 600), box(750, 100, 1000, 300));
    near(new Box(0, 0, 1000, 100), FreeRectangle.largest(CLOTH, taken, 50));
    near(new Box(750, 300, 1000, 600), FreeRectangle.largest(CLOTH, taken, 150));
    assertEquals(Optional.empty(), FreeRectangle.largest(CLOTH, taken, 300));
  }

  /** Boxes at whole places: the best rectangle is bounded by their sides, so try all of those. */
  @Property(tries = 60)
  void noFreeRectangleAmongBoxesIsLargerByMoreThanTwoCells(@ForAll long seed) {
    Random random = new Random(seed);
    Box cloth = new Box(0, 0, 300, 200);
    List<Box> boxes = new ArrayList<>();
    for (int i = random.nextInt(8); i >= 0; i--) {
      double x = random.nextInt(300);
      double y = random.nextInt(200);
      boxes.add(new Box(x, y, x + 1 + random.nextInt(120), y + 1 + random.nextInt(90)));
    }
    double best = slowLargest(cloth, boxes);
    Optional<Box> found = FreeRectangle.largest(cloth, boxes.stream().map(Outline::of).toList());
    // With sides at whole mm, the 1 mm grid loses nothing.
    assertEquals(best, found.map(Box::area).orElse(0.0), 1e-6);
  }

  private static double slowLargest(Box cloth, List<Box> boxes) {
    double[] xs = cuts(cloth.minX(), cloth.maxX(), boxes, true);
    double[] ys = cuts(cloth.minY(), cloth.maxY(), boxes, false);
    double best = 0;
    for (double x0 : xs) {
      for (double x1 : xs) {
        for (double y0 : ys) {
          for (double y1 : ys) {
            if (x0 < x1
                && y0 < y1
                && boxes.stream()
                    .noneMatch(
                        b -> b.minX() < x1 && x0 < b.maxX() && b.minY() < y1 && y0 < b.maxY())) {
              best = Math.max(best, (x1 - x0) * (y1 - y0));
            }
          }
        }
      }
    }
    return best;
  }

  private static double[] cuts(double low, double high, List<Box> boxes, boolean along) {
    return DoubleStream.concat(
            DoubleStream.of(low, high),
            boxes.stream()
                .flatMapToDouble(
                    b ->
                        along
                            ? DoubleStream.of(b.minX(), b.maxX())
                            : DoubleStream.of(b.minY(), b.maxY())))
        .filter(v -> v >= low && v <= high)
        .distinct()
        .toArray();
  }

  /** Whatever the shapes, what is found is free, and no neighbour of it is. */
  @Property(tries = 60)
  void whatIsFoundIsFreeAndCannotBeWidened(@ForAll long seed) {
    Random random = new Random(seed);
    List<Outline> taken = new ArrayList<>();
    for (int i = random.nextInt(12); i >= 0; i--) {
      taken.add(blob(random));
    }
    Optional<Box> found = FreeRectangle.largest(CLOTH, taken);
    if (found.isEmpty()) {
      return;
    }
    Box box = found.get();
    assertTrue(covered(box, taken) < 1e-3);
    double wider = 0.01;
    assertTrue(box.maxX() + wider > CLOTH.maxX() || covered(grown(box, 0, 0, wider, 0), taken) > 0);
    assertTrue(box.minX() - wider < CLOTH.minX() || covered(grown(box, wider, 0, 0, 0), taken) > 0);
    assertTrue(box.maxY() + wider > CLOTH.maxY() || covered(grown(box, 0, 0, 0, wider), taken) > 0);
    assertTrue(box.minY() - wider < CLOTH.minY() || covered(grown(box, 0, wider, 0, 0), taken) > 0);
  }

  private static Box grown(Box b, double lowX, double lowY, double highX, double highY) {
    return new Box(b.minX() - lowX, b.minY() - lowY, b.maxX() + highX, b.maxY() + highY);
  }

  private static double covered(Box box, List<Outline> taken) {
    return taken.stream().mapToDouble(o -> Region.of(o).intersect(Region.of(box)).area()).sum();
  }

  private static Outline blob(Random random) {
    int corners = 3 + random.nextInt(20);
    double x = 1000 * random.nextDouble();
    double y = 600 * random.nextDouble();
    double radius = 20 + 180 * random.nextDouble();
    List<Point> ring = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * i / corners;
      double r = radius * (0.3 + 0.7 * random.nextDouble());
      ring.add(new Point(x + r * Math.cos(angle), y + r * Math.sin(angle)));
    }
    return Outline.of(ring);
  }
}
