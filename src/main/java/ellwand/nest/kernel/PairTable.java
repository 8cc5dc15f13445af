package ellwand.nest.kernel;

import java.util.List;

/**
 * How deep one shape lies in another, by the place of the second seen from the first.
 *
 * <p>A grid lies over the no-fit polygon; each cell names the edges of which one is the nearest to
 * any place in it. A query walks those one or two edges and allocates nothing.
 */
final class PairTable {

  /** Doubles kept for an edge: x, y, unit direction x and y, length, bend at start, bend at end. */
  static final int EDGE = 8;

  /** A cell that lies outside the no-fit polygon. */
  static final int OUTSIDE = -1;

  private final double minX;
  private final double minY;
  private final double perX;
  private final double perY;
  private final int side;

  /** An edge's offset, or {@link #OUTSIDE}, or -2 - s with the cell's edges at s in the list. */
  private final int[] cells;

  /** For each crowded cell the number of edges, then their offsets. */
  private final int[] lists;

  private final double[] edges;

  PairTable(double[] box, int side, int[] cells, int[] lists, double[] edges) {
    this.minX = box[0];
    this.minY = box[1];
    this.perX = side / (box[2] - box[0]);
    this.perY = side / (box[3] - box[1]);
    this.side = side;
    this.cells = cells;
    this.lists = lists;
    this.edges = edges;
  }

  /** Of a box as the no-fit polygon: the nearest sides of a quarter are the two at its corner. */
  static PairTable ofBox(double x0, double y0, double x1, double y1) {
    int bottom = 0;
    int right = EDGE;
    int top = 2 * EDGE;
    int left = 3 * EDGE;
    return new PairTable(
        new double[] {x0, y0, x1, y1},
        2,
        new int[] {-2, -5, -8, -11},
        new int[] {2, bottom, left, 2, bottom, right, 2, top, left, 2, top, right},
        Edges.of(List.of(Rings.box(x0, y0, x1, y1))));
  }

  /** What it takes of memory, without what every object does. */
  long bytes() {
    return (cells.length + (long) lists.length) * Integer.BYTES
        + (long) edges.length * Double.BYTES;
  }

  /** The border's edges, {@link #EDGE} doubles each; not to be changed. */
  double[] edges() {
    return edges;
  }

  private int cell(double x, double y) {
    double fx = (x - minX) * perX;
    double fy = (y - minY) * perY;
    if (!(fx >= 0 && fy >= 0 && fx < side && fy < side)) {
      return OUTSIDE;
    }
    return cells[(int) fy * side + (int) fx];
  }

  /** The shortest shift that ends the overlap, 0 when there is none. */
  double depth(double x, double y) {
    int cell = cell(x, y);
    if (cell == OUTSIDE) {
      return 0;
    }
    double[] e = edges;
    if (cell >= 0) {
      return Edges.depth(e, cell, x, y);
    }
    int at = -2 - cell;
    double best = Double.POSITIVE_INFINITY;
    boolean inside = false;
    for (int end = at + lists[at]; at < end; ) {
      int o = lists[++at];
      double rx = x - e[o];
      double ry = y - e[o + 1];
      double along = rx * e[o + 2] + ry * e[o + 3];
      double off = e[o + 2] * ry - e[o + 3] * rx;
      double square;
      boolean in;
      if (along <= 0) {
        square = rx * rx + ry * ry;
        in = Edges.inside(e[o + 5], off);
      } else if (along >= e[o + 4]) {
        rx -= e[o + 4] * e[o + 2];
        ry -= e[o + 4] * e[o + 3];
        square = rx * rx + ry * ry;
        in = Edges.inside(e[o + 6], off);
      } else {
        square = off * off;
        in = off > 0;
      }
      if (square < best) {
        best = square;
        inside = in;
      }
    }
    return inside ? Math.sqrt(best) : 0;
  }

  /**
   * The depth, and the unit direction of the shortest way out.
   *
   * @param out gets the direction at {@code at} and {@code at + 1}; left alone outside
   */
  double exit(double x, double y, double[] out, int at) {
    int cell = cell(x, y);
    if (cell == OUTSIDE) {
      return 0;
    }
    int nearest = cell;
    if (cell < 0) {
      int list = -2 - cell;
      double best = Double.POSITIVE_INFINITY;
      for (int i = list + 1; i <= list + lists[list]; i++) {
        double square = Edges.square(edges, lists[i], x, y);
        if (square < best) {
          best = square;
          nearest = lists[i];
        }
      }
    }
    double depth = Edges.depth(edges, nearest, x, y);
    if (depth > 0) {
      Edges.direction(edges, nearest, x, y, depth, out, at);
    }
    return depth;
  }
}
