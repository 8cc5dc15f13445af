package ellwand.file.drawn;

import ellwand.geometry.Box;
import ellwand.geometry.Offset;
import ellwand.geometry.Outline;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** A closed line as straight stretches, to ask what lies in it and how near to it. */
final class Ring {

  private static final double FLATTENING_MM = 0.02;

  private static final double ON_IT_MM = 0.05;

  /** In how many bands across the stretches are sorted, so that few are asked for a point. */
  private static final int BANDS = 64;

  private final List<Point> points;
  private final Box box;
  private final List<List<Integer>> bands = new ArrayList<>();

  /**
   * @param path that ends where it starts
   */
  Ring(Path path) {
    List<Point> line = path.flattened(FLATTENING_MM);
    this.points = line.subList(0, line.size() - 1);
    this.box = Box.around(points);
    for (int band = 0; band < BANDS; band++) {
      bands.add(new ArrayList<>());
    }
    for (int i = 0; i < points.size(); i++) {
      int first = band(Math.min(points.get(i).y(), next(i).y()));
      int last = band(Math.max(points.get(i).y(), next(i).y()));
      for (int band = first; band <= last; band++) {
        bands.get(band).add(i);
      }
    }
  }

  private int band(double y) {
    double share = box.width() > 0 ? (y - box.minY()) / box.width() : 0;
    return (int) Math.max(0, Math.min(BANDS - 1, share * BANDS));
  }

  Box box() {
    return box;
  }

  /** Square mm, above 0 if it runs counter-clockwise. */
  double signedArea() {
    return Outline.signedArea(points);
  }

  double area() {
    return Math.abs(signedArea());
  }

  private Point next(int i) {
    return points.get((i + 1) % points.size());
  }

  boolean contains(Point p) {
    if (!box.contains(p)) {
      return false;
    }
    boolean inside = false;
    for (int i : bands.get(band(p.y()))) {
      inside ^= p.liesBefore(points.get(i), next(i));
    }
    return inside;
  }

  /** To the line itself, mm; 0 on it. */
  double distance(Point p) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < points.size(); i++) {
      least = Math.min(least, Offset.distance(p, points.get(i), next(i)));
    }
    return least;
  }

  /** Whether most of another lies in or on it, and nothing sticks out by more than a mm. */
  boolean holds(Ring other) {
    if (other.box.minX() < box.minX() - 1
        || other.box.maxX() > box.maxX() + 1
        || other.box.minY() < box.minY() - 1
        || other.box.maxY() > box.maxY() + 1) {
      return false;
    }
    return other.points.stream().filter(p -> contains(p) || distance(p) <= ON_IT_MM).count() * 2
        > other.points.size();
  }

  /** Whether another runs beside it on the inside all the way, as a sewing line does. */
  boolean isFollowedBy(Ring inner, double leastMm, double mostMm) {
    return inner.area() > 0.5 * area()
        && inner.points.stream()
            .mapToDouble(this::distance)
            .allMatch(mm -> mm >= leastMm && mm <= mostMm);
  }
}
