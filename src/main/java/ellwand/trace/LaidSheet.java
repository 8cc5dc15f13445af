package ellwand.trace;

import ellwand.geometry.Point;

/**
 * Where a sheet lies on the plane, and how far its paper lifts from it.
 *
 * @param turn radians, counter-clockwise
 * @param lift mm: how the paper rises to the right and upwards, then how it bends along, across and
 *     askew, each at the edge of its paper
 */
record LaidSheet(ReferenceSheet sheet, double x, double y, double turn, double[] lift) {

  static final int LIFTS = 5;

  static LaidSheet flat(ReferenceSheet sheet, double x, double y, double turn) {
    return new LaidSheet(sheet, x, y, turn, new double[LIFTS]);
  }

  /** A place on the paper as it lies, mm: on the plane. */
  Point onPlane(Point paper) {
    double c = Math.cos(turn);
    double s = Math.sin(turn);
    return new Point(c * paper.x() - s * paper.y() + x, s * paper.x() + c * paper.y() + y);
  }

  /** How high that place lies over the plane, mm. */
  double height(Point paper) {
    double u = 2 * paper.x() / sheet.paper().widthMm() - 1;
    double v = 2 * paper.y() / sheet.paper().heightMm() - 1;
    return lift[0] * u + lift[1] * v + lift[2] * u * u + lift[3] * v * v + lift[4] * u * v;
  }

  /** The highest of its paper's corners and its middle, mm. */
  double highest() {
    return sheet.outline().points().stream().mapToDouble(this::height).max().orElse(0);
  }
}
