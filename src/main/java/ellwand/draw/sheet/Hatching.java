package ellwand.draw.sheet;

import ellwand.geometry.Motion;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** Parallel lines inside an outline. */
public final class Hatching {

  private Hatching() {}

  /**
   * @param ring the outline
   * @param stepMm from line to line
   * @param degrees of the lines, counter-clockwise from x
   */
  public static List<List<Point>> of(List<Point> ring, double stepMm, double degrees) {
    Motion flat = new Motion(false, -degrees, 0, 0);
    Motion back = new Motion(false, degrees, 0, 0);
    List<Point> turned = ring.stream().map(flat::apply).toList();
    double low = turned.stream().mapToDouble(Point::y).min().orElse(0);
    double high = turned.stream().mapToDouble(Point::y).max().orElse(0);
    List<List<Point>> lines = new ArrayList<>();
    for (double y = (Math.floor(low / stepMm) + 0.5) * stepMm; y < high; y += stepMm) {
      if (y > low) {
        List<Double> xs = crossings(turned, y);
        for (int i = 0; i + 1 < xs.size(); i += 2) {
          lines.add(
              List.of(
                  back.apply(new Point(xs.get(i), y)), back.apply(new Point(xs.get(i + 1), y))));
        }
      }
    }
    return lines;
  }

  private static List<Double> crossings(List<Point> ring, double y) {
    List<Double> xs = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      Point a = ring.get(i);
      Point b = ring.get((i + 1) % ring.size());
      if (a.y() < y != b.y() < y) {
        xs.add(a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y()));
      }
    }
    xs.sort(null);
    return xs;
  }
}
