package ellwand.trace;

import ellwand.geometry.Point;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The line or parabola that runs nearest to points in a row, by least squares; it takes their noise
 * out and says where the line is heading.
 *
 * @param x its three factors in the way along it, mm
 * @param y the same
 * @param rmsMm how far the points lie from it, root mean square
 */
record Bend(double[] x, double[] y, double rmsMm) {

  /**
   * @param points two or more, not all at one place
   * @param along of each point the way along the line, mm, ascending
   * @param straight whether it may not bend
   */
  static Bend of(List<Point> points, double[] along, boolean straight) {
    int terms = straight || points.size() < 4 ? 2 : 3;
    double[] x = factors(points, along, terms, true);
    double[] y = factors(points, along, terms, false);
    double sum = 0;
    for (int i = 0; i < points.size(); i++) {
      Point at = new Point(value(x, along[i]), value(y, along[i]));
      Point heading = new Point(slope(x, along[i]), slope(y, along[i])).unit();
      double off = heading.cross(points.get(i).minus(at));
      sum += off * off;
    }
    return new Bend(x, y, Math.sqrt(sum / points.size()));
  }

  private static double[] factors(List<Point> points, double[] along, int terms, boolean ofX) {
    double[][] rows = new double[terms][terms + 1];
    for (int i = 0; i < along.length; i++) {
      double value = ofX ? points.get(i).x() : points.get(i).y();
      double left = 1;
      for (int r = 0; r < terms; r++) {
        double power = left;
        for (int c = 0; c < terms; c++) {
          rows[r][c] += power;
          power *= along[i];
        }
        rows[r][terms] += left * value;
        left *= along[i];
      }
    }
    return Arrays.copyOf(Equations.solved(rows), 3);
  }

  private static double value(double[] f, double s) {
    return f[0] + s * (f[1] + s * f[2]);
  }

  private static double slope(double[] f, double s) {
    return f[1] + 2 * s * f[2];
  }

  Point at(double s) {
    return new Point(value(x, s), value(y, s));
  }

  /** Of travel, length 1. */
  Point direction(double s) {
    return new Point(slope(x, s), slope(y, s)).unit();
  }

  /**
   * Where this line and another, run on as straight lines from two places, cross.
   *
   * @return empty where they are all but parallel
   */
  Optional<Point> meeting(double s, Bend other, double t) {
    Point here = at(s);
    Point along = direction(s);
    Point across = other.direction(t);
    double turn = along.cross(across);
    return Math.abs(turn) < 0.02
        ? Optional.empty()
        : Optional.of(here.plus(along.times(other.at(t).minus(here).cross(across) / turn)));
  }
}
