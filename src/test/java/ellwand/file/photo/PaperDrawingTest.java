package ellwand.file.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.file.drawn.Drawing;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import ellwand.trace.DrawnArrow;
import ellwand.trace.NamedEdge;
import ellwand.trace.PaperPiece;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PaperDrawingTest {

  private static final Optional<DrawnArrow> ARROW =
      Optional.of(new DrawnArrow(new Point(30, 20), new Point(40, 80), true));

  private static PaperPiece triangle(String first, String second, String third) {
    Point a = new Point(0, 0);
    Point b = new Point(100, 0);
    Point c = new Point(0, 120);
    return new PaperPiece(
        "patch",
        List.of(
            new NamedEdge(first, Path.line(a, b)),
            new NamedEdge(second, Path.line(b, c)),
            new NamedEdge(third, Path.line(c, a))),
        List.of());
  }

  /** The grain lines in the drawing of a piece with an arrow on it. */
  private static List<Point> grains(Optional<String> asked) {
    HowCut how = new HowCut(Optional.empty(), Optional.empty(), asked);
    Drawing drawing =
        PaperDrawing.of("a.jpg", triangle("hem", "side", "centre"), how, ARROW, List.of());
    return drawing.lines().stream()
        .filter(l -> l.label().name().equals(Optional.of("grain")))
        .map(l -> l.path().end().minus(l.path().start()))
        .toList();
  }

  @Test
  void theArrowIsTheGrainUnlessItIsSaidToRunElsewhere() {
    assertEquals(List.of(new Point(10, 60)), grains(Optional.empty()));
    assertEquals(List.of(new Point(0, -120)), grains(Optional.of("centre")));
    assertEquals(List.of(), grains(Optional.of("up")));
  }

  @Test
  void twoEdgesOfOneNameAreRefused() {
    InputException refused =
        assertThrows(
            InputException.class,
            () ->
                PaperDrawing.of(
                    "a.jpg",
                    triangle("hem", "side", "side"),
                    HowCut.AS_TRACED,
                    Optional.empty(),
                    List.of()));
    assertTrue(refused.getMessage().contains("two edges are called 'side'"));
  }
}
