package ellwand.pattern.alter;

import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.pattern.WorkEdge;
import ellwand.pattern.Workpiece;
import java.util.ArrayList;
import java.util.List;

/** Where a piece lies. */
final class Inside {

  private static final double FLATTENING_MM = 0.01;

  private Inside() {}

  static List<Point> ring(Workpiece piece) {
    List<Point> ring = new ArrayList<>();
    for (WorkEdge edge : piece.edges()) {
      List<Point> line = edge.line().flattened(FLATTENING_MM);
      ring.addAll(line.subList(0, line.size() - 1));
    }
    return ring;
  }

  /** Whether a place lies inside a piece; on its outline either may be said. */
  static boolean holds(Workpiece piece, Point at) {
    return Outline.encloses(ring(piece), at);
  }

  /** Its centre of gravity. */
  static Point middle(Workpiece piece) {
    List<Point> ring = ring(piece);
    Point origin = ring.get(0);
    Point sum = new Point(0, 0);
    double twice = 0;
    for (int i = 1; i + 1 < ring.size(); i++) {
      Point a = ring.get(i).minus(origin);
      Point b = ring.get(i + 1).minus(origin);
      double area = a.cross(b);
      sum = sum.plus(a.plus(b).times(area / 3));
      twice += area;
    }
    return origin.plus(sum.times(1 / twice));
  }
}
