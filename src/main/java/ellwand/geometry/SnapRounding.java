package ellwand.geometry;

import java.util.Arrays;
import java.util.List;

/**
 * Cuts the stretches of a closed line where they cross, in whole numbers: every end and every
 * crossing is the middle of a hot square of size 1, and a stretch is bent to the middles of all hot
 * squares that it runs through. Then no two meet but at such middles (Hobby 1999, "Practical
 * segment intersection with finite precision output").
 */
final class SnapRounding {

  /** A difference of products that is less than this share of them needs what was rounded off. */
  private static final double ROUNDED = 1e-9;

  /** By so much hot squares are larger than 1, so that none is missed by what is rounded off. */
  private static final double CLOSELY = 1e-4;

  private final int count;
  private final double[] ax;
  private final double[] ay;
  private final double[] bx;
  private final double[] by;
  private final int[] times;
  private final Nodes nodes = new Nodes();

  /** Nodes along the stretch in hand, and how far along it each lies. */
  private int[] along = new int[64];

  private double[] far = new double[64];

  /**
   * @param stretches whose ends are whole numbers
   */
  private SnapRounding(List<Convolution.Stretch> stretches) {
    count = stretches.size();
    ax = new double[count];
    ay = new double[count];
    bx = new double[count];
    by = new double[count];
    times = new int[count];
    Convolution.Stretch[] sorted = stretches.toArray(Convolution.Stretch[]::new);
    Arrays.sort(sorted, (s, t) -> Double.compare(least(s), least(t)));
    for (int i = 0; i < count; i++) {
      Convolution.Stretch s = sorted[i];
      boolean rightward = s.fromX() <= s.toX();
      ax[i] = rightward ? s.fromX() : s.toX();
      ay[i] = rightward ? s.fromY() : s.toY();
      bx[i] = rightward ? s.toX() : s.fromX();
      by[i] = rightward ? s.toY() : s.fromY();
      times[i] = s.forward() == rightward ? 1 : -1;
    }
  }

  private static double least(Convolution.Stretch s) {
    return Math.min(s.fromX(), s.toX());
  }

  /** The plane as cut up by the stretches. */
  static WoundPlane plane(List<Convolution.Stretch> stretches) {
    SnapRounding rounding = new SnapRounding(stretches);
    rounding.findNodes();
    rounding.nodes.sort();
    WoundPlane plane = new WoundPlane(rounding.nodes.x, rounding.nodes.y, rounding.nodes.count);
    for (int i = 0; i < rounding.count; i++) {
      rounding.cut(i, plane);
    }
    return plane;
  }

  private void findNodes() {
    for (int i = 0; i < count; i++) {
      nodes.add(ax[i], ay[i]);
      nodes.add(bx[i], by[i]);
      double low = Math.min(ay[i], by[i]);
      double high = Math.max(ay[i], by[i]);
      // They are sorted by their left ends.
      for (int k = i + 1; k < count && ax[k] <= bx[i]; k++) {
        if (Math.min(ay[k], by[k]) <= high && Math.max(ay[k], by[k]) >= low) {
          cross(i, k);
        }
      }
    }
  }

  private void cross(int i, int k) {
    double ux = bx[i] - ax[i];
    double uy = by[i] - ay[i];
    double vx = bx[k] - ax[k];
    double vy = by[k] - ay[k];
    double a = side(ux, uy, ax[k] - ax[i], ay[k] - ay[i]);
    double b = side(ux, uy, bx[k] - ax[i], by[k] - ay[i]);
    if (!(a < 0 && b > 0 || a > 0 && b < 0)) {
      return;
    }
    double c = side(vx, vy, ax[i] - ax[k], ay[i] - ay[k]);
    double d = side(vx, vy, bx[i] - ax[k], by[i] - ay[k]);
    if (c < 0 && d > 0 || c > 0 && d < 0) {
      double share = a / (a - b);
      nodes.add(Math.rint(ax[k] + share * vx), Math.rint(ay[k] + share * vy));
    }
  }

