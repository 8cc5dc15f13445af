package ellwand.nest.kernel;

import java.util.Arrays;
import java.util.List;

/**
 * Lays the grid over a no-fit polygon: the box is quartered again and again, and each quarter keeps
 * those of its parent's edges that can still be the nearest to a place in it.
 */
final class PairTableBuilder {

  /** Boxes of up to so many cells a side are worth comparing edge with edge for. */
  private static final int FINE = 4;

  private final int side;
  private final double[] edges;
  private final double[] box;
  private final int[] cells;
  private int[] lists = new int[256];
  private int used;

  /** Corner distances of the edges under trial, four each. */
  private double[] near = new double[64];

  /** Whether a border runs through the box that was looked at last. */
  private boolean crossed;

  private PairTableBuilder(List<double[]> rings, int levels) {
    side = 1 << levels;
    edges = Edges.of(rings);
    cells = new int[side * side];
    Arrays.fill(cells, PairTable.OUTSIDE);
    box = new double[] {1e300, 1e300, -1e300, -1e300};
    for (double[] r : rings) {
      box[0] = Math.min(box[0], Rings.min(r, 0));
      box[1] = Math.min(box[1], Rings.min(r, 1));
      box[2] = Math.max(box[2], Rings.max(r, 0));
      box[3] = Math.max(box[3], Rings.max(r, 1));
    }
  }

  /** A table of 4 to the power {@code levels} cells. */
  static PairTable build(List<double[]> rings, int levels) {
    PairTableBuilder builder = new PairTableBuilder(rings, levels);
    int[] all = new int[builder.edges.length / PairTable.EDGE];
    for (int i = 0; i < all.length; i++) {
      all[i] = i * PairTable.EDGE;
    }
    builder.quarter(0, 0, builder.side, all, false);
    return new PairTable(
        builder.box,
        builder.side,
        builder.cells,
        Arrays.copyOf(builder.lists, builder.used),
        builder.edges);
  }

  /**
   * @param within no border runs through what this is a quarter of, and it lies inside
   */
  private void quarter(int column, int row, int span, int[] parents, boolean within) {
    double wx = (box[2] - box[0]) / side;
    double wy = (box[3] - box[1]) / side;
    double x0 = box[0] + column * wx;
    double y0 = box[1] + row * wy;
    double x1 = x0 + span * wx;
    double y1 = y0 + span * wy;
    int[] kept = nearest(parents, span <= FINE, within, x0, y0, x1, y1);
    if (kept.length == 0) {
      return;
    }
    if (span == 1) {
      cells[row * side + column] = kept.length == 1 ? kept[0] : list(kept);
      return;
    }
    boolean inside = within || !crossed;
    int half = span / 2;
    quarter(column, row, half, kept, inside);
    quarter(column + half, row, half, kept, inside);
    quarter(column, row + half, half, kept, inside);
    quarter(column + half, row + half, half, kept, inside);
  }

  private int list(int[] kept) {
    if (used + kept.length + 1 > lists.length) {
      lists = Arrays.copyOf(lists, 2 * lists.length + kept.length);
    }
    int at = used;
    lists[used++] = kept.length;
    for (int edge : kept) {
      lists[used++] = edge;
    }
    return -2 - at;
  }

  /**
   * The edges that can be nearest to a place of the box; none when all of it lies outside. Leaves
   * in {@link #crossed} whether a border runs through it.
   */
  private int[] nearest(
      int[] parents, boolean fine, boolean within, double x0, double y0, double x1, double y1) {
    int n = parents.length;
    if (near.length < 4 * n) {
      near = new double[8 * n];
    }
    double reach = Double.POSITIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      int o = parents[i];
      near[4 * i] = Edges.square(edges, o, x0, y0);
      near[4 * i + 1] = Edges.square(edges, o, x1, y0);
      near[4 * i + 2] = Edges.square(edges, o, x1, y1);
      near[4 * i + 3] = Edges.square(edges, o, x0, y1);
      double far =
          Math.max(
              Math.max(near[4 * i], near[4 * i + 1]), Math.max(near[4 * i + 2], near[4 * i + 3]));
      reach = Math.min(reach, far);
    }
    int[] kept = new int[n];
    int count = 0;
    crossed = false;
    for (int i = 0; i < n; i++) {
      double square = Edges.squareToBox(edges, parents[i], x0, y0, x1, y1);
      crossed |= square == 0;
      if (square <= reach * (1 + 1e-9)) {
        System.arraycopy(near, 4 * i, near, 4 * count, 4);
        kept[count++] = parents[i];
      }
    }
    if (!within && !crossed && outside(kept, count, (x0 + x1) / 2, (y0 + y1) / 2)) {
      return new int[0];
    }
    return fine && count > 1
        ? undominated(kept, count, x0, y0, x1, y1)
        : Arrays.copyOf(kept, count);
  }

  private boolean outside(int[] kept, int count, double x, double y) {
    int nearest = kept[0];
    double least = Edges.square(edges, nearest, x, y);
    for (int i = 1; i < count; i++) {
      double square = Edges.square(edges, kept[i], x, y);
      if (square < least) {
        nearest = kept[i];
        least = square;
      }
    }
    return Edges.depth(edges, nearest, x, y) == 0;
  }

  /**
   * Drops each edge whose line is everywhere farther than some other edge: the difference of a
   * distance (convex) and a line's (linear) is greatest at a corner of the box.
   */
  private int[] undominated(int[] kept, int count, double x0, double y0, double x1, double y1) {
    boolean[] dropped = new boolean[count];
    for (int i = 0; i < count; i++) {
      int o = kept[i];
      double a = Edges.left(edges, o, x0, y0);
      double b = a - (x1 - x0) * edges[o + 3];
      double d = a + (y1 - y0) * edges[o + 2];
      double c = b + d - a;
      if (a <= 0 || b <= 0 || c <= 0 || d <= 0) {
        continue;
      }
      for (int k = 0; k < count && !dropped[i]; k++) {
        dropped[i] =
            k != i
                && !dropped[k]
                && near[4 * k] <= a * a
                && near[4 * k + 1] <= b * b
                && near[4 * k + 2] <= c * c
                && near[4 * k + 3] <= d * d;
      }
    }
    int left = 0;
    for (int i = 0; i < count; i++) {
      if (!dropped[i]) {
        kept[left++] = kept[i];
      }
    }
    return Arrays.copyOf(kept, left);
  }
}
