package ellwand.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Lays cubic curves through points, after P. J. Schneider, An algorithm for automatically fitting
 * digitized curves (Graphics Gems, 1990). What is straight within the tolerance becomes a line, and
 * what one curve drew becomes one curve again.
 */
public final class CurveFit {

  /** How often a curve is tried anew with better parameters before it is cut in two. */
  private static final int TRIES = 40;

  /** Points nearer to an end than this share of the length say too little of its direction. */
  private static final double NEAR = 0.01;

  /** How many tolerances off a curve may be for another try. */
  private static final double HOPELESS = 2_000;

  private final List<Point> points;
  private final double toleranceMm;
  private final List<Segment> segments = new ArrayList<>();

  private CurveFit(List<Point> points, double toleranceMm) {
    this.points = points;
    this.toleranceMm = toleranceMm;
  }

  /**
   * Segments from the first point to the last, smooth where they join.
   *
   * @param points two or more, no two after one another the same; where they turn sharply, call
   *     this for each stretch between corners
   * @param toleranceMm how far a point may lie from the curve
   */
  public static List<Segment> through(List<Point> points, double toleranceMm) {
    if (points.size() < 2) {
      throw new IllegalArgumentException("a curve runs through two points or more");
    }
    CurveFit fit = new CurveFit(points, toleranceMm);
    int last = points.size() - 1;
    if (last == 1 || fit.straight(0, last)) {
      return List.of(new Segment.Line(points.get(0), points.get(last)));
    }
    Optional<Segment> single = SingleCurve.through(points, toleranceMm);
    if (single.isPresent()) {
      return List.of(single.get());
    }
    fit.fit(0, last, fit.startTangent(0, last), fit.endTangent(0, last));
    return fit.segments;
  }

  private void fit(int from, int to, Point out, Point in) {
    Point start = points.get(from);
    Point end = points.get(to);
    if (to - from == 1 || straight(from, to)) {
      segments.add(new Segment.Line(start, end));
      return;
    }
    double[] at = chordLengths(from, to);
    int worst = -1;
    for (int i = 0; i < TRIES; i++) {
      Segment.Cubic curve = curve(from, to, at, out, in);
      worst = worst(from, at, curve);
      double error = curve.at(at[worst]).distance(points.get(from + worst));
      if (error <= toleranceMm) {
        segments.add(curve);
        return;
      }
      if (error > HOPELESS * toleranceMm) {
        break;
      }
      improve(from, at, curve);
    }
    int cut = from + Math.max(1, Math.min(to - from - 1, worst));
    Point middle = tangent(cut);
    fit(from, cut, out, middle.times(-1));
    fit(cut, to, middle, in);
  }

  private boolean straight(int from, int to) {
    Point start = points.get(from);
    Point end = points.get(to);
    for (int i = from + 1; i < to; i++) {
      if (Offset.distance(points.get(i), start, end) > toleranceMm) {
        return false;
      }
    }
    return true;
  }

  /** By the parabola through the first point and two that are not too near to tell. */
  private Point startTangent(int from, int to) {
    return endTangent(from, to, 1);
  }

  private Point endTangent(int from, int to) {
    return endTangent(to, from, -1);
  }

  private Point endTangent(int end, int far, int step) {
    double near = NEAR * chordLength(Math.min(end, far), Math.max(end, far));
    int first = end + step;
    while (first != far && points.get(first).distance(points.get(end)) < near) {
      first += step;
    }
    int second = first;
    while (second != far && points.get(second).distance(points.get(first)) < near
        || second == first && second != far) {
      second += step;
    }
    return second == first
        ? points.get(first).minus(points.get(end)).unit()
        : tangent(points.get(end), points.get(first), points.get(second));
  }

  private double chordLength(int from, int to) {
    double sum = 0;
    for (int i = from + 1; i <= to; i++) {
      sum += points.get(i).distance(points.get(i - 1));
    }
    return sum;
  }

  private static Point tangent(Point a, Point b, Point c) {
    double first = a.distance(b);
    double second = b.distance(c);
    Point near = b.minus(a).times(1 / first);
    Point far = c.minus(b).times(1 / second);
    Point at = near.minus(far.minus(near).times(first / (first + second)));
    return at.norm() > 1e-9 ? at.unit() : near;
  }

  private Point tangent(int i) {
    Point before = points.get(i).minus(points.get(i - 1));
    Point after = points.get(i + 1).minus(points.get(i));
    double a = before.norm();
    double b = after.norm();
    Point at = before.times(b / a).plus(after.times(a / b));
    return at.norm() > 1e-9 ? at.unit() : after.unit();
  }

  private double[] chordLengths(int from, int to) {
    double[] at = new double[to - from + 1];
    for (int i = 1; i < at.length; i++) {
      at[i] = at[i - 1] + points.get(from + i).distance(points.get(from + i - 1));
    }
    for (int i = 1; i < at.length; i++) {
      at[i] /= at[at.length - 1];
    }
    return at;
  }

  /** The curve with these end tangents that comes nearest, by least squares. */
  private Segment.Cubic curve(int from, int to, double[] at, Point out, Point in) {
    Point start = points.get(from);
    Point end = points.get(to);
    double c00 = 0;
    double c01 = 0;
    double c11 = 0;
    double x0 = 0;
    double x1 = 0;
    for (int i = 0; i < at.length; i++) {
      double t = at[i];
      double s = 1 - t;
      Point a = out.times(3 * s * s * t);
      Point b = in.times(3 * s * t * t);
      Point rest =
          points
              .get(from + i)
              .minus(start.times(s * s * s + 3 * s * s * t))
              .minus(end.times(t * t * t + 3 * s * t * t));
      c00 += a.dot(a);
      c01 += a.dot(b);
      c11 += b.dot(b);
      x0 += a.dot(rest);
      x1 += b.dot(rest);
    }
    double det = c00 * c11 - c01 * c01;
    double chord = start.distance(end);
    double first = (x0 * c11 - x1 * c01) / det;
    double second = (c00 * x1 - c01 * x0) / det;
    if (!(first > 1e-6 * chord && second > 1e-6 * chord && first < 1e3 * chord + 1)) {
      first = chord / 3;
      second = chord / 3;
    }
    return new Segment.Cubic(start, start.plus(out.times(first)), end.plus(in.times(second)), end);
  }

  private int worst(int from, double[] at, Segment.Cubic curve) {
    int worst = at.length / 2;
    double most = -1;
    for (int i = 1; i < at.length - 1; i++) {
      double off = curve.at(at[i]).distance(points.get(from + i));
      if (off > most) {
        most = off;
        worst = i;
      }
    }
    return worst;
  }

  /** One step towards the nearest place on the curve, for each point. */
  private void improve(int from, double[] at, Segment.Cubic c) {
    for (int i = 1; i < at.length - 1; i++) {
      at[i] = c.nearer(at[i], points.get(from + i));
    }
  }
}
