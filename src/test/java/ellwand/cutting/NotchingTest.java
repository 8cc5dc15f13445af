package ellwand.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import ellwand.geometry.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

class NotchingTest {

  private static List<CutPiece.Stroke> strokes(int edge, double at, int strokes, double depth) {
    return Cutter.cut(
            Drawn.from(0, 0)
                .line(200, 0, 10)
                .curve(255, 0, 255, 100, 200, 100, 15)
                .line(0, 100, 10)
                .line(0, 0, 10)
                .notch(edge, at, strokes, depth)
                .piece(),
            1,
            1)
        .notches();
  }

  @Test
  void aSingleNotchIsOneStrokeSquareToTheSewingLine() {
    assertEquals(
        List.of(new CutPiece.Stroke(new Point(50, -10), new Point(50, -7))), strokes(0, 50, 1, 3));
  }

  @Test
  void aDoubleNotchIsTwoStrokes6MmApart() {
    List<CutPiece.Stroke> two = strokes(2, 100, 2, 3);
    assertEquals(2, two.size());
    assertEquals(new Point(103, 110), two.get(0).from());
    assertEquals(new Point(97, 107), two.get(1).to());
  }

  @Test
  void aDoubleNotchAtTheEndOfAnEdgeStaysOnIt() {
    List<CutPiece.Stroke> two = strokes(0, 0, 2, 3);
    assertEquals(0, two.get(0).from().x(), 1e-9);
    assertEquals(6, two.get(1).from().x(), 1e-9);
  }

  @Test
  void onACurveItStandsOnTheCuttingLineAndGoesNoDeeperThanTheSewingLine() {
    CutPiece.Stroke stroke = strokes(1, 70, 1, 15).get(0);
    // Half way round, where the curve is farthest out: 200 + 3/4 of 55.
    assertEquals(241.25 + 15, stroke.from().x(), 0.2);
    assertEquals(15, stroke.from().distance(stroke.to()), 0.2);
  }
}
