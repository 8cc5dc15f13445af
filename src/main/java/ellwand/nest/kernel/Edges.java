package ellwand.nest.kernel;

import java.util.List;

/**
 * Arithmetic on edges in the flat form of {@link PairTable#EDGE}. A place whose nearest point is a
 * corner lies inside just when the border bends to the right there.
 */
final class Edges {

  /** Corners that bend less are straight: which side is nearer is a matter of rounding there. */
  private static final double STRAIGHT = 1e-7;

  private Edges() {}

  /**
   * Whether a place nearest to a corner lies inside.
   *
   * @param left how far it lies to the left of one of the corner's edges
   */
  static boolean inside(double bend, double left) {
    return bend < STRAIGHT && (bend < -STRAIGHT || left > 0);
  }

  static double[] of(List<double[]> rings) {
    double[] edges = new double[rings.stream().mapToInt(r -> r.length / 2).sum() * PairTable.EDGE];
    int o = 0;
    for (double[] r : rings) {
      int first = o;
      for (int i = 0; i < r.length; i += 2, o += PairTable.EDGE) {
        double dx = r[(i + 2) % r.length] - r[i];
        double dy = r[(i + 3) % r.length] - r[i + 1];
        double length = Math.hypot(dx, dy);
        edges[o] = r[i];
        edges[o + 1] = r[i + 1];
        edges[o + 2] = dx / length;
        edges[o + 3] = dy / length;
        edges[o + 4] = length;
      }
      for (int a = first; a < o; a += PairTable.EDGE) {
        int b = a + PairTable.EDGE < o ? a + PairTable.EDGE : first;
        double bend = edges[a + 2] * edges[b + 3] - edges[a + 3] * edges[b + 2];
        edges[a + 6] = bend;
        edges[b + 5] = bend;
      }
    }
    return edges;
  }

  /** Square of the distance to the edge. */
  static double square(double[] e, int o, double x, double y) {
    double rx = x - e[o];
    double ry = y - e[o + 1];
    double along = Math.max(0, Math.min(e[o + 4], rx * e[o + 2] + ry * e[o + 3]));
    rx -= along * e[o + 2];
    ry -= along * e[o + 3];
    return rx * rx + ry * ry;
  }

  /** Distance to the nearest edge's line, positive to its left. */
  static double left(double[] e, int o, double x, double y) {
    return e[o + 2] * (y - e[o + 1]) - e[o + 3] * (x - e[o]);
  }

  /** The depth when this is the nearest edge; 0 outside. */
  static double depth(double[] e, int o, double x, double y) {
    double rx = x - e[o];
    double ry = y - e[o + 1];
    double along = rx * e[o + 2] + ry * e[o + 3];
    double off = e[o + 2] * ry - e[o + 3] * rx;
    if (along <= 0) {
      return inside(e[o + 5], off) ? Math.sqrt(rx * rx + ry * ry) : 0;
    }
    if (along >= e[o + 4]) {
      rx -= e[o + 4] * e[o + 2];
      ry -= e[o + 4] * e[o + 3];
      return inside(e[o + 6], off) ? Math.sqrt(rx * rx + ry * ry) : 0;
    }
    return off > 0 ? off : 0;
  }

  /** Unit direction from a place inside to the nearest point of this edge. */
  static void direction(double[] e, int o, double x, double y, double depth, double[] out, int at) {
    double rx = x - e[o];
    double ry = y - e[o + 1];
    double along = rx * e[o + 2] + ry * e[o + 3];
    if (along > 0 && along < e[o + 4]) {
      out[at] = e[o + 3];
      out[at + 1] = -e[o + 2];
    } else {
      double end = along <= 0 ? 0 : e[o + 4];
      out[at] = (end * e[o + 2] - rx) / depth;
      out[at + 1] = (end * e[o + 3] - ry) / depth;
    }
  }

  /** Square of the least distance between the edge and an upright box; 0 when they meet. */
  static double squareToBox(double[] e, int o, double x0, double y0, double x1, double y1) {
    double ax = e[o];
    double ay = e[o + 1];
    double bx = ax + e[o + 2] * e[o + 4];
    double by = ay + e[o + 3] * e[o + 4];
    boolean beside =
        Math.max(ax, bx) < x0
            || Math.min(ax, bx) > x1
            || Math.max(ay, by) < y0
            || Math.min(ay, by) > y1;
    if (!beside) {
      double a = left(e, o, x0, y0);
      double b = left(e, o, x1, y0);
      double c = left(e, o, x1, y1);
      double d = left(e, o, x0, y1);
      boolean crosses =
          Math.min(Math.min(a, b), Math.min(c, d)) <= 0
              && Math.max(Math.max(a, b), Math.max(c, d)) >= 0;
      if (crosses) {
        return 0;
      }
    }
    double corners =
        Math.min(
            Math.min(square(e, o, x0, y0), square(e, o, x1, y0)),
            Math.min(square(e, o, x1, y1), square(e, o, x0, y1)));
    return Math.min(
        corners, Math.min(pointToBox(ax, ay, x0, y0, x1, y1), pointToBox(bx, by, x0, y0, x1, y1)));
  }

  private static double pointToBox(double x, double y, double x0, double y0, double x1, double y1) {
    double dx = Math.max(0, Math.max(x0 - x, x - x1));
    double dy = Math.max(0, Math.max(y0 - y, y - y1));
    return dx * dx + dy * dy;
  }
}
