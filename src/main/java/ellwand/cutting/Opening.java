package ellwand.cutting;

import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** Opens half outlines about their fold edge. */
final class Opening {

  /** Points nearer the fold line than this lie on it, mm. */
  static final double ON_LINE_MM = 1e-6;

  private Opening() {}

  /** The outline and its mirror image as one; the stretch along the fold line disappears. */
  static Outline opened(Outline half, CutPiece.Stroke fold) {
    List<Point> side = offLine(half, fold);
    List<Point> whole = new ArrayList<>(side);
    for (int i = side.size() - 1; i >= 0; i--) {
      if (!onLine(side.get(i), fold)) {
        whole.add(side.get(i).mirrored(fold.from(), fold.to()));
      }
    }
    return Outline.of(whole).withoutNeedless(CuttingLine.NEEDLESS_MM);
  }

  /**
   * The outline's points from where it leaves the fold line to where it comes back, both included.
   */
  private static List<Point> offLine(Outline half, CutPiece.Stroke fold) {
    List<Point> ring = half.points();
    int n = ring.size();
    int leaves = 0;
    while (!(onLine(ring.get(leaves), fold) && !onLine(ring.get((leaves + 1) % n), fold))) {
      leaves++;
    }
    List<Point> side = new ArrayList<>();
    side.add(ring.get(leaves));
    for (int i = 1; i < n; i++) {
      Point p = ring.get((leaves + i) % n);
      side.add(p);
      if (onLine(p, fold)) {
        break;
      }
    }
    return side;
  }

  private static boolean onLine(Point p, CutPiece.Stroke fold) {
    Point along = fold.to().minus(fold.from()).unit();
    return Math.abs(along.cross(p.minus(fold.from()))) <= ON_LINE_MM;
  }
}
