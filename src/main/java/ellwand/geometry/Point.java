package ellwand.geometry;

/**
 * A place, or a direction, in mm. Equality is written out: a record's own is code made at run time,
 * which costs every cold command some hundredths of a second.
 */
public record Point(double x, double y) {

  @Override
  public boolean equals(Object other) {
    return other instanceof Point p && Double.compare(x, p.x) == 0 && Double.compare(y, p.y) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * Double.hashCode(x) + Double.hashCode(y);
  }

  public Point plus(Point other) {
    return new Point(x + other.x, y + other.y);
  }

  public Point minus(Point other) {
    return new Point(x - other.x, y - other.y);
  }

  public Point times(double factor) {
    return new Point(x * factor, y * factor);
  }

  public double dot(Point other) {
    return x * other.x + y * other.y;
  }

  /** Positive when {@code other} lies to the left of this direction. */
  public double cross(Point other) {
    return x * other.y - y * other.x;
  }

  public double norm() {
    return Math.hypot(x, y);
  }

  public double distance(Point other) {
    return Math.hypot(x - other.x, y - other.y);
  }

  /** The same direction with length 1; undefined for the zero direction. */
  public Point unit() {
    return times(1 / norm());
  }

  /** This direction turned a quarter to the left. */
  public Point left() {
    return new Point(-y, x);
  }

  /** The place a share {@code t} (0 to 1) of the way to {@code other}. */
  public Point towards(Point other, double t) {
    return new Point(x + (other.x - x) * t, y + (other.y - y) * t);
  }

  /** Mirrored about the line through {@code a} and {@code b}. */
  public Point mirrored(Point a, Point b) {
    Point along = b.minus(a).unit();
    Point offset = minus(a);
    return a.plus(along.times(2 * offset.dot(along))).minus(offset);
  }

  /**
   * Whether a way from here along x crosses the straight line between two points; one at the same y
   * counts as below it. A way that crosses a closed line an odd number of times begins inside.
   */
  public boolean liesBefore(Point a, Point b) {
    return a.y > y != b.y > y && x < a.x + (y - a.y) * (b.x - a.x) / (b.y - a.y);
  }
}
