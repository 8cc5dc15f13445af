package ellwand.geometry;

import java.util.Collection;

/** An upright rectangle, mm; {@code minX <= maxX} and {@code minY <= maxY}. */
public record Box(double minX, double minY, double maxX, double maxY) {

  public Box {
    if (!(minX <= maxX && minY <= maxY)) {
      throw new IllegalArgumentException(
          "a box from " + minX + "," + minY + " to " + maxX + "," + maxY + " is inside out");
    }
  }

  /** The smallest box round at least one point. */
  public static Box around(Collection<Point> points) {
    double minX = Double.POSITIVE_INFINITY;
    double minY = Double.POSITIVE_INFINITY;
    double maxX = Double.NEGATIVE_INFINITY;
    double maxY = Double.NEGATIVE_INFINITY;
    for (Point p : points) {
      minX = Math.min(minX, p.x());
      minY = Math.min(minY, p.y());
      maxX = Math.max(maxX, p.x());
      maxY = Math.max(maxY, p.y());
    }
    return new Box(minX, minY, maxX, maxY);
  }

  /** Length along the warp. */
  public double length() {
    return maxX - minX;
  }

  /** Width across the cloth. */
  public double width() {
    return maxY - minY;
  }

  public double area() {
    return length() * width();
  }

  public Point centre() {
    return new Point((minX + maxX) / 2, (minY + maxY) / 2);
  }

  public Box union(Box other) {
    return new Box(
        Math.min(minX, other.minX),
        Math.min(minY, other.minY),
        Math.max(maxX, other.maxX),
        Math.max(maxY, other.maxY));
  }

  public Box shifted(double dx, double dy) {
    return new Box(minX + dx, minY + dy, maxX + dx, maxY + dy);
  }

  /** Whether a place is in it, or on its edge. */
  public boolean contains(Point p) {
    return p.x() >= minX && p.x() <= maxX && p.y() >= minY && p.y() <= maxY;
  }

  public Box grown(double mm) {
    return new Box(minX - mm, minY - mm, maxX + mm, maxY + mm);
  }

  /** Whether the two have a point in common, borders included. */
  public boolean touches(Box other) {
    return minX <= other.maxX && other.minX <= maxX && minY <= other.maxY && other.minY <= maxY;
  }
}
