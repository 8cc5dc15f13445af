package ellwand.draw.piece;

import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** The inside of an outline, where words may stand. */
public final class Room {

  private final Path2D inside = new Path2D.Double();
  private final Box box;

  public Room(Outline outline) {
    List<Point> points = outline.points();
    inside.moveTo(points.get(0).x(), points.get(0).y());
    points.subList(1, points.size()).forEach(p -> inside.lineTo(p.x(), p.y()));
    inside.closePath();
    box = outline.box();
  }

  public Box box() {
    return box;
  }

  /** Whether all of a box lies inside. */
  boolean holds(Box other) {
    return other.minX() >= box.minX()
        && other.maxX() <= box.maxX()
        && other.minY() >= box.minY()
        && other.maxY() <= box.maxY()
        && inside.contains(other.minX(), other.minY(), other.length(), other.width());
  }

  /** Whether some of a box lies inside. */
  public boolean touches(Box other) {
    return box.touches(other)
        && inside.intersects(other.minX(), other.minY(), other.length(), other.width());
  }

  /** Whether a straight stretch of line runs over it. */
  public boolean isCrossed(Point from, Point to, double stepMm) {
    int steps = (int) Math.ceil(from.distance(to) / stepMm);
    for (int i = 0; i <= steps; i++) {
      Point at = from.towards(to, (double) i / Math.max(1, steps));
      if (inside.contains(at.x(), at.y())) {
        return true;
      }
    }
    return false;
  }

  /** Whether a line of straight stretches runs through a box. */
  public static boolean crosses(List<Point> line, Box box) {
    Rectangle2D area = new Rectangle2D.Double(box.minX(), box.minY(), box.length(), box.width());
    for (int i = 1; i < line.size(); i++) {
      Point a = line.get(i - 1);
      Point b = line.get(i);
      if (new Line2D.Double(a.x(), a.y(), b.x(), b.y()).intersects(area)) {
        return true;
      }
    }
    return false;
  }
}
