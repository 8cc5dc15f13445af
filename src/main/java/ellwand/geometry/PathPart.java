package ellwand.geometry;

import java.util.ArrayList;
import java.util.List;

/** Finds and cuts out parts of a path by distances along it. */
final class PathPart {

  /** Stretches shorter than this are none, mm. */
  private static final double NOTHING_MM = 1e-9;

  /** Enough for the precision of doubles. */
  private static final int HALVINGS = 50;

  private PathPart() {}

  /** The parameter of a segment at a distance from its start, which may be its whole length. */
  private static double parameter(Segment segment, List<Point> flat, double mm) {
    int steps = flat.size() - 1;
    double left = mm;
    for (int i = 1; i <= steps; i++) {
      double step = flat.get(i - 1).distance(flat.get(i));
      if (left <= step) {
        return (i - 1 + (step == 0 ? 0 : Math.max(0, left) / step)) / steps;
      }
      left -= step;
    }
    return 1;
  }

  private static List<Point> flat(Segment segment) {
    List<Point> flat = new ArrayList<>();
    flat.add(segment.start());
    segment.flattenInto(flat, Path.MEASURING_MM);
    return flat;
  }

  /** Whether a point lies near enough to the box round all ends and control points. */
  static boolean mayPass(Path path, Point point, double mm) {
    List<Point> points = new ArrayList<>();
    for (Segment segment : path.segments()) {
      points.add(segment.start());
      points.add(segment.end());
      if (segment instanceof Segment.Cubic cubic) {
        points.add(cubic.control1());
        points.add(cubic.control2());
      }
    }
    Box box = Box.around(points);
    return point.x() >= box.minX() - mm
        && point.x() <= box.maxX() + mm
        && point.y() >= box.minY() - mm
        && point.y() <= box.maxY() + mm;
  }

  static Path between(Path path, double fromMm, double toMm) {
    List<Segment> parts = new ArrayList<>();
    double before = 0;
    for (Segment segment : path.segments()) {
      List<Point> flat = flat(segment);
      double length = Path.length(flat);
      double from = Math.max(0, fromMm - before);
      double to = Math.min(length, toMm - before);
      if (to - from > NOTHING_MM) {
        double start = from <= NOTHING_MM ? 0 : parameter(segment, flat, from);
        double end = to >= length - NOTHING_MM ? 1 : parameter(segment, flat, to);
        parts.add(start == 0 && end == 1 ? segment : segment.between(start, end));
      }
      before += length;
    }
    if (parts.isEmpty()) {
      throw new IllegalArgumentException(
          "there is no stretch between %s and %s mm".formatted(fromMm, toMm));
    }
    return new Path(parts);
  }

  static Point at(Path path, double mm) {
    double left = mm;
    for (Segment segment : path.segments()) {
      List<Point> flat = flat(segment);
      double length = Path.length(flat);
      if (left <= length) {
        return left <= NOTHING_MM
            ? segment.start()
            : left >= length - NOTHING_MM
                ? segment.end()
                : segment.at(parameter(segment, flat, left));
      }
      left -= length;
    }
    return path.end();
  }

  static double nearest(Path path, Point point) {
    double best = 0;
    double least = Double.POSITIVE_INFINITY;
    double before = 0;
    for (Segment segment : path.segments()) {
      List<Point> flat = flat(segment);
      int steps = flat.size() - 1;
      int near = 0;
      double nearest = Double.POSITIVE_INFINITY;
      double start = 0;
      double passed = 0;
      for (int i = 1; i <= steps; i++) {
        double away = Offset.distance(point, flat.get(i - 1), flat.get(i));
        if (away < nearest) {
          nearest = away;
          near = i;
          start = passed;
        }
        passed += flat.get(i - 1).distance(flat.get(i));
      }
      if (nearest < least) {
        least = nearest;
        double step = flat.get(near - 1).distance(flat.get(near));
        double t = refined(segment, point, (near - 1.0) / steps, (double) near / steps);
        best = before + start + step * Math.max(0, Math.min(1, t * steps - (near - 1)));
      }
      before += passed;
    }
    return best;
  }

  /** The parameter between two others at which a segment is nearest to a point. */
  private static double refined(Segment segment, Point point, double from, double to) {
    double t = (from + to) / 2;
    double low = from;
    double high = to;
    for (int i = 0; i < HALVINGS && high - low > 1e-15; i++) {
      // Where it comes nearer by going on, the place lies further on.
      if (point.minus(segment.at(t)).dot(segment.direction(t)) > 0) {
        low = t;
      } else {
        high = t;
      }
      t = (low + high) / 2;
    }
    return t;
  }
}
