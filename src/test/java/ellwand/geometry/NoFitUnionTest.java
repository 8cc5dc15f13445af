package ellwand.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Judged by the union of the Minkowski sums of convex parts, made slowly with JTS. */
class NoFitUnionTest {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  @Property(tries = 60)
  void starsHaveTheUnionOfTheirPartsSums(
      @ForAll long seed, @ForAll @IntRange(min = 3, max = 12) int points) {
    SplittableRandom random = new SplittableRandom(seed);
    agrees(RandomOutlines.star(random, points, 10, 0.8), RandomOutlines.star(random, 9, 6, 0.7));
  }

  @Property(tries = 40)
  void combsWithParallelSidesHaveThemToo(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 4) int teeth) {
    SplittableRandom random = new SplittableRandom(seed);
    agrees(RandomOutlines.comb(random, teeth), RandomOutlines.comb(random, 3));
  }

  @Property(tries = 200)
  void ourRoundingWindsAboutTheSamePartsAsThatOfJts(@ForAll long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double[] still = turned(cut(any(random), random), random.nextDouble(7));
    // Often the same, so that sides lie on one another but for rounding.
    double[] other = random.nextBoolean() ? still : cut(any(random), random);
    List<Convolution.Stretch> line =
        Convolution.of(whole(still), whole(turned(other, Math.PI * random.nextInt(2))));
    WoundPlane ours = SnapRounding.plane(line);
    WoundPlane jts = NoFitUnion.noded(line);
    assertTrue(jts.wound());
    // One in a thousand of these is left to JTS.
    if (ours.wound()) {
      double area = ours.borders().stream().mapToDouble(NoFitUnionTest::area).sum();
      double wanted = jts.borders().stream().mapToDouble(NoFitUnionTest::area).sum();
      assertEquals(wanted, area, 1e-9 * wanted);
    }
  }

  @Test
  void ourRoundingSuffices() {
    SplittableRandom random = new SplittableRandom(1);
    int left = 0;
    for (int i = 0; i < 300; i++) {
      double[] outline = whole(turned(cut(any(random), random), random.nextDouble(7)));
      left += SnapRounding.plane(Convolution.of(outline, outline)).wound() ? 0 : 1;
    }
    assertTrue(left <= 3, left + " of 300 are left to JTS");
  }

  private static double[] any(SplittableRandom random) {
    return switch (random.nextInt(3)) {
      case 0 -> RandomOutlines.star(random, 3 + random.nextInt(18), 10, 0.8);
      case 1 -> RandomOutlines.smooth(random, 8 + random.nextInt(30), 10);
      default -> RandomOutlines.comb(random, 1 + random.nextInt(5));
    };
  }

  /** With points between, which lie on the sides but for rounding. */
  private static double[] cut(double[] ring, SplittableRandom random) {
    double[] cut = new double[2 * ring.length];
    for (int i = 0; i < ring.length; i += 2) {
      double share = random.nextDouble(0.1, 0.9);
      for (int axis = 0; axis < 2; axis++) {
        double next = ring[(i + 2 + axis) % ring.length];
        cut[2 * i + axis] = ring[i + axis];
        cut[2 * i + 2 + axis] = ring[i + axis] + share * (next - ring[i + axis]);
      }
    }
    return cut;
  }

  private static double[] turned(double[] ring, double radians) {
    double[] turned = new double[ring.length];
    for (int i = 0; i < ring.length; i += 2) {
      turned[i] = Math.cos(radians) * ring[i] - Math.sin(radians) * ring[i + 1];
      turned[i + 1] = Math.sin(radians) * ring[i] + Math.cos(radians) * ring[i + 1];
    }
    return turned;
  }

  private static double[] whole(double[] ring) {
    return Arrays.stream(ring).map(c -> Math.rint(c * (1 << 28))).toArray();
  }

  @Test
  void aPieceThatFitsIntoAWindowGetsAHole() {
    // a square frame with a slot, outer side 10, inner side 6, and a square of side 2
    double[] frame = {
      0, 0, 10, 0, 10, 10, 5.1, 10, 5.1, 8, 8, 8, 8, 2, 2, 2, 2, 8, 4.9, 8, 4.9, 10, 0, 10
    };
    double[] square = {0, 0, 2, 0, 2, 2, 0, 2};
    List<double[]> rings = NoFitUnion.rings(frame, square);
    assertEquals(2, rings.size());
    double area = rings.stream().mapToDouble(NoFitUnionTest::area).sum();
    assertEquals(12 * 12 - 4 * 4, area, 1e-6);
  }

  @Test
  void touchingIsNoOverlap() {
    double[] square = {0, 0, 2, 0, 2, 2, 0, 2};
    List<double[]> rings = NoFitUnion.rings(square, square);
    assertEquals(1, rings.size());
    assertEquals(16, area(rings.get(0)), 1e-7);
    assertEquals(8, rings.get(0).length, "straight corners are left out");
  }

  @Test
  void aPointThatStandsTwiceMakesNoDifference() {
    double[] twice = {0, 0, 2, 0, 2, 2, 2, 2, 0, 2, 0, 0};
    List<double[]> rings = NoFitUnion.rings(twice, twice);
    assertEquals(1, rings.size());
    assertEquals(16, area(rings.get(0)), 1e-7);
  }

  private static void agrees(double[] still, double[] moving) {
    double[] turned = new double[moving.length];
    for (int i = 0; i < moving.length; i++) {
      turned[i] = -moving[i];
    }
    List<Geometry> sums = new ArrayList<>();
    for (double[] a : ConvexParts.of(still)) {
      for (double[] b : ConvexParts.of(turned)) {
        List<Coordinate> points = new ArrayList<>();
        for (int i = 0; i < a.length; i += 2) {
          for (int k = 0; k < b.length; k += 2) {
            points.add(new Coordinate(a[i] + b[k], a[i + 1] + b[k + 1]));
          }
        }
        sums.add(
            FACTORY.createMultiPointFromCoords(points.toArray(Coordinate[]::new)).convexHull());
      }
    }
    Geometry wanted = OverlayNGRobust.union(sums);
    Geometry got = FACTORY.createPolygon();
    double area = 0;
    for (double[] ring : NoFitUnion.rings(still, moving)) {
      area += area(ring);
      got = got.symDifference(polygon(ring));
    }
    assertEquals(wanted.getArea(), area, 1e-6 * wanted.getArea());
    assertTrue(got.symDifference(wanted).getArea() < 1e-6 * wanted.getArea());
  }

  private static Polygon polygon(double[] ring) {
    Coordinate[] points = new Coordinate[ring.length / 2 + 1];
    for (int i = 0; i < points.length; i++) {
      points[i] = new Coordinate(ring[2 * i % ring.length], ring[(2 * i + 1) % ring.length]);
    }
    return FACTORY.createPolygon(points);
  }

  private static double area(double[] ring) {
    double twice = 0;
    for (int i = 0; i < ring.length; i += 2) {
      int k = (i + 2) % ring.length;
      twice += ring[i] * ring[k + 1] - ring[i + 1] * ring[k];
    }
    return twice / 2;
  }
}
