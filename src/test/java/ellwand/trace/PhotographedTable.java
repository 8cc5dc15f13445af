package ellwand.trace;

import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import java.util.List;

/** Simulated photos of the shapes on a table, with two sheets, for those who convert them. */
public final class PhotographedTable {

  private PhotographedTable() {}

  private static Scene.PaperPiece white(
      List<Path> shape, double turnDegrees, double x, double y, List<Scene.Arrow> arrows) {
    Outline outline =
        Outline.of(PaperShapes.round(shape).flattened(0.01))
            .moved(new Motion(false, turnDegrees, x, y));
    return new Scene.PaperPiece(outline, Scene.Paper.WHITE, true, arrows);
  }

  /**
   * Half a bodice front with its grain drawn on it, and a pocket, on wood; 3 megapixels, tilted,
   * from 95 cm.
   */
  public static byte[] frontAndPocket() {
    // 200 mm long, turned as the piece is: along its fold.
    double turn = Math.toRadians(93);
    Point low = new Point(90, 70);
    Point high = low.plus(new Point(Math.cos(turn), Math.sin(turn)).times(200));
    Scene.Arrow arrow = new Scene.Arrow(low, high, 9, false, true, 0.7);
    Scene scene =
        new Scene(
            Scene.Ground.WOOD,
            List.of(Scene.LaidSheet.a4(1, -260, 60, 2), Scene.LaidSheet.a4(2, 280, 80, -3)),
            List.of(
                white(PaperShapes.front(), 3, 0, 0, List.of(arrow)),
                white(PaperShapes.pocket(), -4, 60, -230, List.of())),
            Scene.Flaws.USUAL);
    return scene.photo(
        SimulatedCamera.phone(new Point(120, 100), 950)
            .tilted(12, 60)
            .lens(0.03, -0.05, 0.01)
            .scaled(0.5));
  }
}
