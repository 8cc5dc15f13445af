package ellwand.trace;

import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * A paper piece with crosses drawn on it, scanned in parts under a sheet of dark paper.
 *
 * @param crosses their middles
 */
public record ScannedTable(Outline outline, List<Point> crosses) {

  /** What the glass is long and wide, mm: A4. */
  private static final double WIDE = 210;

  private static final double HIGH = 297;

  static final double DPI = 150;

  /** A strip that a scanner takes in two parts, one above the other. */
  public static ScannedTable strip() {
    return new ScannedTable(
        Outline.of(
            List.of(
                new Point(0, 0),
                new Point(150, 6),
                new Point(162, 240),
                new Point(140, 420),
                new Point(30, 410),
                new Point(-8, 220))),
        List.of(new Point(30, 190), new Point(128, 204), new Point(70, 228)));
  }

  /** The upper part of it without crosses. */
  public static byte[] bare() {
    return strip().with(List.of()).halves().get(1);
  }

  ScannedTable with(List<Point> otherCrosses) {
    return new ScannedTable(outline, otherCrosses);
  }

  /** The lower part of a strip, and the upper one, laid a little aslant. */
  public List<byte[]> halves() {
    return List.of(
        scan(new Motion(false, 0.8, 25, 22)),
        scan(new Motion(false, -1.7, 20, 0).after(new Motion(false, 0, 0, -150))));
  }

  /**
   * One scan of A4 as JPEG, its lower left corner at 0, 0.
   *
   * @param laid how the piece lies on the glass
   */
  public byte[] scan(Motion laid) {
    List<Scene.Arrow> strokes = new ArrayList<>();
    for (int i = 0; i < crosses.size(); i++) {
      // As a hand draws: not quite square, no arm as long as another, a little bent.
      Point at = crosses.get(i);
      double turn = 0.3 * i + 0.1;
      for (int arm = 0; arm < 4; arm++) {
        double way = turn + Math.PI / 2 * arm + (arm % 2 == 0 ? 0.1 : 0) + 0.02 * arm;
        Point tip = at.plus(new Point(Math.cos(way), Math.sin(way)).times(8 + arm + i));
        strokes.add(new Scene.Arrow(laid.apply(at), laid.apply(tip), 0, false, false, 0.6));
      }
    }
    Scene scene =
        new Scene(
            Scene.Ground.DARK_GREY,
            List.of(),
            List.of(new Scene.PaperPiece(outline.moved(laid), Scene.Paper.WHITE, false, strokes)),
            new Scene.Flaws(0, 0, 0, 90, 1));
    return scene.scan(new Box(0, 0, WIDE, HIGH), DPI);
  }

  /** Where a place on the glass lies in a scan by itself, mm: pixels begin at the upper left. */
  static Point inScan(Point onGlass) {
    double pixel = 25.4 / DPI;
    double high = Math.ceil(HIGH / pixel) * pixel;
    return onGlass.plus(new Point(-pixel / 2, high - HIGH - pixel / 2));
  }
}
