package ellwand.rule;

import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.geometry.Region;
import java.util.List;

/**
 * How far two closed lines stray from each other.
 *
 * @param mm the farthest any corner of one is from the other, 0 or more
 * @param place that corner
 */
record SameLine(double mm, Point place) {

  boolean same() {
    return mm <= Rule.ROUNDING_MM;
  }

  /** Compares; the corners need not begin at the same one, nor be as many. */
  static SameLine between(Outline a, Outline b) {
    if (sameCorners(a.points(), b.points())) {
      return new SameLine(0, a.points().get(0));
    }
    SameLine there = farthest(a.points(), b.points());
    SameLine back = farthest(b.points(), a.points());
    SameLine worst = there.mm >= back.mm ? there : back;
    if (!worst.same()) {
      return worst;
    }
    // All corners agree, but they may be joined up otherwise.
    double apart = differenceShare(a, b);
    return apart > Rule.ROUNDING_MM ? new SameLine(apart, worst.place) : worst;
  }

  private static boolean sameCorners(List<Point> a, List<Point> b) {
    int n = a.size();
    if (b.size() != n) {
      return false;
    }
    for (int start = 0; start < n; start++) {
      int i = 0;
      while (i < n && a.get(i).distance(b.get((start + i) % n)) <= Rule.ROUNDING_MM) {
        i++;
      }
      if (i == n) {
        return true;
      }
    }
    return false;
  }

  /** The width of a band along the line that has the area by which the two differ, mm. */
  private static double differenceShare(Outline a, Outline b) {
    if (Region.crossing(a.points()).isPresent() || Region.crossing(b.points()).isPresent()) {
      return Double.POSITIVE_INFINITY;
    }
    Region one = Region.of(a);
    Region other = Region.of(b);
    double round = 0;
    List<Point> ring = a.points();
    for (int i = 0; i < ring.size(); i++) {
      round += ring.get(i).distance(ring.get((i + 1) % ring.size()));
    }
    return (one.minus(other).area() + other.minus(one).area()) / round;
  }

  private static SameLine farthest(List<Point> corners, List<Point> ring) {
    SameLine worst = new SameLine(0, corners.get(0));
    for (Point p : corners) {
      double nearest = Double.POSITIVE_INFINITY;
      for (int i = 0; i < ring.size() && nearest > 0; i++) {
        nearest = Math.min(nearest, toStretch(p, ring.get(i), ring.get((i + 1) % ring.size())));
      }
      if (!(nearest <= worst.mm)) {
        worst = new SameLine(nearest, p);
      }
    }
    return worst;
  }

  private static double toStretch(Point p, Point a, Point b) {
    Point along = b.minus(a);
    double square = along.dot(along);
    double t = square == 0 ? 0 : Math.max(0, Math.min(1, p.minus(a).dot(along) / square));
    return p.distance(a.towards(b, t));
  }
}
