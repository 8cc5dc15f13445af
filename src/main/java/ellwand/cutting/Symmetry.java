package ellwand.cutting;

import ellwand.cutting.CutPiece.Stroke;
import ellwand.geometry.Motion;
import ellwand.geometry.Offset;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Whether a piece is its own mirror image, so that it has no hand. */
final class Symmetry {

  /** How far apart lines may be that count as one, mm: far below what a blade keeps to. */
  private static final double SAME_MM = 0.05;

  /** Between two places so near each other a line strays no farther than they do, mm. */
  private static final double FINE_MM = 0.01;

  private Symmetry() {}

  static boolean of(CutPiece cut) {
    double twiceMiddle = 2 * cut.cutting().box().centre().y();
    CutPiece over = cut.moved(new Motion(true, 0, 0, twiceMiddle));
    return along(cut.cutting(), over.cutting())
        && along(over.cutting(), cut.cutting())
        && matched(strokes(cut), strokes(over))
        && matched(lines(cut), lines(over));
  }

  /** Whether the whole of one line, not only its corners, runs along the other. */
  private static boolean along(Outline line, Outline other) {
    List<Point> points = line.points();
    for (int i = 0; i < points.size(); i++) {
      if (!along(points.get(i), points.get((i + 1) % points.size()), other.points())) {
        return false;
      }
    }
    return true;
  }

  /**
   * A stretch is as near an edge all along as its ends are, since the distance from an edge is
   * convex; where its ends are near different edges it is halved.
   */
  private static boolean along(Point from, Point to, List<Point> ring) {
    boolean fromNear = false;
    boolean toNear = false;
    for (int i = 0; i < ring.size(); i++) {
      Point next = ring.get((i + 1) % ring.size());
      boolean one = Offset.distance(from, ring.get(i), next) <= SAME_MM;
      boolean other = Offset.distance(to, ring.get(i), next) <= SAME_MM;
      if (one && other) {
        return true;
      }
      fromNear |= one;
      toNear |= other;
    }
    Point middle = from.towards(to, 0.5);
    return fromNear
        && toNear
        && (from.distance(to) <= FINE_MM || along(from, middle, ring) && along(middle, to, ring));
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
