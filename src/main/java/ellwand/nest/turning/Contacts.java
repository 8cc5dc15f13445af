package ellwand.nest.turning;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Which corners have to keep beyond which sides so that no two bodies overlap: for every two convex
 * parts that are near each other the side that parts them most widely.
 */
final class Contacts {

  /** Doubles kept for a contact: side's outward normal x and y, its offset, corner x and y. */
  static final int DOUBLES = 5;

  int count;

  /** The body that has the side, and the one that has the corner. */
  int[] sideOf = new int[256];

  int[] cornerOf = new int[256];

  /** Each in the frame of its body. */
  double[] values = new double[256 * DOUBLES];

  private double[][][] placed;
  private double[][][] boxes;
  private double[][] around;

  /**
   * Chooses anew.
   *
   * @param reach how far a corner may be from a side to count
   * @return the least distance found between two parts, below 0 where they overlap
   */
  double choose(Stance s, double reach) {
    count = 0;
    place(s);
    int n = s.x.length;
    int[] order =
        IntStream.range(0, n)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> around[i][0]))
            .mapToInt(i -> i)
            .toArray();
    double least = reach;
    for (int a = 0; a < n; a++) {
      int i = order[a];
      for (int b = a + 1; b < n && around[order[b]][0] < around[i][2] + reach; b++) {
        int k = order[b];
        if ((s.bodies.get(i).moves() || s.bodies.get(k).moves())
            && near(around[i], around[k], reach)) {
          least = Math.min(least, between(s, i, k, reach));
        }
      }
    }
    return least;
  }

  private void place(Stance s) {
    int n = s.x.length;
    placed = new double[n][][];
    boxes = new double[n][][];
    around = new double[n][];
    for (int i = 0; i < n; i++) {
      List<double[]> parts = s.bodies.get(i).parts();
      placed[i] = new double[parts.size()][];
      boxes[i] = new double[parts.size()][];
      around[i] = new double[] {1e300, 1e300, -1e300, -1e300};
      for (int p = 0; p < parts.size(); p++) {
        placed[i][p] = s.placed(i, parts.get(p));
        boxes[i][p] = box(placed[i][p]);
        for (int k = 0; k < 2; k++) {
          around[i][k] = Math.min(around[i][k], boxes[i][p][k]);
          around[i][k + 2] = Math.max(around[i][k + 2], boxes[i][p][k + 2]);
        }
      }
    }
  }

  private static double[] box(double[] ring) {
    double[] box = {1e300, 1e300, -1e300, -1e300};
    for (int i = 0; i < ring.length; i++) {
      box[i % 2] = Math.min(box[i % 2], ring[i]);
      box[i % 2 + 2] = Math.max(box[i % 2 + 2], ring[i]);
    }
    return box;
  }

  private static boolean near(double[] a, double[] b, double reach) {
    return a[0] < b[2] + reach && b[0] < a[2] + reach && a[1] < b[3] + reach && b[1] < a[3] + reach;
  }

  private double between(Stance s, int i, int k, double reach) {
    double least = reach;
    for (int p = 0; p < placed[i].length; p++) {
      if (!near(boxes[i][p], around[k], reach)) {
        continue;
      }
      for (int q = 0; q < placed[k].length; q++) {
        if (near(boxes[i][p], boxes[k][q], reach)) {
          least = Math.min(least, part(s, i, p, k, q, reach));
        }
      }
    }
    return least;
  }

  /** How far apart two parts are by the side that parts them most, which is kept. */
  private double part(Stance s, int i, int p, int k, int q, double reach) {
    double widest = Double.NEGATIVE_INFINITY;
    int side = 0;
    boolean second = false;
    for (int turn = 0; turn < 2; turn++) {
      double[] a = turn == 0 ? placed[i][p] : placed[k][q];
      double[] b = turn == 0 ? placed[k][q] : placed[i][p];
      for (int e = 0; e < a.length; e += 2) {
        double wide = beyond(a, e, b, widest);
        if (wide > widest) {
          widest = wide;
          side = e;
          second = turn == 1;
        }
      }
    }
    if (widest < reach) {
      if (second) {
        keep(s, k, q, side, i, p, reach);
      } else {
        keep(s, i, p, side, k, q, reach);
      }
    }
    return widest;
  }

  /** The least distance of the corners of b beyond a side of a; anything once below the bound. */
  private static double beyond(double[] a, int e, double[] b, double bound) {
    int f = (e + 2) % a.length;
    double dx = a[f] - a[e];
    double dy = a[f + 1] - a[e + 1];
    double length = Math.hypot(dx, dy);
    double nx = dy / length;
    double ny = -dx / length;
    double off = nx * a[e] + ny * a[e + 1];
    double least = Double.POSITIVE_INFINITY;
    for (int c = 0; c < b.length && least > bound; c += 2) {
      least = Math.min(least, nx * b[c] + ny * b[c + 1] - off);
    }
    return least;
  }

  private void keep(Stance s, int still, int p, int e, int moving, int q, double reach) {
    double[] side = s.bodies.get(still).parts().get(p);
    double[] corners = s.bodies.get(moving).parts().get(q);
    int f = (e + 2) % side.length;
    double dx = side[f] - side[e];
    double dy = side[f + 1] - side[e + 1];
    double length = Math.hypot(dx, dy);
    double nx = dy / length;
    double ny = -dx / length;
    double off = nx * side[e] + ny * side[e + 1];
    // The normal in place, for the distances of the corners in place.
    double wx = s.cos[still] * nx - s.sin[still] * ny;
    double wy = s.sin[still] * nx + s.cos[still] * ny;
    double[] at = placed[moving][q];
    for (int c = 0; c < corners.length; c += 2) {
      double away = wx * (at[c] - s.x[still]) + wy * (at[c + 1] - s.y[still]) - off;
      if (away < reach) {
        if (count == sideOf.length) {
          sideOf = Arrays.copyOf(sideOf, 2 * count);
          cornerOf = Arrays.copyOf(cornerOf, 2 * count);
          values = Arrays.copyOf(values, 2 * count * DOUBLES);
        }
        sideOf[count] = still;
        cornerOf[count] = moving;
        int v = count++ * DOUBLES;
        values[v] = nx;
        values[v + 1] = ny;
        values[v + 2] = off;
        values[v + 3] = corners[c];
        values[v + 4] = corners[c + 1];
      }
    }
  }
}
