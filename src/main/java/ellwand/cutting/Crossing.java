package ellwand.cutting;

import ellwand.geometry.Point;
import java.util.List;
import java.util.Optional;

/**
 * Where two lines of straight stretches cross.
 *
 * @param onFirst where on the first: the number of its stretch, from 0, plus a share of it
 * @param onSecond where on the second
 */
record Crossing(Point at, double onFirst, double onSecond) {

  /** How far past its end, as a share, a stretch still counts. */
  private static final double SLACK = 1e-9;

  /** The crossing nearest to a place. */
  static Optional<Crossing> nearest(List<Point> first, List<Point> second, Point place) {
    Crossing nearest = null;
    for (int i = 1; i < first.size(); i++) {
      for (int k = 1; k < second.size(); k++) {
        Crossing c = between(first, i, second, k);
        if (c != null && (nearest == null || c.at.distance(place) < nearest.at.distance(place))) {
          nearest = c;
        }
      }
    }
    return Optional.ofNullable(nearest);
  }

  private static Crossing between(List<Point> first, int i, List<Point> second, int k) {
    Point a = first.get(i - 1);
    Point c = second.get(k - 1);
    Point along = first.get(i).minus(a);
    Point other = second.get(k).minus(c);
    double cross = along.cross(other);
    if (Math.abs(cross) < 1e-12 * along.norm() * other.norm()) {
      return null;
    }
    double s = c.minus(a).cross(other) / cross;
    double t = c.minus(a).cross(along) / cross;
    if (s < -SLACK || s > 1 + SLACK || t < -SLACK || t > 1 + SLACK) {
      return null;
    }
    return new Crossing(a.plus(along.times(s)), i - 1 + s, k - 1 + t);
  }
}
