package ellwand.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class ConvexPartsTest {

  @Test
  void aConvexOutlineIsOnePart() {
    List<double[]> parts = ConvexParts.of(new double[] {2, 0, 4, 0, 6, 2, 4, 4, 2, 4, 0, 2});
    assertEquals(1, parts.size());
    assertEquals(12, parts.get(0).length);
  }

  /** One hollow corner: two parts do, whichever way the cut runs. */
  @Test
  void anLIsTwoParts() {
    assertEquals(2, ConvexParts.of(new double[] {0, 0, 3, 0, 3, 1, 1, 1, 1, 4, 0, 4}).size());
  }

  /** Stars about a middle: hollow corners galore, never crossing. */
  @Property(tries = 100)
  void thePartsAreConvexAndMakeUpTheOutline(@ForAll long seed) {
    Random random = new Random(seed);
    int corners = 3 + random.nextInt(30);
    double[] star = new double[2 * corners];
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * (i + 0.4 * random.nextDouble()) / corners;
      double reach = 20 + 200 * random.nextDouble();
      star[2 * i] = reach * Math.cos(angle);
      star[2 * i + 1] = reach * Math.sin(angle);
    }
    List<Outline> parts = ConvexParts.of(star).stream().map(ConvexPartsTest::outline).toList();
    double area = outline(star).area();
    assertEquals(area, parts.stream().mapToDouble(Outline::area).sum(), 1e-6);
    assertEquals(area, Region.union(parts.stream().map(Region::of).toList()).area(), 1e-2);
    for (Outline part : parts) {
      int n = part.points().size();
      for (int i = 0; i < n; i++) {
        Point a = part.points().get(i);
        Point b = part.points().get((i + 1) % n);
        Point c = part.points().get((i + 2) % n);
        assertTrue(b.minus(a).cross(c.minus(b)) >= -1e-9, part::toString);
      }
    }
  }

  private static Outline outline(double[] ring) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < ring.length; i += 2) {
      points.add(new Point(ring[i], ring[i + 1]));
    }
    return new Outline(points);
  }
}
