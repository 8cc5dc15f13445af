package ellwand.trace;

import ellwand.geometry.Offset;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Draws a stretch of a rim, from corner to corner, with as few lines and cubic curves as keep to
 * it. Which of them lie where is found by dynamic programming over places on the stretch; a curve
 * between two places is the one by least squares whose end tangents follow the rim (P. J.
 * Schneider, An algorithm for automatically fitting digitized curves, Graphics Gems, 1990).
 */
final class StretchFit {

  /** How far a curve may lie from the smoothed rim, mm. */
  static final double CURVE_MM = 0.22;

  /** What lies nearer than this to a line is straight, mm; more where the photo is less sure. */
  private static final double LINE_MM = 0.2;

  /** Of the smoothed rim, mm. */
  private static final double STEP_MM = 1;

  /** How many places a stretch may be cut at, and how near to each other, mm. */
  private static final int MOST_PLACES = 48;

  private static final double PLACES_APART_MM = 6;

  private static final double SHORTEST_LINE_MM = 10;

  /** What a curve costs when a line costs 1: two lines are no better than one curve. */
  private static final double CURVE_COST = 1.6;

  /** Within this share of its tolerance a fit may cost as much as this share of a line. */
  private static final double MISFIT_COST = 0.4;

  /** How many tolerances off a curve may be for another try. */
  private static final double HOPELESS = 20;

  /** How often the places on a curve that points belong to are found anew. */
  private static final int TRIES = 4;

  private static final List<Point> FREE = List.of(new Point(1, 0), new Point(0, 1));

  private final List<Point> points;
  private final List<Point> tangents;
  private final double[] along;
  private final double lineMm;
  private final boolean corners;

  /**
   * Lines and curves joined end to start.
   *
   * @param cost how many they are, a line counted as 1
   */
  record Drawn(List<Segment> segments, double cost) {}

  /** A line or curve and how far the rim lies from it, as a share of what is allowed. */
  private record Fit(Segment segment, double share) {}

  private StretchFit(Smooth smooth, double lineMm, boolean corners) {
    this.points = smooth.points();
    this.tangents = smooth.tangents();
    this.along = smooth.along();
    this.lineMm = Math.max(LINE_MM, lineMm);
    this.corners = corners;
  }

  /**
   * The lines and curves of a stretch.
   *
   * @param run of the rim
   * @param from its corner where it starts; if null, as {@code to} then, it is smooth all round
   * @param sureMm how sure the photo is of a place, mm
   */
  static Drawn of(List<Point> run, Point from, Point to, double sureMm) {
    return new StretchFit(Smooth.of(run, from, to, STEP_MM), sureMm, from != null).best();
  }

  private Drawn best() {
    int last = points.size() - 1;
    int every = (int) Math.max(1, Math.ceil(Math.max(PLACES_APART_MM, along[last] / MOST_PLACES)));
    int count = Math.max(1, Math.round((float) last / every));
    int[] places = new int[count + 1];
    for (int k = 0; k <= count; k++) {
      places[k] = (int) Math.round((double) k * last / count);
    }
    double[] cost = new double[count + 1];
    Fit[] fits = new Fit[count + 1];
    int[] before = new int[count + 1];
    Arrays.fill(cost, Double.POSITIVE_INFINITY);
    cost[0] = 0;
    for (int to = 1; to <= count; to++) {
      for (int from = to - 1; from >= 0; from--) {
        double left = cost[to] - cost[from];
        if (left > 1) {
          Fit line = line(places[from], places[to]);
          double lineCost = 1 + MISFIT_COST * line.share;
          if (line.share <= 1 && lineCost < left) {
            cost[to] = cost[from] + lineCost;
            fits[to] = line;
            before[to] = from;
          } else if (left > CURVE_COST) {
            Fit curve = curve(places[from], places[to]);
            double curveCost = CURVE_COST + MISFIT_COST * curve.share;
            // Two points next to each other are always joined, however badly.
            if ((curve.share <= 1 || from == to - 1) && curveCost < left) {
              cost[to] = cost[from] + curveCost;
              fits[to] = curve;
              before[to] = from;
            }
          }
        }
      }
    }
    List<Segment> segments = new ArrayList<>();
    for (int k = count; k > 0; k = before[k]) {
      segments.add(0, fits[k].segment);
    }
    return new Drawn(segments, cost[count]);
  }

