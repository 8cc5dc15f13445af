package ellwand.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Arrows drawn on paper pieces, and lines that are none. */
class DrawnArrowTest {

  private static final Outline FRONT =
      Outline.of(PaperShapes.round(PaperShapes.front()).flattened(0.05));

  private static Optional<DrawnArrow> on(
      Scene.Ground ground, Scene.Paper paper, boolean printed, Scene.Arrow... arrows) {
    Scene.PaperPiece piece = new Scene.PaperPiece(FRONT, paper, printed, List.of(arrows));
    return Tracing.of(FromAbove.seen(ground, FRONT.box().centre(), 0.3, piece)).get(0).arrow();
  }

  private static void assertRunsAs(Scene.Arrow drawn, Optional<DrawnArrow> found) {
    DrawnArrow arrow = found.orElseThrow(() -> new AssertionError("no arrow found"));
    assertTrue(arrow.sure());
    Point truth = drawn.to().minus(drawn.from()).unit();
    Point way = arrow.to().minus(arrow.from()).unit();
    assertEquals(0, Math.toDegrees(Math.asin(truth.cross(way))), 0.4);
    assertTrue(truth.dot(way) > 0, "it points the other way");
    assertEquals(0, drawn.to().distance(arrow.to()), 3);
    assertEquals(0, drawn.from().distance(arrow.from()), 3);
  }

  private static Point p(double x, double y) {
    return new Point(x, y);
  }

  @Test
  void withOpenHeadsInPenOnWhitePaper() {
    Scene.Arrow arrow = new Scene.Arrow(p(90, 60), p(110, 270), 10, false, true, 0.7);
    assertRunsAs(arrow, on(Scene.Ground.BLUE_CLOTH, Scene.Paper.WHITE, false, arrow));
  }

  @Test
  void withOneDarkHeadDownBrownPaper() {
    Scene.Arrow arrow = new Scene.Arrow(p(150, 250), p(60, 120), 9, true, false, 0.8);
    assertRunsAs(arrow, on(Scene.Ground.DARK_GREY, Scene.Paper.BROWN, false, arrow));
  }

  @Test
  void amongPrintedLines() {
    Scene.Arrow arrow = new Scene.Arrow(p(60, 80), p(60, 290), 8, true, true, 0.5);
    assertRunsAs(arrow, on(Scene.Ground.WOOD, Scene.Paper.WHITE, true, arrow));
  }

  @Test
  void linesWithoutAHeadAreNone() {
    Scene.Arrow bare = new Scene.Arrow(p(60, 80), p(70, 290), 0, false, false, 2);
    Scene.Arrow across = new Scene.Arrow(p(40, 150), p(190, 160), 0, false, false, 0.8);
    // A dart with the line between its legs, which meet at its tip.
    Scene.Arrow middle = new Scene.Arrow(p(130, 40), p(130, 120), 0, false, false, 0.5);
    Scene.Arrow left = new Scene.Arrow(p(112, 40), p(130, 120), 0, false, false, 0.5);
    Scene.Arrow right = new Scene.Arrow(p(148, 40), p(130, 120), 0, false, false, 0.5);
    assertEquals(
        Optional.empty(),
        on(Scene.Ground.BLUE_CLOTH, Scene.Paper.WHITE, true, bare, across, middle, left, right));
  }

  /** Faint print out of focus: a line's own flanks go back from its end on either side. */
  @Test
  void aLineThatBlurMakesWideIsNone() {
    RandomPhotos front = RandomPhotos.of(43);
    byte[] photo = front.scene().photo(front.cameras().get(0));
    Straightened straight = Photos.straighten(List.of("photo"), List.of(photo));
    assertEquals(Optional.empty(), Tracing.of(straight).get(0).arrow());
  }

  @Test
  void ofTwoThatRunDifferentlyNeitherIsSure() {
    Scene.Arrow one = new Scene.Arrow(p(60, 80), p(60, 290), 8, true, true, 0.5);
    Scene.Arrow other = new Scene.Arrow(p(90, 200), p(190, 150), 8, false, true, 0.7);
    assertFalse(
        on(Scene.Ground.BLUE_CLOTH, Scene.Paper.TISSUE, false, one, other).orElseThrow().sure());
  }
}