  /** Positive to the left of the direction, 0 on its line. */
  private static double side(double ux, double uy, double x, double y) {
    double left = ux * y;
    double right = uy * x;
    double side = left - right;
    return Math.abs(side) > ROUNDED * (Math.abs(left) + Math.abs(right))
        ? side
        : side + (Math.fma(ux, y, -left) - Math.fma(uy, x, -right));
  }

  /** Bends the stretch to all nodes whose squares it runs through. */
  private void cut(int i, WoundPlane plane) {
    double ux = bx[i] - ax[i];
    double uy = by[i] - ay[i];
    double half = (Math.abs(ux) + Math.abs(uy)) / 2 * (1 + CLOSELY);
    double low = Math.min(ay[i], by[i]) - 0.5;
    double high = Math.max(ay[i], by[i]) + 0.5;
    int found = 0;
    for (int n = nodes.firstFrom(ax[i] - 0.5); n < nodes.count && nodes.x[n] <= bx[i] + 0.5; n++) {
      double y = nodes.y[n];
      if (y < low || y > high) {
        continue;
      }
      double rx = nodes.x[n] - ax[i];
      double ry = y - ay[i];
      if (Math.abs(ux * ry - uy * rx) <= half) {
        if (found == along.length) {
          along = Arrays.copyOf(along, 2 * found);
          far = Arrays.copyOf(far, 2 * found);
        }
        double at = ux * rx + uy * ry;
        int place = found++;
        for (; place > 0 && far[place - 1] > at; place--) {
          far[place] = far[place - 1];
          along[place] = along[place - 1];
        }
        far[place] = at;
        along[place] = n;
      }
    }
    for (int n = 1; n < found; n++) {
      plane.add(along[n - 1], along[n], times[i]);
    }
  }

  /** Places in whole numbers, each once. */
  private static final class Nodes {

    /** Bits of a sorting key that say which node it is. */
    private static final int WHICH = 27;

    private double[] x = new double[512];
    private double[] y = new double[512];
    private int count;

    /** One more than the node, by where its hash leads; at least half are 0. */
    private int[] table = new int[2048];

    void add(double atX, double atY) {
      int at = slot(atX, atY);
      if (table[at] > 0) {
        return;
      }
      if (count == x.length) {
        x = Arrays.copyOf(x, 2 * count);
        y = Arrays.copyOf(y, 2 * count);
        table = new int[2 * table.length];
        for (int i = 0; i < count; i++) {
          table[slot(x[i], y[i])] = i + 1;
        }
        at = slot(atX, atY);
      }
      x[count] = atX;
      y[count++] = atY;
      table[at] = count;
    }

    private int slot(double atX, double atY) {
      long mixed = (long) atX * 0x9E3779B97F4A7C15L + (long) atY * 0xC2B2AE3D27D4EB4FL;
      int mask = table.length - 1;
      int at = (int) (mixed >>> 32) & mask;
      while (table[at] > 0 && (x[table[at] - 1] != atX || y[table[at] - 1] != atY)) {
        at = at + 1 & mask;
      }
      return at;
    }

    /** Sorts them from left to right; none may be added any more. */
    void sort() {
      long[] keys = new long[count];
      for (int i = 0; i < count; i++) {
        keys[i] = (long) x[i] << WHICH | i;
      }
      Arrays.sort(keys);
      double[] sortedX = new double[count];
      double[] sortedY = new double[count];
      for (int i = 0; i < count; i++) {
        int from = (int) (keys[i] & (1 << WHICH) - 1);
        sortedX[i] = x[from];
        sortedY[i] = y[from];
      }
      x = sortedX;
      y = sortedY;
    }

    /** The first node that lies there or farther right. */
    int firstFrom(double least) {
      int low = 0;
      int high = count;
      while (low < high) {
        int middle = low + high >>> 1;
        if (x[middle] < least) {
          low = middle + 1;
        } else {
          high = middle;
        }
      }
      return low;
    }
  }
}
