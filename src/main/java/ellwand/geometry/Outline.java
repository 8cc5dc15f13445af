package ellwand.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * A closed line of straight stretches, counter-clockwise, the first point not repeated at the end.
 *
 * <p>Made with {@link #of}, which turns clockwise points round. It does not look for crossings; see
 * {@link Region#crossing}.
 */
public record Outline(List<Point> points) {

  public Outline {
    points = List.copyOf(points);
    if (points.size() < 3) {
      throw new IllegalArgumentException("an outline needs three points or more");
    }
    if (!(signedArea(points) > 0)) {
      throw new IllegalArgumentException("an outline must run counter-clockwise round some area");
    }
  }

  /** From points in either direction; repeats of a point after itself are dropped. */
  public static Outline of(List<Point> points) {
    return new Outline(ring(points));
  }

  /** The same of points that somebody wrote; empty if they enclose nothing. */
  public static Optional<Outline> around(List<Point> points) {
    List<Point> ring = ring(points);
    return ring.size() >= 3 && signedArea(ring) > 0
        ? Optional.of(new Outline(ring))
        : Optional.empty();
  }

  private static List<Point> ring(List<Point> points) {
    List<Point> ring = new ArrayList<>(points.size());
    for (Point p : points) {
      if (ring.isEmpty() || !ring.get(ring.size() - 1).equals(p)) {
        ring.add(p);
      }
    }
    if (ring.size() > 1 && ring.get(0).equals(ring.get(ring.size() - 1))) {
      ring.remove(ring.size() - 1);
    }
    if (signedArea(ring) < 0) {
      Collections.reverse(ring);
    }
    return ring;
  }

  public static Outline of(Box box) {
    return new Outline(
        List.of(
            new Point(box.minX(), box.minY()),
            new Point(box.maxX(), box.minY()),
            new Point(box.maxX(), box.maxY()),
            new Point(box.minX(), box.maxY())));
  }

  /** Of the first point, which tells most outlines apart: they are looked up often. */
  @Override
  public int hashCode() {
    return 31 * points.size() + points.get(0).hashCode();
  }

  /** Square mm, positive for counter-clockwise rings; the shoelace formula. */
  public static double signedArea(List<Point> ring) {
    double twice = 0;
    for (int i = 0; i < ring.size(); i++) {
      twice += ring.get(i).cross(ring.get((i + 1) % ring.size()));
    }
    return twice / 2;
  }

  /** Square mm. */
  public double area() {
    return signedArea(points);
  }

  public Box box() {
    return Box.around(points);
  }

  /** Whether a place lies inside; on the line itself it may or may not. */
  public boolean contains(Point place) {
    return encloses(points, place);
  }

  /** Whether a place lies in a closed ring of points; on the line itself it may or may not. */
  public static boolean encloses(List<Point> ring, Point place) {
    boolean inside = false;
    for (int i = 0; i < ring.size(); i++) {
      inside ^= place.liesBefore(ring.get(i), ring.get((i + 1) % ring.size()));
    }
    return inside;
  }

  /** The smallest distance from a place to the line itself, mm; 0 on it. */
  public double distance(Point place) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < points.size(); i++) {
      Point next = points.get((i + 1) % points.size());
      least = Math.min(least, Offset.distance(place, points.get(i), next));
    }
    return least;
  }

  /**
   * The same line without points that lie within so many mm of the stretch between their
   * neighbours.
   */
  public Outline withoutNeedless(double mm) {
    List<Point> kept = new ArrayList<>(points);
    for (int i = 0; i < kept.size() && kept.size() > 3; ) {
      Point before = kept.get((i + kept.size() - 1) % kept.size());
      Point after = kept.get((i + 1) % kept.size());
      if (Offset.distance(kept.get(i), before, after) <= mm) {
        kept.remove(i);
        i = Math.max(0, i - 1);
      } else {
        i++;
      }
    }
    return new Outline(kept);
  }

  /** In its place; stays counter-clockwise when turned over. */
  public Outline moved(Motion motion) {
    List<Point> moved = new ArrayList<>(points.size());
    for (Point p : points) {
      moved.add(motion.apply(p));
    }
    if (motion.flipped()) {
      Collections.reverse(moved);
    }
    return new Outline(moved);
  }

  /** Stretched by the two factors about the origin, as cloth that will shrink again asks for. */
  public Outline scaled(double alongX, double alongY) {
    return new Outline(
        points.stream().map(p -> new Point(p.x() * alongX, p.y() * alongY)).toList());
  }
}
