package ellwand.file.drawn;

import ellwand.geometry.Offset;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** The line between two turn points in one size. */
final class Track {

  /** As fine as a line is looked at, mm. */
  private static final double FLATTENING_MM = 1e-3;

  private static final double NOTHING_MM = 1e-6;

  /** How far along the line, as a share of it, the same direction is looked for. */
  static final double NEAR_SHARE = 0.15;

  private final List<Point> line;
  private final double[] gone;

  Track(Path path) {
    line = path.flattened(FLATTENING_MM);
    gone = new double[line.size()];
    for (int i = 1; i < gone.length; i++) {
      gone[i] = gone[i - 1] + line.get(i).distance(line.get(i - 1));
    }
  }

  double length() {
    return gone[gone.length - 1];
  }

  /** How far a point lies off its part between two places, mm. */
  double off(Point p, double from, double to) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 1; i < line.size(); i++) {
      if (gone[i] >= from && gone[i - 1] <= to) {
        least = Math.min(least, Offset.distance(p, line.get(i - 1), line.get(i)));
      }
    }
    return least;
  }

  /** How far along it the corner is that is nearest, mm. */
  double nearest(Point p) {
    int best = 0;
    for (int i = 1; i < line.size(); i++) {
      if (line.get(i).distance(p) < line.get(best).distance(p)) {
        best = i;
      }
    }
    return gone[best];
  }

  Point at(double mm) {
    int i = 1;
    while (i < gone.length - 1 && gone[i] < mm) {
      i++;
    }
    double step = gone[i] - gone[i - 1];
    return line.get(i - 1).towards(line.get(i), step == 0 ? 0 : (mm - gone[i - 1]) / step);
  }

  /**
   * Where it runs in a direction, as near as can be to a place on it and between two others; at
   * that place where it nowhere does.
   */
  double running(Point direction, double wanted, double low, double high) {
    double best = wanted;
    double least = NEAR_SHARE * length();
    for (int i = 1; i + 1 < line.size(); i++) {
      if (Math.abs(gone[i] - wanted) > least || gone[i] <= low || gone[i] >= high) {
        continue;
      }
      double before = direction.cross(line.get(i).minus(line.get(i - 1)).unit());
      double after = direction.cross(line.get(i + 1).minus(line.get(i)).unit());
      if (before * after <= 0 && before != after) {
        // The direction of each stretch is that of the line at its middle.
        double from = (gone[i - 1] + gone[i]) / 2;
        double to = (gone[i] + gone[i + 1]) / 2;
        best = from + (to - from) * before / (before - after);
        least = Math.abs(gone[i] - wanted);
      }
    }
    return Math.max(low, Math.min(high, best));
  }

  /** Its corners between two places, and these. */
  List<Point> between(double from, double to) {
    List<Point> part = new ArrayList<>();
    part.add(at(from));
    for (int i = 0; i < gone.length; i++) {
      if (gone[i] > from + NOTHING_MM && gone[i] < to - NOTHING_MM) {
        part.add(line.get(i));
      }
    }
    part.add(at(to));
    return part;
  }
}
