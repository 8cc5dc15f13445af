package ellwand.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Simulated photos of pieces from a pocket to a trouser leg: what is not refused is true, 95 of 100
 * places to 1 mm, all to 2 mm, lengths to 0.3 %.
 */
class PhotographedSetTest {

  /** Short edges cannot be held to a share of their length, mm. */
  private static final double SHORT_MM = 0.7;

  /**
   * A scene.
   *
   * @param refused whether no answer is an answer: what a photo so bad deserves
   */
  private record Shot(
      String shape,
      Scene.Ground ground,
      Scene.Paper paper,
      double tilt,
      double blur,
      double shadow,
      boolean refused) {}

  private static final List<Shot> SHOTS =
      List.of(
          new Shot("pocket", Scene.Ground.WOOD, Scene.Paper.WHITE, 35, 0.8, 0.3, false),
          new Shot("pocket", Scene.Ground.DARK_GREY, Scene.Paper.BROWN, 20, 1.6, 0.6, false),
          new Shot("front", Scene.Ground.GREEN_CLOTH, Scene.Paper.TISSUE, 30, 0.8, 0.5, false),
          new Shot("front", Scene.Ground.PALE_GREY, Scene.Paper.WHITE, 10, 0.8, 0.3, false),
          new Shot("front", Scene.Ground.WOOD, Scene.Paper.BROWN, 15, 0.8, 0.3, true),
          new Shot("pocket", Scene.Ground.PALE_GREY, Scene.Paper.TISSUE, 35, 2.5, 0.7, true),
          new Shot("leg", Scene.Ground.BLUE_CLOTH, Scene.Paper.WHITE, 12, 0.8, 0.3, false));

  @TestFactory
  List<DynamicTest> trueOrRefused() {
    return SHOTS.stream()
        .map(shot -> DynamicTest.dynamicTest(shot.toString(), () -> trueOrRefused(shot)))
        .toList();
  }

  private static List<Path> shape(Shot shot) {
    return switch (shot.shape) {
      case "pocket" -> PaperShapes.pocket();
      case "front" -> PaperShapes.front();
      default -> PaperShapes.leg();
    };
  }

  private static void trueOrRefused(Shot shot) {
    boolean leg = shot.shape.equals("leg");
    Outline truth =
        Outline.of(PaperShapes.round(shape(shot)).flattened(0.01))
            .moved(new Motion(false, leg ? 95 : 6, 0, 0));
    Box box = truth.box();
    Point middle = box.centre();
    List<Scene.LaidSheet> sheets =
        leg
            ? List.of(
                Scene.LaidSheet.a4(1, box.minX(), box.maxY() + 20, 0),
                Scene.LaidSheet.a4(2, box.maxX() - 230, box.maxY() + 20, 3),
                Scene.LaidSheet.a4(3, middle.x() - 100, box.minY() - 330, 2))
            : List.of(
                Scene.LaidSheet.a4(1, box.minX() - 235, middle.y() - 150, 2),
                Scene.LaidSheet.a4(2, box.maxX() + 25, middle.y() - 140, -2));
    Scene scene =
        new Scene(
            shot.ground,
            sheets,
            List.of(new Scene.PaperPiece(truth, shot.paper, true)),
            new Scene.Flaws(shot.blur, 0.01, shot.shadow, 85, 1));
    double distance = (leg ? 1_250 : box.width() > 300 ? 700 : 600) * (1 + shot.tilt / 120);
    SimulatedCamera camera =
        SimulatedCamera.phone(middle, distance)
            .tilted(shot.tilt, 75)
            .lens(0.03, -0.05, 0.01)
            .scaled(0.5);
    try {
      Straightened straight = Photos.straighten(List.of("photo"), List.of(scene.photo(camera)));
      List<TracedPaper> found = Tracing.of(straight);
      assertEquals(1, found.size());
      TracedPaper traced = found.get(0);
      if (traced.doubts().isEmpty()) {
        Motion onTable = onTable(truth, camera, straight.views().get(0).mapping());
        assertTrueToTheTable(truth, traced, onTable);
        assertLengths(shape(shot), traced);
      } else {
        assertTrue(shot.refused, () -> traced.doubts().toString());
      }
    } catch (InputException e) {
      assertTrue(shot.refused, e.getMessage());
    }
  }

  /** From the photo's plane to the table: the turn and shift that fit best. */
  private static Motion onTable(Outline truth, SimulatedCamera camera, Mapping mapping) {
    List<Point> table = new Rim(truth.points()).even(5).points();
    List<Point> seen = table.stream().map(p -> mapping.mmAt(camera.pixelOf(p, 0))).toList();
    Point from = mean(seen);
    Point to = mean(table);
    double along = 0;
    double across = 0;
    for (int i = 0; i < table.size(); i++) {
      Point a = seen.get(i).minus(from);
      Point b = table.get(i).minus(to);
      along += a.dot(b);
      across += a.cross(b);
    }
    Motion turn = new Motion(false, Math.toDegrees(Math.atan2(across, along)), 0, 0);
    Point shift = to.minus(turn.apply(from));
    return turn.shifted(shift.x(), shift.y());
  }

  private static Point mean(List<Point> points) {
    Point sum = points.stream().reduce(new Point(0, 0), Point::plus);
    return sum.times(1.0 / points.size());
  }

  private static void assertTrueToTheTable(Outline truth, TracedPaper traced, Motion onTable) {
    List<Double> off = new ArrayList<>();
    Rim drawn = new Rim(PaperShapes.round(traced.edges().edges()).flattened(0.02));
    for (Point p : drawn.even(2).points()) {
      off.add(truth.distance(onTable.apply(p)));
    }
    off.sort(null);
    double most = off.get(off.size() - 1);
    double usual = off.get(off.size() * 95 / 100);
    String said = String.format(Locale.ROOT, "95 of 100 within %.2f, all within %.2f", usual, most);
    assertTrue(usual <= 1 && most <= 2, said);
    assertTrue(usual <= traced.errorMm() + 0.2, said + ", told " + traced.errorMm());
  }

  /**
   * The whole way round, and each edge between drawn corners, which is found as one; a round edge,
   * as a pocket has, may have one corner more.
   */
  private static void assertLengths(List<Path> drawn, TracedPaper traced) {
    List<Double> found = traced.edges().edges().stream().map(Path::length).toList();
    double round = drawn.stream().mapToDouble(Path::length).sum();
    assertEquals(round, found.stream().mapToDouble(mm -> mm).sum(), 0.003 * round);
    boolean bent = drawn.stream().anyMatch(e -> e.segments().size() > 3);
    int more = found.size() - drawn.size();
    assertTrue(more == 0 || bent && more == 1, found.toString());
    for (Path edge : drawn) {
      double mm = edge.length();
      double off = Math.max(SHORT_MM, 0.003 * mm);
      int parts = edge.segments().size() > 3 ? 1 + more : 1;
      assertTrue(
          IntStream.range(0, found.size())
              .mapToDouble(i -> sum(found, i, parts))
              .anyMatch(f -> Math.abs(f - mm) <= off),
          () -> mm + " in " + found);
    }
  }

  private static double sum(List<Double> lengths, int from, int count) {
    return IntStream.range(from, from + count)
        .mapToDouble(i -> lengths.get(i % lengths.size()))
        .sum();
  }
}