  private Fit line(int from, int to) {
    Point a = points.get(from);
    Point b = points.get(to);
    Segment line = new Segment.Line(a, b);
    boolean whole = from == 0 && to == points.size() - 1;
    if (a.distance(b) < SHORTEST_LINE_MM && !whole) {
      return new Fit(line, Double.POSITIVE_INFINITY);
    }
    double most = 0;
    for (int i = from + 1; i < to; i++) {
      most = Math.max(most, Offset.distance(points.get(i), a, b));
    }
    return new Fit(line, most / lineMm);
  }

  private Fit curve(int from, int to) {
    double[] at = new double[to - from + 1];
    for (int i = 0; i < at.length; i++) {
      at[i] = (along[from + i] - along[from]) / (along[to] - along[from]);
    }
    Segment.Cubic best = null;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < TRIES; i++) {
      Segment.Cubic curve = leastSquares(from, to, at);
      double most = 0;
      for (int k = 1; k < at.length - 1; k++) {
        most = Math.max(most, curve.at(at[k]).distance(points.get(from + k)));
      }
      if (most < least) {
        least = most;
        best = curve;
      }
      if (!(most <= HOPELESS * CURVE_MM)) {
        break;
      }
      improve(from, at, curve);
    }
    return best == null
        ? new Fit(new Segment.Line(points.get(from), points.get(to)), HOPELESS)
        : new Fit(best, Math.min(HOPELESS, least / CURVE_MM));
  }

  /**
   * The curve that comes nearest, for places on it as given. At a corner its direction is free; at
   * a joint it is that of the rim.
   */
  private Segment.Cubic leastSquares(int from, int to, double[] at) {
    Point start = points.get(from);
    Point end = points.get(to);
    List<Point> out = from == 0 && corners ? FREE : List.of(tangents.get(from));
    List<Point> in =
        to == points.size() - 1 && corners ? FREE : List.of(tangents.get(to).times(-1));
    int unknowns = out.size() + in.size();
    double[][] rows = new double[unknowns][unknowns + 1];
    Point[] pulls = new Point[unknowns];
    for (int i = 0; i < at.length; i++) {
      double t = at[i];
      double s = 1 - t;
      for (int k = 0; k < unknowns; k++) {
        pulls[k] =
            k < out.size()
                ? out.get(k).times(3 * s * s * t)
                : in.get(k - out.size()).times(3 * s * t * t);
      }
      Point rest =
          points
              .get(from + i)
              .minus(start.times(s * s * s + 3 * s * s * t))
              .minus(end.times(t * t * t + 3 * s * t * t));
      for (int r = 0; r < unknowns; r++) {
        for (int c = 0; c < unknowns; c++) {
          rows[r][c] += pulls[r].dot(pulls[c]);
        }
        rows[r][unknowns] += pulls[r].dot(rest);
      }
    }
    double[] pulled = Equations.solved(rows);
    Point control1 = pulledFrom(start, out, pulled, 0);
    Point control2 = pulledFrom(end, in, pulled, out.size());
    double chord = start.distance(end);
    boolean sound =
        ahead(control1.minus(start), tangents.get(from), chord)
            && ahead(control2.minus(end), tangents.get(to).times(-1), chord);
    return sound
        ? new Segment.Cubic(start, control1, control2, end)
        : new Segment.Cubic(
            start,
            start.plus(tangents.get(from).times(chord / 3)),
            end.minus(tangents.get(to).times(chord / 3)),
            end);
  }

  private static Point pulledFrom(Point end, List<Point> ways, double[] pulled, int first) {
    Point control = end;
    for (int k = 0; k < ways.size(); k++) {
      control = control.plus(ways.get(k).times(pulled[first + k]));
    }
    return control;
  }

  /** Whether a curve leaves its end about where the rim does, neither at once nor for ever. */
  private static boolean ahead(Point pull, Point tangent, double chord) {
    double mm = pull.norm();
    return mm > 0.02 * chord && mm < 4 * chord && pull.dot(tangent) > 0.7 * mm;
  }

  /** One step of Newton's method towards the nearest place on the curve, for each point. */
  private void improve(int from, double[] at, Segment.Cubic c) {
    for (int i = 1; i < at.length - 1; i++) {
      at[i] = c.nearer(at[i], points.get(from + i));
    }
  }
}
