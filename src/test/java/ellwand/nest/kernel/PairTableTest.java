package ellwand.nest.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.NoFitUnion;
import ellwand.geometry.RandomOutlines;
import ellwand.work.TooLittleMemory;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/** The table's depth judged by JTS: 0 without overlap, else the distance to the nearest exit. */
class PairTableTest {

  @Property(tries = 25)
  void depthIsTheDistanceToTheBorderOfTheNoFitPolygon(
      @ForAll long seed, @ForAll @IntRange(min = 3, max = 20) int points) {
    SplittableRandom random = new SplittableRandom(seed);
    double[] still = RandomOutlines.star(random, points, 10, 0.8);
    double[] moving = RandomOutlines.star(random, 8, 5, 0.7);
    judge(still, moving, random, 10, 15);
  }

  @Property(tries = 15)
  void combsTouchAndNest(@ForAll long seed, @ForAll @IntRange(min = 2, max = 4) int teeth) {
    SplittableRandom random = new SplittableRandom(seed);
    judge(RandomOutlines.comb(random, teeth), RandomOutlines.comb(random, 1), random, 5 * teeth, 8);
  }

  @Property(tries = 25)
  void tablesOfBoxesAreThoseOfTheirNoFitPolygons(@ForAll long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Shape> shapes = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      shapes.add(new Shape(RandomOutlines.star(random, 7, 10, 0.8)));
    }
    int obstacle = 2;
    Outlines boxed = new Outlines(shapes, Set.of(obstacle), NoFitUnion::rings, 0).boxed();
    for (int moving = 0; moving < obstacle; moving++) {
      for (int still = 0; still < shapes.size(); still++) {
        double[] fixed = still == obstacle ? centred(shapes.get(still)) : box(shapes.get(still));
        PairTable judge =
            PairTableBuilder.build(NoFitUnion.rings(fixed, box(shapes.get(moving))), 5);
        double sign = boxed.tables.sign(still, moving);
        for (int i = 0; i < 40; i++) {
          double x = random.nextDouble(-25, 25);
          double y = random.nextDouble(-25, 25);
          assertEquals(
              judge.depth(x, y),
              boxed.tables.table(still, moving).depth(sign * x, sign * y),
              1e-6,
              () -> "seed " + seed);
        }
      }
    }
  }

  @Test
  void boxesNeedNoUnionHoweverTheyAreTurned() {
    // Of this one the box is no longer about its middle once it is thinned.
    double[] star = RandomOutlines.star(new SplittableRandom(3), 40, 10, 0.8);
    NoFit none =
        (still, moving) -> {
          throw new AssertionError("asked for a union");
        };
    List<Shape> shapes = List.of(new Shape(star), new Shape(Rings.turned(star)));
    Tables tables = new Outlines(shapes, Set.of(), none, 1).boxed().tables;
    for (int moving = 0; moving < 2; moving++) {
      for (int still = 0; still < 2; still++) {
        assertTrue(tables.table(still, moving).depth(0, 0) > 5);
      }
    }
  }

  private static double[] centred(Shape shape) {
    return Rings.shifted(
        shape.coordinates(),
        -(shape.minX() + shape.maxX()) / 2,
        -(shape.minY() + shape.maxY()) / 2);
  }

  private static double[] box(Shape shape) {
    double x = (shape.maxX() - shape.minX()) / 2;
    double y = (shape.maxY() - shape.minY()) / 2;
    return new double[] {-x, -y, x, -y, x, y, -x, y};
  }

  private static void judge(
      double[] still, double[] moving, SplittableRandom random, double spanX, double spanY) {
    List<double[]> rings = NoFitUnion.rings(still, moving);
    PairTable table = PairTableBuilder.build(rings, 5);
    Geometry borders =
        Shapes.FACTORY.createMultiLineString(
            rings.stream()
                .map(r -> Shapes.polygon(r, 0, 0).getExteriorRing())
                .toArray(LineString[]::new));
    Polygon fixed = Shapes.polygon(still, 0, 0);
    double[] way = new double[2];
    for (int i = 0; i < 40; i++) {
      double x = random.nextDouble(-spanX, 2 * spanX);
      double y = random.nextDouble(-spanY, spanY);
      double depth = table.depth(x, y);
      double overlap = Shapes.overlap(fixed, Shapes.polygon(moving, x, y));
      double toBorder = borders.distance(Shapes.FACTORY.createPoint(new Coordinate(x, y)));
      assertEquals(overlap > 1e-9 ? toBorder : 0, depth, 1e-6, "at " + x + ", " + y);
      assertEquals(depth, table.exit(x, y, way, 0), 1e-12);
      if (depth > 1e-4) {
        double past = depth + 1e-6;
        Polygon out = Shapes.polygon(moving, x + past * way[0], y + past * way[1]);
        assertTrue(Shapes.overlap(fixed, out) < 1e-6, "the exit leads out");
      }
    }
  }

  @Test
  void aTouchingPoseHasNoDepthAndOneInsideAHoleNeither() {
    double[] frame = {
      0, 0, 10, 0, 10, 10, 5.1, 10, 5.1, 8, 8, 8, 8, 2, 2, 2, 2, 8, 4.9, 8, 4.9, 10, 0, 10
    };
    double[] square = {0, 0, 2, 0, 2, 2, 0, 2};
    PairTable table = PairTableBuilder.build(NoFitUnion.rings(frame, square), 5);
    assertEquals(0, table.depth(10, 3), 1e-9);
    assertEquals(0, table.depth(4, 4), 0, "inside the frame");
    assertEquals(0, table.depth(2, 2), 1e-9, "in the frame's corner");
    assertEquals(0.5, table.depth(1.5, 4), 1e-9, "half a unit into the frame's wall");
  }

  @Test
  void pairsThatDifferByAHalfTurnShareTheirTable() {
    double[] a = RandomOutlines.star(new SplittableRandom(1), 7, 4, 0.5);
    double[] b = RandomOutlines.star(new SplittableRandom(2), 7, 4, 0.5);
    int[] made = {0};
    List<double[]> outlines = List.of(a, b, Rings.turned(a), Rings.turned(b));
    Tables tables =
        new Tables(
            outlines,
            outlines,
            Set.of(),
            (still, moving) -> {
              made[0]++;
              return NoFitUnion.rings(still, moving);
            },
            5);
    SplittableRandom random = new SplittableRandom(3);
    double[][] all = {a, b, Rings.turned(a), Rings.turned(b)};
    for (int i = 0; i < 200; i++) {
      int s = random.nextInt(4);
      int m = random.nextInt(4);
      double x = random.nextDouble(-8, 8);
      double y = random.nextDouble(-8, 8);
      double sign = tables.sign(s, m);
      double depth = tables.table(s, m).depth(sign * x, sign * y);
      double overlap = Shapes.overlap(Shapes.polygon(all[s], 0, 0), Shapes.polygon(all[m], x, y));
      assertEquals(overlap > 1e-9, depth > 1e-9, s + " against " + m);
    }
    assertEquals(6, made[0], "a-a, a-b, b-b, each alike and half turned");
  }

  /** Three pairs, each alike and half turned; two of the six were made. */
  @Test
  void tellsHowMuchMemoryAllPairsWouldTake() {
    double[] a = RandomOutlines.star(new SplittableRandom(1), 7, 4, 0.5);
    double[] b = RandomOutlines.star(new SplittableRandom(2), 7, 4, 0.5);
    int[] made = {0};
    List<double[]> outlines = List.of(a, b, Rings.turned(a), Rings.turned(b));
    Tables tables =
        new Tables(
            outlines,
            outlines,
            Set.of(),
            (still, moving) -> {
              if (++made[0] > 2) {
                throw new OutOfMemoryError("Java heap space");
              }
              return NoFitUnion.rings(still, moving);
            },
            5);
    long bytes = tables.table(0, 0).bytes() + tables.table(0, 1).bytes();
    TooLittleMemory told = assertThrows(TooLittleMemory.class, () -> tables.table(1, 1));
    assertEquals(bytes / 2 * 6, told.neededBytes());
    assertEquals("the 2 different shapes to be laid, which meet in 6 pairs,", told.getMessage());
  }

  /**
   * Two rectangles, one turned by 1.5e-7 degrees: their no-fit polygon has corners in the middle of
   * its sides, and a place beside one is as near to the one half of the side as to the other.
   */
  @Test
  void aCornerThatHardlyBendsIsAsGoodAsNone() {
    double[] still = {-83.5, -543.8, 83.5, -543.8, 83.5, 543.8, -83.5, 543.8};
    double[] moving = new double[8];
    double turn = Math.toRadians(1.4632802375309063e-7);
    for (int i = 0; i < 8; i += 2) {
      moving[i] = still[i] - turn * still[i + 1];
      moving[i + 1] = still[i + 1] + turn * still[i];
    }
    PairTable table = PairTableBuilder.build(NoFitUnion.rings(still, moving), 5);
    for (int i = -40; i <= 40; i++) {
      double y = 1e-8 * i;
      assertEquals(167 - 141.1, table.depth(-141.1, y), 1e-5, () -> "at " + y);
      assertEquals(0, table.depth(-167.1, y), 0, () -> "at " + y);
    }
  }
}
