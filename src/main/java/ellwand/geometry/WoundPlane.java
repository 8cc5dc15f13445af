package ellwand.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.algorithm.CGAlgorithmsDD;

/**
 * The plane as cut up by a closed line that is noded: which parts it winds about. Each edge is two
 * half-edges, 2e along and 2e + 1 against it; a half-edge's face is the part to its left.
 */
final class WoundPlane {

  /** Products of whole numbers are off by less than this share of their size. */
  private static final double SURE = 4e-16;

  private final double[] x;
  private final double[] y;
  private final int nodes;

  /** Start node of each half-edge. */
  private int[] start = new int[1024];

  /** How often the line runs along each edge, less how often against it. */
  private int[] runs = new int[512];

  private int edges;

  /** One more than the edge, by where the hash of its nodes leads; at least half are 0. */
  private int[] table = new int[2048];

  private int[] next;
  private int[] face;

  /** A half-edge of each face, and how often the line winds about it. */
  private int[] firsts = new int[256];

  private int faces;
  private int[] winding;

  /**
   * @param x of the nodes, whole numbers
   * @param y of the nodes
   * @param nodes how many there are
   */
  WoundPlane(double[] x, double[] y, int nodes) {
    this.x = x;
    this.y = y;
    this.nodes = nodes;
  }

  /** Adds one noded stretch of the line, from node to node. */
  void add(int a, int b, int times) {
    int from = Math.min(a, b);
    int to = Math.max(a, b);
    int at = slot(from, to);
    if (table[at] == 0) {
      if (edges == runs.length) {
        runs = Arrays.copyOf(runs, 2 * edges);
        start = Arrays.copyOf(start, 4 * edges);
        table = new int[2 * table.length];
        for (int e = 0; e < edges; e++) {
          table[slot(start[2 * e], start[2 * e + 1])] = e + 1;
        }
        at = slot(from, to);
      }
      start[2 * edges] = from;
      start[2 * edges + 1] = to;
      table[at] = ++edges;
    }
    runs[table[at] - 1] += a == from ? times : -times;
  }

  private int slot(int from, int to) {
    int mask = table.length - 1;
    int at = (int) ((from * 0x9E3779B97F4A7C15L + to * 0xC2B2AE3D27D4EB4FL) >>> 32) & mask;
    while (table[at] > 0 && (start[2 * table[at] - 2] != from || start[2 * table[at] - 1] != to)) {
      at = at + 1 & mask;
    }
    return at;
  }

  /**
   * Goes round all parts. False where that does not come out even, for the line is not noded then.
   */
  boolean wound() {
    link();
    return wind();
  }

  /** The borders of what the line winds about, those parts to their left: x0, y0, x1, y1, ... */
  List<double[]> borders() {
    List<double[]> borders = new ArrayList<>();
    boolean[] seen = new boolean[2 * edges];
    double[] ring = new double[256];
    for (int h = 0; h < 2 * edges; h++) {
      if (!seen[h] && border(h)) {
        int n = 0;
        int at = h;
        while (!seen[at]) {
          seen[at] = true;
          if (n == ring.length) {
            ring = Arrays.copyOf(ring, 2 * n);
          }
          ring[n++] = x[start[at]];
          ring[n++] = y[start[at]];
          at = next[at];
          while (!border(at)) {
            at = next[at ^ 1];
          }
        }
        borders.add(Arrays.copyOf(ring, n));
      }
    }
    return borders;
  }

  private boolean border(int h) {
    return winding[face[h]] > 0 && winding[face[h ^ 1]] <= 0;
  }

  /** Finds for each half-edge the one that follows it round its face. */
  private void link() {
    int[] ends = new int[nodes + 1];
    for (int h = 0; h < 2 * edges; h++) {
      ends[start[h] + 1]++;
    }
    for (int n = 0; n < nodes; n++) {
      ends[n + 1] += ends[n];
    }
    int[] order = new int[2 * edges];
    int[] used = new int[nodes];
    for (int h = 0; h < 2 * edges; h++) {
      int n = start[h];
      int place = ends[n] + used[n]++;
      for (; place > ends[n] && after(order[place - 1], h); place--) {
        order[place] = order[place - 1];
      }
      order[place] = h;
    }
    next = new int[2 * edges];
    for (int n = 0; n < nodes; n++) {
      for (int i = ends[n]; i < ends[n + 1]; i++) {
        next[order[i] ^ 1] = order[(i == ends[n] ? ends[n + 1] : i) - 1];
      }
    }
  }

  /** Whether one half-edge comes after another from the same node, counter-clockwise. */
  private boolean after(int g, int h) {
    int n = start[g];
    double gx = x[start[g ^ 1]] - x[n];
    double gy = y[start[g ^ 1]] - y[n];
    double hx = x[start[h ^ 1]] - x[n];
    double hy = y[start[h ^ 1]] - y[n];
    int half = Integer.compare(half(gx, gy), half(hx, hy));
    if (half != 0) {
      return half > 0;
    }
    double left = gx * hy;
    double right = gy * hx;
    double side = left - right;
    return Math.abs(side) > SURE * (Math.abs(left) + Math.abs(right))
        ? side < 0
        : CGAlgorithmsDD.signOfDet2x2(gx, gy, hx, hy) < 0;
  }

  private static int half(double dx, double dy) {
    return dy > 0 || dy == 0 && dx > 0 ? 0 : 1;
  }

  /** Numbers the faces and carries the winding number from the outermost to all others. */
  private boolean wind() {
    face = new int[2 * edges];
    Arrays.fill(face, -1);
    double least = Double.POSITIVE_INFINITY;
    int outermost = 0;
    for (int h = 0; h < face.length; h++) {
      if (face[h] < 0) {
        double area = number(h);
        if (area < least) {
          least = area;
          outermost = faces;
        }
        if (faces == firsts.length) {
          firsts = Arrays.copyOf(firsts, 2 * faces);
        }
        firsts[faces++] = h;
      }
    }
    winding = new int[faces];
    boolean[] known = new boolean[faces];
    int[] waiting = new int[faces + 1];
    int count = 0;
    known[outermost] = true;
    waiting[count++] = outermost;
    for (int i = 0; i < count; i++) {
      int f = waiting[i];
      int h = firsts[f];
      do {
        int across = face[h ^ 1];
        int there = winding[f] + ((h & 1) == 0 ? -runs[h >> 1] : runs[h >> 1]);
        if (!known[across]) {
          known[across] = true;
          winding[across] = there;
          waiting[count++] = across;
        } else if (winding[across] != there) {
          return false;
        }
        h = next[h];
      } while (h != firsts[f]);
    }
    return true;
  }

  /** Numbers one face; its area, negative when the half-edges run round it from outside. */
  private double number(int first) {
    double fromX = x[start[first]];
    double fromY = y[start[first]];
    double twice = 0;
    int h = first;
    do {
      face[h] = faces;
      int a = start[h];
      int b = start[h ^ 1];
      twice += (x[a] - fromX) * (y[b] - fromY) - (y[a] - fromY) * (x[b] - fromX);
      h = next[h];
    } while (h != first);
    return twice;
  }
}
