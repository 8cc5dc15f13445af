package ellwand.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** A straight line or a cubic curve, run through from {@link #start} to {@link #end}. */
public sealed interface Segment permits Segment.Line, Segment.Cubic {

  Point start();

  Point end();

  /** The place at parameter {@code t}, 0 to 1. */
  Point at(double t);

  /** The direction of travel at parameter {@code t}, length 1. */
  Point direction(double t);

  Segment reversed();

  /** Where a motion, a mirroring or another map that keeps lines straight takes it. */
  Segment mapped(UnaryOperator<Point> map);

  default Segment moved(Motion motion) {
    return mapped(motion::apply);
  }

  /** The part between two parameters, {@code 0 <= from < to <= 1}. */
  Segment between(double from, double to);

  /**
   * Adds points after the start up to and with the end, none farther than tolerance mm from the
   * line.
   */
  void flattenInto(List<Point> points, double toleranceMm);

  record Line(Point start, Point end) implements Segment {

    @Override
    public Point at(double t) {
      return start.towards(end, t);
    }

    @Override
    public Point direction(double t) {
      return end.minus(start).unit();
    }

    @Override
    public Line reversed() {
      return new Line(end, start);
    }

    @Override
    public Line mapped(UnaryOperator<Point> map) {
      return new Line(map.apply(start), map.apply(end));
    }

    @Override
    public Line between(double from, double to) {
      return new Line(at(from), at(to));
    }

    @Override
    public void flattenInto(List<Point> points, double toleranceMm) {
      points.add(end);
    }
  }

  /**
   * A cubic Bezier curve.
   *
   * @param control1 pulls the curve as it leaves the start
   * @param control2 pulls the curve as it nears the end
   */
  record Cubic(Point start, Point control1, Point control2, Point end) implements Segment {

    /** Enough for 25 m of garment at a thousandth of a mm; our own choice. */
    private static final int MOST_STEPS = 5_000;

    @Override
    public Point at(double t) {
      double s = 1 - t;
      double a = s * s * s;
      double b = 3 * s * s * t;
      double c = 3 * s * t * t;
      double d = t * t * t;
      return new Point(
          a * start.x() + b * control1.x() + c * control2.x() + d * end.x(),
          a * start.y() + b * control1.y() + c * control2.y() + d * end.y());
    }

    /** One step of Newton's method from {@code t} towards the place nearest to a point. */
    public double nearer(double t, Point point) {
      double s = 1 - t;
      Point off = at(t).minus(point);
      Point first =
          control1
              .minus(start)
              .times(3 * s * s)
              .plus(control2.minus(control1).times(6 * s * t))
              .plus(end.minus(control2).times(3 * t * t));
      Point second =
          start
              .minus(control1.times(2))
              .plus(control2)
              .times(6 * s)
              .plus(control1.minus(control2.times(2)).plus(end).times(6 * t));
      double slope = first.dot(first) + off.dot(second);
      return slope == 0 ? t : Math.max(0, Math.min(1, t - off.dot(first) / slope));
    }

    @Override
    public Point direction(double t) {
      double s = 1 - t;
      Point d =
          control1
              .minus(start)
              .times(s * s)
              .plus(control2.minus(control1).times(2 * s * t))
              .plus(end.minus(control2).times(t * t));
      // At a control point that lies on its end point the first derivative vanishes.
      if (d.norm() > 1e-9) {
        return d.unit();
      }
      return t < 0.5 ? at(t + 1e-4).minus(at(t)).unit() : at(t).minus(at(t - 1e-4)).unit();
    }

    @Override
    public Cubic reversed() {
      return new Cubic(end, control2, control1, start);
    }

    @Override
    public Cubic mapped(UnaryOperator<Point> map) {
      return new Cubic(map.apply(start), map.apply(control1), map.apply(control2), map.apply(end));
    }

    @Override
    public Cubic between(double from, double to) {
      Cubic tail = from == 0 ? this : splitTail(from);
      return to == 1 ? tail : tail.splitHead((to - from) / (1 - from));
    }

    private Cubic splitHead(double t) {
      Point ab = start.towards(control1, t);
      Point bc = control1.towards(control2, t);
      Point cd = control2.towards(end, t);
      Point abc = ab.towards(bc, t);
      return new Cubic(start, ab, abc, abc.towards(bc.towards(cd, t), t));
    }

    private Cubic splitTail(double t) {
      return reversed().splitHead(1 - t).reversed();
    }

    @Override
    public void flattenInto(List<Point> points, double toleranceMm) {
      // Chord error of n equal parameter steps is at most |second derivative| / (8 n^2).
      double bend =
          6
              * Math.max(
                  start.minus(control1.times(2)).plus(control2).norm(),
                  control1.minus(control2.times(2)).plus(end).norm());
      double steps = Math.ceil(Math.sqrt(bend / (8 * toleranceMm)));
      int few = (int) Math.max(1, Math.min(MOST_STEPS, steps));
      if (points instanceof ArrayList<Point> list) {
        list.ensureCapacity(list.size() + few);
      }
      for (int i = 1; i < few; i++) {
        points.add(at((double) i / few));
      }
      points.add(end);
    }
  }
}
