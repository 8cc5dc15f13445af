package ellwand.trace;

import ellwand.geometry.Point;
import java.util.List;

/** Points laid on others, turned and shifted but not stretched, as near as can be. */
final class Fitted {

  private Fitted() {}

  /** How far the farthest one is off then. */
  static double worst(List<Point> truth, List<Point> found) {
    List<Point> laid = onto(truth, found);
    double worst = 0;
    for (int i = 0; i < truth.size(); i++) {
      worst = Math.max(worst, laid.get(i).distance(truth.get(i)));
    }
    return worst;
  }

  /** The found points then. */
  static List<Point> onto(List<Point> truth, List<Point> found) {
    Point a = middle(truth);
    Point b = middle(found);
    double dot = 0;
    double cross = 0;
    for (int i = 0; i < truth.size(); i++) {
      Point p = found.get(i).minus(b);
      Point q = truth.get(i).minus(a);
      dot += p.dot(q);
      cross += p.cross(q);
    }
    double c = dot / Math.hypot(dot, cross);
    double s = cross / Math.hypot(dot, cross);
    return found.stream()
        .map(p -> p.minus(b))
        .map(p -> new Point(c * p.x() - s * p.y(), s * p.x() + c * p.y()).plus(a))
        .toList();
  }

  private static Point middle(List<Point> points) {
    return points.stream().reduce(new Point(0, 0), Point::plus).times(1.0 / points.size());
  }
}
