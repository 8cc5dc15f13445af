package ellwand.cutting;

import ellwand.cutting.CutPiece.Stroke;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Whether a piece is its own mirror image, so that it has no hand. */
final class Symmetry {

  /** Far below what a blade keeps to, mm. */
  private static final double SAME_MM = 0.05;

  private Symmetry() {}

  static boolean of(CutPiece cut) {
    double twiceMiddle = 2 * cut.cutting().box().centre().y();
    CutPiece over = cut.moved(new Motion(true, 0, 0, twiceMiddle));
    return near(cut.cutting(), over.cutting())
        && near(over.cutting(), cut.cutting())
        && matched(strokes(cut), strokes(over))
        && matched(lines(cut), lines(over));
  }

  private static boolean near(Outline a, Outline b) {
    return a.points().stream().allMatch(p -> b.distance(p) <= SAME_MM);
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
