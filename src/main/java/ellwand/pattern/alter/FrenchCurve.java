package ellwand.pattern.alter;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Draws smooth lines through points. */
final class FrenchCurve {

  /** Beyond this turn a single curve would bulge, degrees. */
  private static final double MOST_TURN_DEGREES = 160;

  private FrenchCurve() {}

  /** Straight from point to point. */
  static Path lines(List<Point> points) {
    List<Segment> lines = new ArrayList<>();
    for (int i = 1; i < points.size(); i++) {
      lines.add(new Segment.Line(points.get(i - 1), points.get(i)));
    }
    return new Path(lines);
  }

  /**
   * A smooth line through points; at each of them it runs as the circle through it and its
   * neighbours, at a free end as the circle that arrives rightly at the next point.
   *
   * @param points two or more, no two after one another in the same place
   * @param leaves direction of travel at the first, length 1
   * @param arrives the same at the last
   */
  static Path through(List<Point> points, Optional<Point> leaves, Optional<Point> arrives) {
    int last = points.size() - 1;
    Point[] way = new Point[points.size()];
    for (int i = 1; i < last; i++) {
      way[i] = onCircle(points.get(i - 1), points.get(i), points.get(i + 1));
    }
    way[0] = leaves.orElse(null);
    way[last] = arrives.orElse(null);
    if (way[0] == null && way[1] == null || way[last] == null && way[last - 1] == null) {
      // Nothing bends it.
      Point straight = points.get(1).minus(points.get(0)).unit();
      return last == 1
          ? through(points, Optional.of(straight), Optional.of(straight))
          : through(
              points,
              Optional.of(leaves.orElse(straight)),
              Optional.of(arrives.orElse(points.get(last).minus(points.get(last - 1)).unit())));
    }
    if (way[0] == null) {
      way[0] = likewise(way[1], points.get(1).minus(points.get(0)));
    }
    if (way[last] == null) {
      way[last] = likewise(way[last - 1], points.get(last).minus(points.get(last - 1)));
    }
    List<Segment> curves = new ArrayList<>();
    for (int i = 1; i <= last; i++) {
      curves.add(curve(points.get(i - 1), way[i - 1], points.get(i), way[i]));
    }
    return new Path(curves);
  }

  /** The direction at the middle one of three points on the circle through them. */
  private static Point onCircle(Point before, Point at, Point after) {
    Point in = at.minus(before);
    Point out = after.minus(at);
    // Each chord's direction weighs as much as the other chord is long.
    Point way = in.times(out.norm() / in.norm()).plus(out.times(in.norm() / out.norm()));
    return way.norm() < 1e-9 ? in.left().unit() : way.unit();
  }

  /** The direction at the other end of a chord of a circle, given that at one end. */
  private static Point likewise(Point way, Point chord) {
    Point along = chord.unit();
    return along.times(2 * way.dot(along)).minus(way);
  }

  /**
   * One curve with given ends; where these fit a circle it is nearly that: its handles are chord x
   * 2/3 tan(a/4) / sin(a/2), a the angle that it turns by.
   */
  static Segment curve(Point start, Point leaves, Point end, Point arrives) {
    Point chord = end.minus(start);
    double turn = Math.abs(Math.atan2(leaves.cross(arrives), leaves.dot(arrives)));
    if (turn < 1e-9
        && Math.abs(leaves.cross(chord)) < 1e-9 * chord.norm()
        && leaves.dot(chord) > 0) {
      return new Segment.Line(start, end);
    }
    double a = Math.max(1e-3, Math.min(Math.toRadians(MOST_TURN_DEGREES), turn));
    double handle = chord.norm() * 2 / 3 * Math.tan(a / 4) / Math.sin(a / 2);
    return new Segment.Cubic(
        start, start.plus(leaves.times(handle)), end.minus(arrives.times(handle)), end);
  }
}
