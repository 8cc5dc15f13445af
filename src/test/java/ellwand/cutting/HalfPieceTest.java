package ellwand.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Point;
import ellwand.pattern.Piece;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Half pieces, opened, are the whole piece. */
class HalfPieceTest {

  /** A bodice front, neckline and hem square to the fold at y = 0. */
  private static final Piece HALF =
      Drawn.from(0, 0)
          .fold(250, 0)
          .curve(250, 25, 270, 55, 310, 60, 6)
          .line(300, 130, 15)
          .curve(250, 115, 205, 125, 190, 160, 10)
          .line(0, 150, 15)
          .hem(0, 0, 30)
          .piece();

  private static final Piece WHOLE =
      Drawn.from(250, 0)
          .curve(250, 25, 270, 55, 310, 60, 6)
          .line(300, 130, 15)
          .curve(250, 115, 205, 125, 190, 160, 10)
          .line(0, 150, 15)
          .hem(0, -150, 30)
          .line(190, -160, 15)
          .curve(205, -125, 250, -115, 300, -130, 10)
          .line(310, -60, 15)
          .curve(270, -55, 250, -25, 250, 0, 6)
          .piece();

  @Test
  void openedItIsTheWholePieceCutAtOnce() {
    CutPiece opened = Cutter.cut(HALF, 1, 1).opened();
    CutPiece whole = Cutter.cut(WHOLE, 1, 1);
    assertTrue(Reference.apart(List.of(opened.cutting()), List.of(whole.cutting())) < 1e-6);
    assertTrue(Reference.apart(List.of(opened.sewing()), List.of(whole.sewing())) < 1e-6);
  }

  @Test
  void aUsualPieceHasFewCorners() {
    assertTrue(Cutter.cut(HALF, 1, 1).cutting().points().size() < 40);
    assertTrue(Cutter.cut(HALF, 1, 1).opened().cutting().points().size() < 70);
  }

  @Test
  void openedItHasNoStepAtTheFold() {
    List<Point> ring = Cutter.cut(HALF, 1, 1).opened().cutting().points();
    List<Point> onFold = ring.stream().filter(p -> Math.abs(p.y()) < 1e-3).toList();
    // The hem runs straight across the fold, so only the neckline has a point on it.
    assertEquals(List.of(new Point(256, 0)), onFold);
  }

  @Test
  void aSlantingHemEndsOnTheFoldLine() {
    // The hem slants 3 in 4, the fold side shorter: square to it the allowance would cross the
    // fold.
    Piece blunt =
        Drawn.from(75, 0).fold(300, 0).line(300, 100, 10).line(0, 100, 10).hem(75, 0, 20).piece();
    CutPiece cut = Cutter.cut(blunt, 1, 1);
    assertEquals(0, cut.cutting().box().minY(), 1e-12);
    // The hem line 4x + 3y = 300 moved out by 20: 4x + 3y = 200.
    assertEquals(50, cut.fold().orElseThrow().from().x(), 1e-9);
    assertTrue(cut.cutting().points().contains(cut.fold().orElseThrow().from()));
    // Mirrored in the fold the two halves meet in one point.
    assertEquals(
        1,
        cut.opened().cutting().points().stream().filter(p -> Math.abs(p.x() - 50) < 1e-9).count());
  }

  @Test
  void notchesAreMirroredToo() {
    Piece notched =
        Drawn.from(0, 0)
            .fold(300, 0)
            .line(300, 100, 10)
            .line(0, 100, 10)
            .line(0, 0, 20)
            .notch(1, 40, 1, 3)
            .notch(3, 100, 1, 3)
            .piece();
    List<CutPiece.Stroke> strokes = Cutter.cut(notched, 1, 1).opened().notches();
    // The one at the end of the hem stands on the fold and stays one.
    assertEquals(3, strokes.size());
    assertEquals(new Point(310, 40), strokes.get(0).from());
    assertEquals(new Point(310, -40), strokes.get(2).from());
  }
}
