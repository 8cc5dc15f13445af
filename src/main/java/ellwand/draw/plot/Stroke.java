package ellwand.draw.plot;

import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * What a pen draws without being lifted.
 *
 * @param points two or more
 * @param closed whether it comes back to its first point; it may then begin at any of them
 */
public record Stroke(List<Point> points, boolean closed) {

  public Stroke {
    points = List.copyOf(points);
    if (points.size() < 2) {
      throw new IllegalArgumentException("a stroke needs two points or more");
    }
  }

  public Point start() {
    return points.get(0);
  }

  public Point end() {
    return closed ? start() : points.get(points.size() - 1);
  }

  public double lengthMm() {
    double length = closed ? points.get(points.size() - 1).distance(start()) : 0;
    for (int i = 1; i < points.size(); i++) {
      length += points.get(i - 1).distance(points.get(i));
    }
    return length;
  }

  Stroke reversed() {
    if (closed) {
      // Where it begins is what counts; which way round it goes does not.
      return this;
    }
    List<Point> back = new ArrayList<>(points);
    Collections.reverse(back);
    return new Stroke(back, false);
  }

  /** The same, begun as near to a place as it can be. */
  Stroke from(Point place) {
    if (!closed) {
      return end().distance(place) < start().distance(place) ? reversed() : this;
    }
    int nearest = 0;
    for (int i = 1; i < points.size(); i++) {
      if (points.get(i).distance(place) < points.get(nearest).distance(place)) {
        nearest = i;
      }
    }
    List<Point> turned = new ArrayList<>(points);
    Collections.rotate(turned, -nearest);
    return new Stroke(turned, true);
  }

  /** How far the pen goes from a place to where this would begin from there. */
  double distance(Point place) {
    if (!closed) {
      return Math.min(start().distance(place), end().distance(place));
    }
    double least = Double.POSITIVE_INFINITY;
    for (Point p : points) {
      least = Math.min(least, p.distance(place));
    }
    return least;
  }
}
