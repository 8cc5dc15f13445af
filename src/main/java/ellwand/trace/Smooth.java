package ellwand.trace;

import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A stretch of a rim without its noise: each place by the parabola through what lies near.
 *
 * @param points from end to end
 * @param tangents of travel there, length 1
 * @param along from the start, mm
 */
record Smooth(List<Point> points, List<Point> tangents, double[] along) {

  /** How far to both sides, mm: at a radius of 10 mm this takes 0.1 mm off a bend. */
  private static final double NEAR_MM = 5;

  /** The direction is taken from more of the rim, where it bends evenly all that way, mm. */
  private static final double HEADING_MM = 12;

  private static final double EVENLY_MM = 0.15;

  /** As many points from a corner the rim says which way it leaves, and so many may be rounded. */
  private static final int HEADING_POINTS = 16;

  private static final int ROUNDED_POINTS = 10;

  /**
   * @param run of the rim, whose ends at corners are rounded
   * @param from the corner it starts at, null for none
   */
  static Smooth of(List<Point> run, Point from, Point to, double stepMm) {
    List<Point> kept = trimmed(run, from, to);
    double[] raw = along(kept);
    double length = raw[raw.length - 1];
    int count = (int) Math.max(1, Math.round(length / stepMm));
    List<Point> points = new ArrayList<>();
    List<Point> tangents = new ArrayList<>();
    for (int k = 0; k <= count; k++) {
      double s = length * k / count;
      Bend bend = bend(kept, raw, s, NEAR_MM);
      Bend wide = bend(kept, raw, s, HEADING_MM);
      points.add(k == 0 ? kept.get(0) : k == count ? kept.get(kept.size() - 1) : bend.at(0));
      tangents.add((wide.rmsMm() <= EVENLY_MM ? wide : bend).direction(0));
    }
    return new Smooth(points, tangents, along(points));
  }

  /** Without what a corner has rounded, and with the corner itself. */
  private static List<Point> trimmed(List<Point> run, Point from, Point to) {
    List<Point> kept = new ArrayList<>(run);
    if (from != null) {
      cutBack(kept, from);
    }
    if (to != null) {
      Collections.reverse(kept);
      cutBack(kept, to);
      Collections.reverse(kept);
    }
    return kept;
  }

  private static void cutBack(List<Point> run, Point corner) {
    Point on = run.get(Math.min(run.size() - 1, HEADING_POINTS)).minus(corner).unit();
    int rounded = 0;
    while (rounded < Math.min(ROUNDED_POINTS, run.size() - 1)
        && run.get(rounded).minus(corner).dot(on) < RimCorners.ROUNDED_MM) {
      rounded++;
    }
    run.subList(0, rounded).clear();
    run.add(0, corner);
  }

  private static double[] along(List<Point> points) {
    double[] along = new double[points.size()];
    for (int i = 1; i < along.length; i++) {
      along[i] = along[i - 1] + points.get(i).distance(points.get(i - 1));
    }
    return along;
  }

  /** Round the place {@code s}, which is 0 on it. */
  private static Bend bend(List<Point> points, double[] along, double s, double nearMm) {
    int from = first(along, s - nearMm);
    int to = first(along, s + nearMm);
    while (to - from < 4 && (from > 0 || to < along.length)) {
      from = Math.max(0, from - 1);
      to = Math.min(along.length, to + 1);
    }
    double[] part = new double[to - from];
    for (int i = 0; i < part.length; i++) {
      part[i] = along[from + i] - s;
    }
    return Bend.of(points.subList(from, to), part, false);
  }

  /** The first that is not below. */
  private static int first(double[] along, double mm) {
    int low = 0;
    int high = along.length;
    while (low < high) {
      int middle = (low + high) / 2;
      if (along[middle] < mm) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
