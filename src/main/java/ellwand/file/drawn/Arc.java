package ellwand.file.drawn;

import ellwand.geometry.Point;

/** Elliptical arcs as cubic curves, within a thousandth of a mm. */
public final class Arc {

  private static final double TOLERANCE_MM = 5e-4;

  /**
   * How far the usual cubic strays from a quarter of a circle of radius 1; it shrinks with the
   * sixth power of the angle (Goldapp, Approximation of circular arcs by cubic polynomials, 1991;
   * the figure itself can be computed: it is reached near 22 degrees).
   */
  private static final double QUARTER_STRAYS = 2.73e-4;

  private Arc() {}

  /**
   * Draws an arc from where the pen stands, as the implementation notes of SVG 2 (B.2.4, conversion
   * from endpoint to centre) have it.
   */
  public static void draw(
      LineBuilder pen,
      Point from,
      double rx,
      double ry,
      double turnDegrees,
      boolean large,
      boolean sweep,
      Point to) {
    double a = Math.abs(rx);
    double b = Math.abs(ry);
    if (a == 0 || b == 0 || from.equals(to)) {
      pen.line(to.x(), to.y());
      return;
    }
    Affine turn = Affine.turned(turnDegrees);
    Point half = Affine.turned(-turnDegrees).apply(from.minus(to).times(0.5));
    double over = Math.hypot(half.x() / a, half.y() / b);
    if (over > 1) {
      a *= over;
      b *= over;
    }
    double x = half.x() / a;
    double y = half.y() / b;
    double square = x * x + y * y;
    double root = Math.sqrt(Math.max(0, (1 - square) / square)) * (large == sweep ? -1 : 1);
    Point centre = new Point(root * y, -root * x);
    double start = Math.atan2(y - centre.y(), x - centre.x());
    double end = Math.atan2(-y - centre.y(), -x - centre.x());
    double sweepBy = end - start;
    if (sweep && sweepBy < 0) {
      sweepBy += 2 * Math.PI;
    } else if (!sweep && sweepBy > 0) {
      sweepBy -= 2 * Math.PI;
    }
    Affine placed =
        Affine.shifted((from.x() + to.x()) / 2, (from.y() + to.y()) / 2)
            .after(turn)
            .after(Affine.scaled(a, b))
            .after(Affine.shifted(centre.x(), centre.y()));
    draw(pen, placed, start, sweepBy, Math.max(a, b), to);
  }

  private static void draw(
      LineBuilder pen, Affine placed, double start, double sweep, double radius, Point to) {
    double mm = radius * pen.stretch();
    double quarters = Math.abs(sweep) / (Math.PI / 2);
    double most = Math.pow(TOLERANCE_MM / (mm * QUARTER_STRAYS), 1.0 / 6);
    int pieces = (int) Math.max(1, Math.min(1000, Math.ceil(quarters / Math.min(1, most) - 1e-9)));
    double step = sweep / pieces;
    double handle = 4.0 / 3 * Math.tan(step / 4);
    for (int i = 0; i < pieces; i++) {
      double from = start + i * step;
      double until = start + (i + 1) * step;
      Point first =
          placed.apply(
              new Point(
                  Math.cos(from) - handle * Math.sin(from),
                  Math.sin(from) + handle * Math.cos(from)));
      Point second =
          placed.apply(
              new Point(
                  Math.cos(until) + handle * Math.sin(until),
                  Math.sin(until) - handle * Math.cos(until)));
      Point end = i == pieces - 1 ? to : placed.apply(new Point(Math.cos(until), Math.sin(until)));
      pen.curve(first.x(), first.y(), second.x(), second.y(), end.x(), end.y());
    }
  }

  /** A whole ellipse, closed. */
  public static void ellipse(LineBuilder pen, double cx, double cy, double rx, double ry) {
    pen.move(cx + rx, cy);
    Point right = new Point(cx + rx, cy);
    Point left = new Point(cx - rx, cy);
    draw(pen, right, rx, ry, 0, false, true, left);
    draw(pen, left, rx, ry, 0, false, true, right);
    pen.close();
  }
}
