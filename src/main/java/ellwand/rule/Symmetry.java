package ellwand.rule;

import ellwand.cutting.CutPiece;
import ellwand.cutting.CutPiece.Stroke;
import ellwand.geometry.Motion;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Whether a piece is its own mirror image, so that it has no hand. */
public final class Symmetry {

  /** Far below what a blade keeps to, above what curves lose when they become short lines, mm. */
  private static final double SAME_MM = 0.1;

  private Symmetry() {}

  /**
   * Whether the piece, turned over about a line along its drawn x axis, is the same piece: cutting
   * line, notches and inner lines, to 0.1 mm. Such a piece may be turned over in a single ply.
   */
  public static boolean of(CutPiece cut) {
    double twiceMiddle = 2 * cut.cutting().box().centre().y();
    CutPiece over = cut.moved(new Motion(true, 0, 0, twiceMiddle));
    return SameLine.between(cut.cutting(), over.cutting()).mm() <= SAME_MM
        && matched(strokes(cut), strokes(over))
        && matched(lines(cut), lines(over));
  }

  private static List<List<Point>> strokes(CutPiece cut) {
    return cut.notches().stream().map((Stroke n) -> List.of(n.from(), n.to())).toList();
  }

  private static List<List<Point>> lines(CutPiece cut) {
    return cut.innerLines().stream().map(CutPiece.Drawn::points).toList();
  }

  private static boolean matched(List<List<Point>> ours, List<List<Point>> theirs) {
    return ours.stream().allMatch(a -> theirs.stream().anyMatch(b -> same(a, b)));
  }

  private static boolean same(List<Point> a, List<Point> b) {
    List<Point> back = new ArrayList<>(b);
    Collections.reverse(back);
    return close(a, b) || close(a, back);
  }

  private static boolean close(List<Point> a, List<Point> b) {
    if (a.size() != b.size()) {
      return false;
    }
    for (int i = 0; i < a.size(); i++) {
      if (a.get(i).distance(b.get(i)) > SAME_MM) {
        return false;
      }
    }
    return true;
  }
}
