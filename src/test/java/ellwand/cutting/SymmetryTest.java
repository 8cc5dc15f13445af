package ellwand.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import ellwand.pattern.Piece;
import org.junit.jupiter.api.Test;

class SymmetryTest {

  private static boolean symmetric(Piece piece) {
    return Cutter.cut(piece, 1, 1).symmetric();
  }

  @Test
  void rectanglesAndShapesAlikeOnBothSidesHaveNoHand() {
    assertEquals(
        true, symmetric(Drawn.polygon(new double[] {10, 30, 10, 5}, 0, 0, 90, 0, 90, 40, 0, 40)));
    assertEquals(true, symmetric(Drawn.polygon(new double[] {9, 9, 9}, 0, 0, 200, 50, 0, 100)));
    // The same curve drawn in two halves on one side and in one on the other.
    Piece curved =
        Drawn.from(0, 0)
            .curve(50, -40, 150, -40, 200, 0, 10)
            .line(200, 100, 10)
            .curve(150, 140, 50, 140, 0, 100, 10)
            .line(0, 0, 10)
            .piece();
    assertEquals(true, symmetric(curved));
  }

  @Test
  void differentAllowancesGiveItAHand() {
    assertEquals(
        false, symmetric(Drawn.polygon(new double[] {10, 10, 15, 10}, 0, 0, 90, 0, 80, 40, 0, 40)));
    assertEquals(false, symmetric(Drawn.polygon(new double[] {9, 10, 9}, 0, 0, 200, 50, 0, 100)));
  }

  @Test
  void aShapeAlikeOnlyWhenTurnedEndForEndHasAHand() {
    // Isosceles about a line across the grain.
    assertEquals(false, symmetric(Drawn.polygon(new double[] {9, 9, 9}, 0, 0, 100, 0, 50, 200)));
  }

  @Test
  void aShapeOfWhichOnlyTheCornersLieOnItsMirrorImageHasAHand() {
    double[] none = new double[8];
    Piece u =
        Drawn.polygon(none, 0, 0, 200, 0, 200, 120, 140, 120, 140, 30, 30, 30, 30, 120, 0, 120);
    assertEquals(false, symmetric(u));
    // A shallow step that has no corner of its own on the other side.
    Piece stepped =
        Drawn.polygon(none, 0, 0, 200, 0, 200, 100, 120, 100, 120, 99.8, 80, 99.8, 80, 100, 0, 100);
    assertEquals(false, symmetric(stepped));
    assertEquals(
        true,
        symmetric(
            Drawn.polygon(
                none, 0, 0, 200, 0, 200, 100, 120, 100, 120, 99.97, 80, 99.97, 80, 100, 0, 100)));
  }

  @Test
  void aNotchOnOneSideGivesItAHand() {
    Drawn square =
        Drawn.from(0, 0).line(100, 0, 10).line(100, 100, 10).line(0, 100, 10).line(0, 0, 10);
    assertEquals(true, symmetric(square.piece()));
    assertEquals(false, symmetric(square.notch(0, 30, 1, 3).piece()));
    assertEquals(true, symmetric(square.notch(2, 70, 1, 3).piece()));
  }
}
