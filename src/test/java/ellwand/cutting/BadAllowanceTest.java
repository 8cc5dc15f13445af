package ellwand.cutting;

import static ellwand.cutting.Drawn.polygon;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import ellwand.pattern.Piece;
import ellwand.problem.InputException;
import org.junit.jupiter.api.Test;

/** Pieces that cannot be cut as drawn are refused with the place and the remedy. */
class BadAllowanceTest {

  private static String refused(Piece piece) {
    return assertThrows(InputException.class, () -> Cutter.cut(piece, 1, 1)).getMessage();
  }

  private static Piece slot(double allowance) {
    return polygon(
        new double[] {10, 10, 10, 10, allowance, 10, 10, 10},
        0,
        0,
        300,
        0,
        300,
        200,
        160,
        200,
        160,
        100,
        140,
        100,
        140,
        200,
        0,
        200);
  }

  @Test
  void aSlotNarrowerThanItsAllowances() {
    assertEquals(
        "piece front, edge e3: its allowance of 10.0 mm is more than the concave corner can take: nothing"
            + " is left of its cutting line. Make the allowance narrower, or open the corner out.",
        refused(slot(10)));
  }

  @Test
  void aShortEdgeBesideAWideAllowanceAtAnInnerCorner() {
    var stairs =
        polygon(
            new double[] {10, 10, 10, 10, 30, 10},
            0,
            0,
            200,
            0,
            200,
            120,
            180,
            120,
            100,
            100,
            0,
            100);
    assertEquals(true, Drawn.cutting(stairs).area() > 0);
    var step =
        polygon(
            new double[] {10, 10, 10, 10, 30, 10},
            0,
            0,
            200,
            0,
            200,
            115,
            100,
            115,
            100,
            100,
            0,
            100);
    assertEquals(
        "piece front, edge e4: its allowance of 30.0 mm is more than the concave corner can take: nothing"
            + " is left of the cutting line of edge e3 beside it. Make the allowance narrower, or"
            + " open the corner out.",
        refused(step));
  }

  @Test
  void aGapWithANarrowMouth() {
    var keyhole =
        polygon(
            new double[] {8, 8, 8, 8, 8, 8, 8, 8, 8, 8, 8, 8},
            0,
            0,
            300,
            0,
            300,
            200,
            155,
            200,
            155,
            150,
            200,
            150,
            200,
            50,
            100,
            50,
            100,
            150,
            145,
            150,
            145,
            200,
            0,
            200);
    assertEquals(
        "piece front, edge e3: its allowance of 8.0 mm is more than there is room for: nothing is"
            + " left of its cutting line. Make the allowance narrower, or open the corner out.",
        refused(keyhole));
  }

  @Test
  void anEdgeThatRunsOnAlongTheFold() {
    var piece =
        Drawn.from(0, 0)
            .fold(200, 0)
            .line(300, 0, 10)
            .line(300, 100, 10)
            .line(0, 100, 10)
            .line(0, 0, 10)
            .piece();
    assertEquals(
        "piece front, edge e1: its cutting line does not meet the fold line. Draw the edge square"
            + " to the fold where the two meet.",
        refused(piece));
  }

  @Test
  void aHalfPieceOnBothSidesOfItsFold() {
    var piece =
        Drawn.from(0, 0)
            .fold(200, 0)
            .line(200, 100, 10)
            .line(0, 100, 10)
            .line(-100, -50, 10)
            .line(-50, -50, 10)
            .line(0, 0, 10)
            .piece();
    assertEquals(true, refused(piece).contains("past its fold edge"), refused(piece));
  }

  @Test
  void aShortEdgeBetweenMuchNarrowerAllowances() {
    var chamfered = polygon(new double[] {5, 5, 40, 5, 5}, 0, 0, 200, 0, 200, 64, 164, 100, 0, 100);
    assertEquals(
        "piece front, edge e2: its allowance of 40.0 mm is more than there is room for:"
            + " nothing is left of its cutting line. Make the allowance narrower, or open the"
            + " corner out.",
        refused(chamfered));
  }
}
