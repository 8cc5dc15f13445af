package ellwand.geometry;

import java.util.ArrayList;
import java.util.List;

/** Lines of straight stretches that run beside a line or curve at a constant distance. */
public final class Offset {

  /** How many places of a curve are looked at; between them a curve counts as straight. */
  private static final int SAMPLES = 256;

  private Offset() {}

  /**
   * The line {@code mm} to the right of a segment (outside a counter-clockwise outline), or the
   * segment itself for 0. Its points lie on the true offset; they stand closer where it bends more,
   * and come out the same when the segment is run through backwards.
   *
   * @param mm 0 or more; where a curve bends to the right with a radius below it, the line turns
   *     back on itself
   * @param toleranceMm how far the true offset may stray from the straight stretches
   * @return two points or more
   */
  public static List<Point> right(Segment segment, double mm, double toleranceMm) {
    if (segment instanceof Segment.Line) {
      return List.of(beside(segment, 0, mm), beside(segment, 1, mm));
    }
    Point[] dense = new Point[SAMPLES + 1];
    for (int i = 0; i <= SAMPLES; i++) {
      dense[i] = beside(segment, (double) i / SAMPLES, mm);
    }
    double[] bend = bend(segment, dense);
    double total = bend[SAMPLES];
    int steps = (int) Math.max(1, Math.floor(total / Math.sqrt(8 * toleranceMm)));
    while (true) {
      double[] at = places(bend, Math.min(steps, SAMPLES));
      List<Point> line = new ArrayList<>(at.length);
      for (double t : at) {
        line.add(beside(segment, t, mm));
      }
      if (steps >= SAMPLES || strays(dense, at, line) <= toleranceMm) {
        return line;
      }
      steps++;
    }
  }

  /** The place {@code mm} to the right of the segment at parameter {@code t}. */
  static Point beside(Segment segment, double t, double mm) {
    Point at = t == 0 ? segment.start() : t == 1 ? segment.end() : segment.at(t);
    return mm == 0 ? at : at.minus(segment.direction(t).left().times(mm));
  }

  /**
   * Summed up along the curve: the square root of curvature times length. A stretch over which it
   * grows by sqrt(8 e) strays from its chord by e.
   */
  private static double[] bend(Segment segment, Point[] dense) {
    double[] bend = new double[SAMPLES + 1];
    for (int i = 1; i <= SAMPLES; i++) {
      Point before = segment.direction((i - 1.0) / SAMPLES);
      Point after = segment.direction((double) i / SAMPLES);
      double turn = Math.abs(Math.atan2(before.cross(after), before.dot(after)));
      bend[i] = bend[i - 1] + Math.sqrt(turn * dense[i - 1].distance(dense[i])) + 1e-12;
    }
    return bend;
  }

  /** Parameters that share the bend out evenly. */
  private static double[] places(double[] bend, int steps) {
    double[] at = new double[steps + 1];
    int i = 1;
    for (int step = 1; step < steps; step++) {
      double wanted = bend[SAMPLES] * step / steps;
      while (bend[i] < wanted) {
        i++;
      }
      at[step] = (i - 1 + (wanted - bend[i - 1]) / (bend[i] - bend[i - 1])) / SAMPLES;
    }
    at[steps] = 1;
    return at;
  }

  private static double strays(Point[] dense, double[] at, List<Point> line) {
    double most = 0;
    int stretch = 1;
    for (int i = 0; i <= SAMPLES; i++) {
      while (at[stretch] * SAMPLES < i) {
        stretch++;
      }
      most = Math.max(most, distance(dense[i], line.get(stretch - 1), line.get(stretch)));
    }
    return most;
  }

  /** From a point to the stretch between two others, mm. */
  static double distance(Point p, Point a, Point b) {
    Point along = b.minus(a);
    double squared = along.dot(along);
    double t = squared == 0 ? 0 : Math.max(0, Math.min(1, p.minus(a).dot(along) / squared));
    return p.distance(a.plus(along.times(t)));
  }
}
