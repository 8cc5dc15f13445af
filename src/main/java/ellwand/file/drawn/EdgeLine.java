package ellwand.file.drawn;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import java.util.List;
import java.util.Optional;

/** An edge as straight stretches, to find where marks lie on it. */
final class EdgeLine {

  /** As lengths along a path are measured, mm. */
  static final double MEASURING_MM = 1e-3;

  /** As marks that lie an allowance off an edge want it, mm. */
  static final double FINE_MM = 1e-6;

  private final List<Point> line;
  private final double lengthMm;

  /**
   * A place.
   *
   * @param atMm measured along the edge from its start
   * @param distanceMm of what was looked for
   */
  record Nearest(double atMm, double distanceMm) {}

  /**
   * @param toleranceMm one of the two above
   */
  EdgeLine(Path edge, double toleranceMm) {
    this.line = edge.flattened(toleranceMm);
    this.lengthMm = edge.length();
  }

  /** The place that is nearest to a point. */
  Nearest nearest(Point point) {
    double gone = 0;
    Nearest nearest = new Nearest(0, point.distance(line.get(0)));
    for (int i = 1; i < line.size(); i++) {
      Point a = line.get(i - 1);
      Point along = line.get(i).minus(a);
      double length = along.norm();
      if (length > 0) {
        double at = Math.max(0, Math.min(length, point.minus(a).dot(along) / length));
        double distance = point.distance(a.plus(along.times(at / length)));
        if (distance < nearest.distanceMm) {
          nearest = new Nearest(Math.min(lengthMm, gone + at), distance);
        }
      }
      gone += length;
    }
    return nearest;
  }

  /** Where a straight stretch first crosses it, and how far that is from where it starts. */
  Optional<Nearest> crossing(Point from, Point to) {
    double gone = 0;
    for (int i = 1; i < line.size(); i++) {
      Point a = line.get(i - 1);
      Point along = line.get(i).minus(a);
      Point across = to.minus(from);
      double turn = along.cross(across);
      double at = from.minus(a).cross(across) / turn;
      double other = from.minus(a).cross(along) / turn;
      if (turn != 0 && at >= 0 && at <= 1 && other >= 0 && other <= 1) {
        return Optional.of(
            new Nearest(Math.min(lengthMm, gone + at * along.norm()), other * across.norm()));
      }
      gone += along.norm();
    }
    return Optional.empty();
  }
}
