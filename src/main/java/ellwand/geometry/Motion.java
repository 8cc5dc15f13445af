package ellwand.geometry;

import java.util.List;

/**
 * How a drawn shape comes to its place: first turned over (y becomes -y) if {@code flipped}, then
 * turned about the origin, then shifted. Quarter turns are exact.
 *
 * @param turnDegrees counter-clockwise, any value
 * @param x shift along the warp, mm
 * @param y shift across, mm
 */
public record Motion(boolean flipped, double turnDegrees, double x, double y) {

  public static final Motion NONE = new Motion(false, 0, 0, 0);

  public Point apply(Point p) {
    double py = flipped ? -p.y() : p.y();
    double c = cos();
    double s = sin();
    return new Point(c * p.x() - s * py + x, s * p.x() + c * py + y);
  }

  /** Mirrors about the line through two places. */
  public static Motion mirror(Point a, Point b) {
    Point along = b.minus(a);
    Motion over = new Motion(true, 2 * Math.toDegrees(Math.atan2(along.y(), along.x())), 0, 0);
    Point shift = a.minus(over.apply(a));
    return over.shifted(shift.x(), shift.y());
  }

  /** Turns and shifts places so that they lie as near as can be, by least squares, to others. */
  public static Motion onto(List<Point> from, List<Point> to) {
    Point a = middle(from);
    Point b = middle(to);
    double dot = 0;
    double cross = 0;
    for (int i = 0; i < from.size(); i++) {
      Point p = from.get(i).minus(a);
      Point q = to.get(i).minus(b);
      dot += p.dot(q);
      cross += p.cross(q);
    }
    Motion turn = new Motion(false, Math.toDegrees(Math.atan2(cross, dot)), 0, 0);
    Point shift = b.minus(turn.apply(a));
    return turn.shifted(shift.x(), shift.y());
  }

  private static Point middle(List<Point> points) {
    return points.stream().reduce(new Point(0, 0), Point::plus).times(1.0 / points.size());
  }

  /** Brings everything back. */
  public Motion inverse() {
    Motion back = new Motion(flipped, flipped ? turnDegrees : -turnDegrees, 0, 0);
    Point shift = back.apply(new Point(-x, -y));
    return back.shifted(shift.x(), shift.y());
  }

  /** Both in one: the other first, then this. */
  public Motion after(Motion first) {
    Point shift = apply(new Point(first.x, first.y));
    double turned = flipped ? -first.turnDegrees : first.turnDegrees;
    return new Motion(
        flipped != first.flipped, (turned + turnDegrees + 360) % 360, shift.x(), shift.y());
  }

  /** The same turn without the shift. */
  public Motion unshifted() {
    return new Motion(flipped, turnDegrees, 0, 0);
  }

  public Motion shifted(double dx, double dy) {
    return new Motion(flipped, turnDegrees, x + dx, y + dy);
  }

  private double cos() {
    double quarters = turnDegrees / 90;
    return quarters == Math.rint(quarters)
        ? new int[] {1, 0, -1, 0}[Math.floorMod((long) quarters, 4)]
        : Math.cos(Math.toRadians(turnDegrees));
  }

  private double sin() {
    double quarters = turnDegrees / 90;
    return quarters == Math.rint(quarters)
        ? new int[] {0, 1, 0, -1}[Math.floorMod((long) quarters, 4)]
        : Math.sin(Math.toRadians(turnDegrees));
  }
}
