package ellwand.geometry;

import java.util.ArrayList;
import java.util.List;

/** Lines of straight stretches that run beside a line or curve at a constant distance. */
public final class Offset {

  /** How many places of a curve are looked at; between them a curve counts as straight. */
  private static final int SAMPLES = 256;

  /** With this part of a full stretch's bend an end stretch strays as far as a full one. */
  private static final double END_SHARE = 0.853;

  private Offset() {}

  /**
   * The line {@code mm} to the right of a segment (outside a counter-clockwise outline), or the
   * segment itself for 0. Its ends lie on the true offset, the points between them a little outside
   * its bends, so that it strays equally to both sides; they stand closer where it bends more, and
   * come out the same when the segment is run through backwards.
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
    int steps = Math.max(1, (int) (bend[SAMPLES] / Math.sqrt(8 * 2 * toleranceMm)));
    while (true) {
      double[] at = places(bend, Math.min(steps, SAMPLES));
      List<Point> line = balanced(segment, mm, at);
      if (steps >= SAMPLES || strays(dense, at, line) <= toleranceMm) {
        return line;
      }
      steps++;
    }
  }

  /** Points at the given parameters, moved outward by half of what their chords cut off. */
  private static List<Point> balanced(Segment segment, double mm, double[] at) {
    List<Point> line = new ArrayList<>(at.length);
    for (double t : at) {
      line.add(beside(segment, t, mm));
    }
    double[] cutOff = new double[at.length];
    for (int i = 1; i < at.length; i++) {
      Point middle = beside(segment, (at[i - 1] + at[i]) / 2, mm);
      Point chord = line.get(i).minus(line.get(i - 1));
      cutOff[i] = chord.norm() == 0 ? 0 : -chord.unit().cross(middle.minus(line.get(i - 1)));
    }
    for (int i = 1; i < at.length - 1; i++) {
      Point right = segment.direction(at[i]).left().times(-1);
      line.set(i, line.get(i).plus(right.times((cutOff[i] + cutOff[i + 1]) / 4)));
    }
    return line;
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

  /**
   * Parameters that share the bend out evenly, but for the first and last stretch, which have less
   * of it: one end of theirs cannot be moved outward.
   */
  private static double[] places(double[] bend, int steps) {
    double[] at = new double[steps + 1];
    double share = bend[SAMPLES] / Math.max(1, steps - 2 + 2 * END_SHARE);
    int i = 1;
    for (int step = 1; step < steps; step++) {
      double wanted = share * (step - 1 + END_SHARE);
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
  public static double distance(Point p, Point a, Point b) {
    Point along = b.minus(a);
    double squared = along.dot(along);
    double t = squared == 0 ? 0 : Math.max(0, Math.min(1, p.minus(a).dot(along) / squared));
    return p.distance(a.plus(along.times(t)));
  }
}
