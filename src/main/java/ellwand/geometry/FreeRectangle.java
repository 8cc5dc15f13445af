package ellwand.geometry;

import java.util.List;
import java.util.Optional;

/**
 * Finds the largest upright rectangle that nothing touches.
 *
 * <p>The best one is found on a grid, where a cell is free only if no outline reaches into it, and
 * is then widened on each side until it meets an outline or the border. So it covers no copy, no
 * free rectangle holds it, and its area is at least that of the truly largest one cut down by one
 * cell all round. Cells are 1 mm, or as much more as keeps the grid to half a million.
 */
public final class FreeRectangle {

  private static final double FINEST_MM = 1;
  private static final double MOST_CELLS = 500_000;

  private FreeRectangle() {}

  /** Empty if the whole box is taken, but for strips narrower than a cell. */
  public static Optional<Box> largest(Box within, List<Outline> taken) {
    return largest(within, taken, 0);
  }

  /**
   * The largest of those that are no shorter and no narrower than so much, but for one cell.
   *
   * @param leastMm both ways
   */
  public static Optional<Box> largest(Box within, List<Outline> taken, double leastMm) {
    if (!(within.length() > 0 && within.width() > 0)) {
      return Optional.empty();
    }
    double cell = Math.max(FINEST_MM, Math.sqrt(within.area() / MOST_CELLS));
    Grid grid = new Grid(within, cell);
    taken.forEach(grid::take);
    return grid.largestFree(leastMm).map(found -> widened(found, within, taken));
  }

  private static Box widened(Box found, Box within, List<Outline> taken) {
    Box box = found;
    Box border = within;
    List<List<Point>> rings = taken.stream().map(Outline::points).toList();
    // Four times the high x side, with everything turned a quarter in between.
    for (int side = 0; side < 4; side++) {
      box = new Box(box.minX(), box.minY(), limit(box, border, rings), box.maxY());
      box = turned(box);
      border = turned(border);
      rings = rings.stream().map(ring -> ring.stream().map(Point::left).toList()).toList();
    }
    return box;
  }

  private static Box turned(Box box) {
    return new Box(-box.maxY(), box.minX(), -box.minY(), box.maxX());
  }

  /** How far the box can reach along x before it meets an outline or the border. */
  private static double limit(Box box, Box border, List<List<Point>> rings) {
    double limit = border.maxX();
    for (List<Point> ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        limit = Math.min(limit, met(box, ring.get(i), ring.get((i + 1) % ring.size())));
      }
    }
    return Math.max(box.maxX(), limit);
  }

  /** Where a box that is drawn out along x meets a stretch of an outline; infinite if nowhere. */
  private static double met(Box box, Point a, Point b) {
    double low = Math.max(box.minY(), Math.min(a.y(), b.y()));
    double high = Math.min(box.maxY(), Math.max(a.y(), b.y()));
    // Stretches that only run along a side, or end on it, are not in the way.
    if (high - low <= Grid.HAIR_MM) {
      return Double.POSITIVE_INFINITY;
    }
    double x = Math.min(at(low, a, b), at(high, a, b));
    return x < box.centre().x() ? Double.POSITIVE_INFINITY : x;
  }

  /** Where the line through two points is at {@code y}. */
  static double at(double y, Point a, Point b) {
    return a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y());
  }
}
