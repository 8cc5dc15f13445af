package ellwand.cutting;

import ellwand.geometry.Point;
import ellwand.pattern.Edge;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * One of the two lines that make a corner, seen from the corner.
 *
 * @param corner on the sewing line
 * @param out the edge's direction past the corner
 * @param side the direction from the sewing line to the line beside it
 * @param line beside the edge, from the corner away
 */
record Arm(Edge edge, Point corner, Point out, Point side, List<Point> line) {

  static Arm end(Run run) {
    List<Point> line = new ArrayList<>(run.beside());
    Collections.reverse(line);
    Point out = run.leaving();
    return new Arm(run.edge(), run.end(), out, out.left().times(-1), line);
  }

  static Arm start(Run run) {
    Point along = run.along();
    return new Arm(run.edge(), run.start(), along.times(-1), along.left().times(-1), run.beside());
  }

  /** Its nearer half alone. */
  Arm near() {
    return new Arm(edge, corner, out, side, line.subList(0, line.size() / 2));
  }

  double allowance() {
    return edge.allowanceMm();
  }

  /** Where the line beside the edge starts, square to the corner. */
  Point foot() {
    return line.get(0);
  }

  /** The place on the straight continuation of the line, so many mm past its foot. */
  Point past(double mm) {
    return foot().plus(out.times(mm));
  }

  /**
   * The line, begun so many mm before its foot. Stretch 0 is the continuation, so that a place on
   * it is numbered one more than on {@link #line}.
   */
  List<Point> extended(double mm) {
    List<Point> extended = new ArrayList<>(line.size() + 1);
    extended.add(past(mm));
    extended.addAll(line);
    return extended;
  }
}
