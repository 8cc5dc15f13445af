package ellwand.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.math.Matrix;

/**
 * Finds the one cubic curve that runs through points, if there is one: by least squares of the
 * distances square to the curve (W. Wang, H. Pottmann, Y. Liu, Fitting B-spline curves to point
 * clouds by curvature-based squared distance minimization, 2006, call it tangent distance), damped
 * as Levenberg and Marquardt have it.
 */
final class SingleCurve {

  private static final int ROUNDS = 30;

  /** Points that are looked at while it is sought; all of them are at the end. */
  private static final int SAMPLES = 60;

  private final List<Point> points;
  private final double[] at;
  private Segment.Cubic curve;

  private SingleCurve(List<Point> all) {
    int step = Math.max(1, (all.size() - 1) / SAMPLES);
    this.points = new ArrayList<>();
    for (int i = 0; i < all.size() - 1; i += step) {
      points.add(all.get(i));
    }
    points.add(all.get(all.size() - 1));
    this.at = new double[points.size()];
    for (int i = 1; i < at.length; i++) {
      at[i] = at[i - 1] + points.get(i).distance(points.get(i - 1));
    }
    double length = at[at.length - 1];
    for (int i = 1; i < at.length; i++) {
      at[i] /= length;
    }
    Point start = points.get(0);
    Point end = points.get(points.size() - 1);
    this.curve =
        new Segment.Cubic(start, start.towards(end, 1.0 / 3), start.towards(end, 2.0 / 3), end);
  }

  /**
   * The curve.
   *
   * @param all three or more, from end to end
   * @param toleranceMm how far any of them may lie from it
   */
  static Optional<Segment> through(List<Point> all, double toleranceMm) {
    SingleCurve fit = new SingleCurve(all);
    fit.step(0, false);
    double damping = 1e-6;
    double before = fit.square();
    for (int i = 0; i < ROUNDS && before > 0; i++) {
      Segment.Cubic last = fit.curve;
      double[] places = fit.at.clone();
      fit.step(damping, true);
      fit.improve();
      double now = fit.square();
      if (now < before) {
        damping = Math.max(1e-12, damping / 10);
        if (now > before * 0.999 && now < toleranceMm * toleranceMm) {
          break;
        }
        before = now;
      } else {
        damping *= 10;
        fit.curve = last;
        System.arraycopy(places, 0, fit.at, 0, places.length);
      }
    }
    return fit.passesAll(all, toleranceMm) ? Optional.of(fit.curve) : Optional.empty();
  }

  /**
   * Moves both handles to where the sum of squares is least.
   *
   * @param across whether only distances square to the curve count
   */
  private void step(double damping, boolean across) {
    double[][] rows = new double[4][4];
    double[] sums = new double[4];
    for (int i = 1; i < at.length - 1; i++) {
      double t = at[i];
      double s = 1 - t;
      double a = 3 * s * s * t;
      double b = 3 * s * t * t;
      Point off = points.get(i).minus(curve.at(t));
      if (across) {
        Point normal = curve.direction(t).left();
        add(
            rows,
            sums,
            new double[] {a * normal.x(), a * normal.y(), b * normal.x(), b * normal.y()},
            off.dot(normal));
      } else {
        add(rows, sums, new double[] {a, 0, b, 0}, off.x());
        add(rows, sums, new double[] {0, a, 0, b}, off.y());
      }
    }
    for (int i = 0; i < 4; i++) {
      rows[i][i] += damping * points.size() + 1e-12;
    }
    double[] move = Matrix.solve(rows, sums);
    if (move == null) {
      return;
    }
    curve =
        new Segment.Cubic(
            curve.start(),
            curve.control1().plus(new Point(move[0], move[1])),
            curve.control2().plus(new Point(move[2], move[3])),
            curve.end());
  }

  private static void add(double[][] rows, double[] sums, double[] slope, double off) {
    for (int i = 0; i < 4; i++) {
      for (int k = 0; k < 4; k++) {
        rows[i][k] += slope[i] * slope[k];
      }
      sums[i] += slope[i] * off;
    }
  }

  private void improve() {
    for (int i = 1; i < at.length - 1; i++) {
      at[i] = curve.nearer(curve.nearer(at[i], points.get(i)), points.get(i));
    }
  }

  /** The mean square of the distances. */
  private double square() {
    double sum = 0;
    for (int i = 1; i < at.length - 1; i++) {
      Point off = curve.at(at[i]).minus(points.get(i));
      sum += off.dot(off);
    }
    return Double.isFinite(sum) ? sum / at.length : Double.MAX_VALUE;
  }

  /** Whether all points lie on the curve, one after another. */
  private boolean passesAll(List<Point> all, double toleranceMm) {
    double t = 0;
    int k = 0;
    for (Point point : all) {
      while (k < at.length - 1 && point.equals(points.get(k))) {
        t = at[k++];
      }
      for (int i = 0; i < 4; i++) {
        t = curve.nearer(t, point);
      }
      if (!(curve.at(t).distance(point) <= toleranceMm)) {
        return false;
      }
    }
    for (int i = 1; i < at.length; i++) {
      if (at[i] < at[i - 1]) {
        return false;
      }
    }
    return true;
  }
}
