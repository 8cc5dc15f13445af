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

  /** The convex parts of a body in their place, with the boxes round each and round all. */
  private static final class Cast {
    final List<double[]> parts;
    final double[][] placed;
    final double[][] boxes;
    final double[] around = {1e300, 1e300, -1e300, -1e300};

    Cast(Stance s, int body, List<double[]> parts) {
      this.parts = parts;
      placed = new double[parts.size()][];
      boxes = new double[parts.size()][];
      for (int p = 0; p < placed.length; p++) {
        placed[p] = s.placed(body, parts.get(p));
        boxes[p] = box(placed[p]);
        for (int k = 0; k < 2; k++) {
          around[k] = Math.min(around[k], boxes[p][k]);
          around[k + 2] = Math.max(around[k + 2], boxes[p][k + 2]);
        }
      }
    }
  }

  /**
   * Chooses anew.
   *
   * @param reach how far a corner may be from a side to count
   * @return the least distance found between two parts, below 0 where they overlap
   */
  double choose(Stance s, double reach) {
    count = 0;
    int n = s.x.length;
    Cast[] casts = new Cast[n];
    for (int i = 0; i < n; i++) {
      casts[i] = new Cast(s, i, s.bodies.get(i).parts());
    }
    int[] order =
        IntStream.range(0, n)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> casts[i].around[0]))
            .mapToInt(i -> i)
            .toArray();
    double least = reach;
    for (int a = 0; a < n; a++) {
      int i = order[a];
      for (int b = a + 1; b < n && casts[order[b]].around[0] < casts[i].around[2] + reach; b++) {
        int k = order[b];
        if (near(casts[i].around, casts[k].around, reach)) {
          least = Math.min(least, between(s, i, casts[i], k, casts[k], reach));
        }
      }
    }
    return least;
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

  private double between(Stance s, int i, Cast first, int k, Cast second, double reach) {
    Body one = s.bodies.get(i);
    Body other = s.bodies.get(k);
    if (one.fixed() && other.fixed()) {
      return reach;
    }
    Cast a = other.fixed() ? new Cast(s, i, one.bare()) : first;
    Cast b = one.fixed() ? new Cast(s, k, other.bare()) : second;
    double least = reach;
    for (int p = 0; p < a.placed.length; p++) {
      if (!near(a.boxes[p], b.around, reach)) {
        continue;
      }
      for (int q = 0; q < b.placed.length; q++) {
        if (near(a.boxes[p], b.boxes[q], reach)) {
          least = Math.min(least, part(s, i, a, p, k, b, q, reach));
        }
      }
    }
    return least;
  }

  /** How far apart two parts are by the side that parts them most, which is kept. */
  private double part(Stance s, int i, Cast a, int p, int k, Cast b, int q, double reach) {
    double widest = Double.NEGATIVE_INFINITY;
    int side = 0;
    boolean second = false;
    for (int turn = 0; turn < 2; turn++) {
      double[] of = turn == 0 ? a.placed[p] : b.placed[q];
      double[] to = turn == 0 ? b.placed[q] : a.placed[p];
      for (int e = 0; e < of.length; e += 2) {
        double wide = beyond(of, e, to, widest);
        if (wide > widest) {
          widest = wide;
          side = e;
          second = turn == 1;
        }
      }
    }
    if (widest < reach) {
      if (second) {
        keep(s, k, b.parts.get(q), side, i, a, p, reach);
      } else {
        keep(s, i, a.parts.get(p), side, k, b, q, reach);
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

  private void keep(
      Stance s, int still, double[] side, int e, int moving, Cast cast, int part, double reach) {
    double[] corners = cast.parts.get(part);
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
    double[] at = cast.placed[part];
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
