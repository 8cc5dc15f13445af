package ellwand.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which cells of a box are taken. */
final class Grid {

  /** Less than this is no reaching into a cell, mm. */
  static final double HAIR_MM = 1e-7;

  private final Box box;
  private final double dx;
  private final double dy;
  private final boolean[][] taken;

  Grid(Box box, double cell) {
    this.box = box;
    int columns = (int) Math.ceil(box.length() / cell);
    int rows = (int) Math.ceil(box.width() / cell);
    dx = box.length() / columns;
    dy = box.width() / rows;
    taken = new boolean[rows][columns];
  }

  void take(Outline outline) {
    List<Point> ring = outline.points();
    for (int i = 0; i < ring.size(); i++) {
      takeLine(ring.get(i), ring.get((i + 1) % ring.size()));
    }
    Box round = outline.box();
    int first = Math.max(0, (int) Math.floor((round.minY() - box.minY()) / dy) - 1);
    int last = Math.min(taken.length - 1, (int) Math.ceil((round.maxY() - box.minY()) / dy));
    for (int row = first; row <= last; row++) {
      takeInside(ring, row);
    }
  }

  /** Every cell that the line runs through. */
  private void takeLine(Point a, Point b) {
    double low = Math.min(a.y(), b.y());
    double high = Math.max(a.y(), b.y());
    int first = Math.max(0, (int) Math.floor((low - box.minY() + HAIR_MM) / dy));
    int last = Math.min(taken.length, (int) Math.ceil((high - box.minY() - HAIR_MM) / dy)) - 1;
    for (int row = first; row <= last; row++) {
      double from = Math.max(low, box.minY() + row * dy);
      double to = Math.min(high, box.minY() + (row + 1) * dy);
      boolean level = high - low <= HAIR_MM;
      double x1 = level ? a.x() : FreeRectangle.at(from, a, b);
      double x2 = level ? b.x() : FreeRectangle.at(to, a, b);
      int left = (int) Math.floor((Math.min(x1, x2) - box.minX() + HAIR_MM) / dx);
      int right = (int) Math.ceil((Math.max(x1, x2) - box.minX() - HAIR_MM) / dx);
      takeCells(row, left, right);
    }
  }

  /** Every cell of the row whose middle lies inside. */
  private void takeInside(List<Point> ring, int row) {
    double y = box.minY() + (row + 0.5) * dy;
    List<Double> crossings = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      Point a = ring.get(i);
      Point b = ring.get((i + 1) % ring.size());
      if ((a.y() <= y) != (b.y() <= y)) {
        crossings.add(FreeRectangle.at(y, a, b));
      }
    }
    crossings.sort(null);
    for (int i = 0; i + 1 < crossings.size(); i += 2) {
      takeCells(
          row,
          (int) Math.ceil((crossings.get(i) - box.minX()) / dx - 0.5),
          (int) Math.ceil((crossings.get(i + 1) - box.minX()) / dx - 0.5));
    }
  }

  private void takeCells(int row, int from, int to) {
    for (int column = Math.max(0, from); column < Math.min(to, taken[row].length); column++) {
      taken[row][column] = true;
    }
  }

  /**
   * Row by row, the largest rectangle below a skyline of free columns.
   *
   * @param leastMm neither shorter nor narrower than this, but for a cell
   */
  Optional<Box> largestFree(double leastMm) {
    int columns = taken[0].length;
    int[] free = new int[columns];
    Best best = new Best((int) (leastMm / dx), (int) (leastMm / dy));
    for (int row = 0; row < taken.length; row++) {
      for (int column = 0; column < columns; column++) {
        free[column] = taken[row][column] ? 0 : free[column] + 1;
      }
      best.look(free, row);
    }
    return best.area == 0 ? Optional.empty() : Optional.of(best.box());
  }

  private final class Best {
    private final int leastLong;
    private final int leastHigh;
    private int area;
    private int left;
    private int right;
    private int top;
    private int height;

    Best(int leastLong, int leastHigh) {
      this.leastLong = leastLong;
      this.leastHigh = leastHigh;
    }

    void look(int[] skyline, int row) {
      int[] starts = new int[skyline.length + 1];
      int[] heights = new int[skyline.length + 1];
      int depth = 0;
      for (int column = 0; column <= skyline.length; column++) {
        int now = column == skyline.length ? 0 : skyline[column];
        int start = column;
        while (depth > 0 && heights[depth - 1] >= now) {
          depth--;
          start = starts[depth];
          keep(start, column, row, heights[depth]);
        }
        starts[depth] = start;
        heights[depth++] = now;
      }
    }

    private void keep(int from, int to, int row, int high) {
      if ((to - from) * high > area && to - from >= leastLong && high >= leastHigh) {
        area = (to - from) * high;
        left = from;
        right = to;
        top = row + 1;
        height = high;
      }
    }

    Box box() {
      return new Box(
          box.minX() + left * dx,
          box.minY() + (top - height) * dy,
          box.minX() + right * dx,
          box.minY() + top * dy);
    }
  }
}
