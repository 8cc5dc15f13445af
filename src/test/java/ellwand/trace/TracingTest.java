package ellwand.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Pieces on a table of our own, from straight above, where every pixel lies is known. */
class TracingTest {

  private static Outline outline(List<Path> shape, double turnDegrees, double x, double y) {
    return Outline.of(PaperShapes.round(shape).flattened(0.01))
        .moved(new Motion(false, turnDegrees, x, y));
  }

  private static Scene.PaperPiece paper(Outline outline, Scene.Paper kind) {
    return new Scene.PaperPiece(outline, kind, true);
  }

  /** How far the points of a traced rim lie from an outline, mm, ascending. */
  private static List<Double> off(Outline truth, TracedPaper traced) {
    List<Double> off = new ArrayList<>();
    for (Point p : traced.rim().even(1).points()) {
      off.add(truth.distance(p));
    }
    off.sort(null);
    return off;
  }

  private static String doubts(TracedPaper traced) {
    return traced.doubts().toString();
  }

  @Test
  void theBorderOfPaperIsTracedToAPartOfAPixelOnAnyGround() {
    Outline front = outline(PaperShapes.front(), 12, 0, 0);
    Map<Scene.Ground, Scene.Paper> tried =
        Map.of(Scene.Ground.WOOD, Scene.Paper.WHITE, Scene.Ground.PALE_GREY, Scene.Paper.TISSUE);
    tried.forEach(
        (ground, kind) -> {
          Straightened straight =
              FromAbove.seen(ground, front.box().centre(), 0.3, paper(front, kind));
          List<TracedPaper> found = Tracing.of(straight);
          assertEquals(1, found.size());
          TracedPaper traced = found.get(0);
          List<Double> off = off(front, traced);
          assertTrue(off.get(off.size() * 95 / 100) < 0.3, () -> ground + " " + kind + off);
          assertTrue(off.get(off.size() - 1) < 1, () -> ground + " " + kind + off);
          assertEquals("[]", doubts(traced), ground + " " + kind);
          assertEquals(6, traced.edges().edges().size(), ground + " " + kind);
        });
  }

  @Test
  void brownPaperOnWoodIsTracedTrulyOrDoubted() {
    Outline front = outline(PaperShapes.front(), 12, 0, 0);
    Straightened straight =
        FromAbove.seen(
            Scene.Ground.WOOD, front.box().centre(), 0.3, paper(front, Scene.Paper.BROWN));
    TracedPaper traced = Tracing.of(straight).get(0);
    List<Double> off = off(front, traced);
    assertTrue(off.get(off.size() - 1) < 2 || !traced.doubts().isEmpty());
  }

  @Test
  void whatLooksLikeItsGroundIsNotFound() {
    Outline front = outline(PaperShapes.front(), 12, 0, 0);
    Point away = front.box().centre().plus(new Point(0, 3_000));
    Straightened bare =
        FromAbove.seen(Scene.Ground.WOOD, away, 0.3, paper(front, Scene.Paper.WHITE));
    InputException refused = assertThrows(InputException.class, () -> Tracing.of(bare));
    assertTrue(refused.getMessage().startsWith("no paper piece can be told"));
  }

  @Test
  void severalPiecesAreNumberedTheLargestFirst() {
    Outline front = outline(PaperShapes.front(), 0, 0, 0);
    Outline pocket = outline(PaperShapes.pocket(), 5, 300, 50);
    Point middle = Box.around(front.points()).union(pocket.box()).centre();
    List<TracedPaper> found =
        Tracing.of(
            FromAbove.seen(
                Scene.Ground.BLUE_CLOTH,
                middle,
                0.3,
                paper(pocket, Scene.Paper.WHITE),
                paper(front, Scene.Paper.BROWN)));
    assertEquals(2, found.size());
    assertEquals(front.area(), new Outline(found.get(0).rim().points()).area(), 300);
    assertEquals(pocket.area(), new Outline(found.get(1).rim().points()).area(), 300);
  }

  @Test
  void aPieceThatRunsOutOfThePictureIsDoubtedThere() {
    Outline front = outline(PaperShapes.front(), 0, 0, 0);
    Point low = front.box().centre().minus(new Point(0, 250));
    TracedPaper traced =
        Tracing.of(
                FromAbove.seen(Scene.Ground.GREEN_CLOTH, low, 0, paper(front, Scene.Paper.WHITE)))
            .get(0);
    assertTrue(doubts(traced).contains("runs out of the picture at the top"), doubts(traced));
  }

  @Test
  void aSheetThatLiesOnThePieceIsDoubted() {
    Outline front = outline(PaperShapes.front(), 0, 0, 0);
    Straightened without =
        FromAbove.seen(Scene.Ground.WOOD, front.box().centre(), 0, paper(front, Scene.Paper.WHITE));
    Outline sheet = Outline.of(new Box(180, 100, 390, 250));
    Straightened with =
        new Straightened(without.picture(), without.views(), List.of(sheet), List.of(), List.of());
    TracedPaper traced = Tracing.of(with).get(0);
    assertTrue(doubts(traced).contains("a reference sheet lies on it"), doubts(traced));
  }
}
