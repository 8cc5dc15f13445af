package ellwand.geometry;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Quadrant;

/**
 * The plane as cut up by a closed line that is noded: which parts it winds about. Each edge is two
 * half-edges, 2e along and 2e + 1 against it; a half-edge's face is the part to its left.
 */
final class WoundPlane {

  private final List<Coordinate> nodes = new ArrayList<>();
  private final Map<Coordinate, Integer> nodeOf = new HashMap<>();
  private final Map<Long, Integer> edgeOf = new HashMap<>();

  /** Start node of each half-edge. */
  private int[] start = new int[256];

  /** How often the line runs along each edge, less how often against it. */
  private int[] runs = new int[128];

  private int edges;
  private int[] next;
  private int[] face;
  private int[] winding;

  /** Adds one noded stretch of the line. */
  void add(Coordinate from, Coordinate to, int times) {
    int a = node(from);
    int b = node(to);
    if (a == b) {
      return;
    }
    long key = (long) Math.min(a, b) << 32 | Math.max(a, b);
    Integer known = edgeOf.get(key);
    int e = known == null ? edges++ : known;
    if (known == null) {
      edgeOf.put(key, e);
      if (e == runs.length) {
        runs = Arrays.copyOf(runs, 2 * e);
        start = Arrays.copyOf(start, 4 * e);
      }
      start[2 * e] = a;
      start[2 * e + 1] = b;
    }
    runs[e] += start[2 * e] == a ? times : -times;
  }

  private int node(Coordinate at) {
    Integer known = nodeOf.putIfAbsent(at, nodes.size());
    if (known == null) {
      nodes.add(at);
      return nodes.size() - 1;
    }
    return known;
  }

  /** The borders of what the line winds about, those parts to their left. */
  List<List<Coordinate>> borders() {
    link();
    wind();
    List<List<Coordinate>> borders = new ArrayList<>();
    boolean[] seen = new boolean[2 * edges];
    for (int h = 0; h < 2 * edges; h++) {
      if (!seen[h] && border(h)) {
        List<Coordinate> ring = new ArrayList<>();
        int at = h;
        while (!seen[at]) {
          seen[at] = true;
          ring.add(nodes.get(start[at]));
          at = next[at];
          while (!border(at)) {
            at = next[at ^ 1];
          }
        }
        borders.add(ring);
      }
    }
    return borders;
  }

  private boolean border(int h) {
    return winding[face[h]] > 0 && winding[face[h ^ 1]] <= 0;
  }

  /** Finds for each half-edge the one that follows it round its face. */
  private void link() {
    Integer[] order = new Integer[2 * edges];
    Arrays.setAll(order, h -> h);
    Arrays.sort(
        order, Comparator.<Integer>comparingInt(h -> start[h]).thenComparing(this::byDirection));
    next = new int[2 * edges];
    for (int first = 0; first < order.length; ) {
      int last = first;
      while (last + 1 < order.length && start[order[last + 1]] == start[order[first]]) {
        last++;
      }
      for (int i = first; i <= last; i++) {
        next[order[i] ^ 1] = order[i == first ? last : i - 1];
      }
      first = last + 1;
    }
  }

  private int byDirection(int g, int h) {
    Coordinate at = nodes.get(start[g]);
    Coordinate a = nodes.get(start[g ^ 1]);
    Coordinate b = nodes.get(start[h ^ 1]);
    int quarter = Integer.compare(Quadrant.quadrant(at, a), Quadrant.quadrant(at, b));
    return quarter != 0 ? quarter : -Orientation.index(at, a, b);
  }

  /** Numbers the faces and carries the winding number from the outermost to all others. */
  private void wind() {
    face = new int[2 * edges];
    Arrays.fill(face, -1);
    List<Integer> firsts = new ArrayList<>();
    double least = Double.POSITIVE_INFINITY;
    int outermost = 0;
    for (int h = 0; h < face.length; h++) {
      if (face[h] < 0) {
        double area = number(h, firsts.size());
        if (area < least) {
          least = area;
          outermost = firsts.size();
        }
        firsts.add(h);
      }
    }
    winding = new int[firsts.size()];
    boolean[] known = new boolean[winding.length];
    known[outermost] = true;
    Deque<Integer> waiting = new ArrayDeque<>(List.of(outermost));
    while (!waiting.isEmpty()) {
      int f = waiting.poll();
      int h = firsts.get(f);
      do {
        int across = face[h ^ 1];
        if (!known[across]) {
          known[across] = true;
          winding[across] = winding[f] + ((h & 1) == 0 ? -runs[h >> 1] : runs[h >> 1]);
          waiting.add(across);
        }
        h = next[h];
      } while (h != firsts.get(f));
    }
  }

  /** Numbers one face; its area, negative when the half-edges run round it from outside. */
  private double number(int first, int number) {
    Coordinate origin = nodes.get(start[first]);
    double twice = 0;
    int h = first;
    do {
      face[h] = number;
      Coordinate a = nodes.get(start[h]);
      Coordinate b = nodes.get(start[h ^ 1]);
      twice += (a.x - origin.x) * (b.y - origin.y) - (a.y - origin.y) * (b.x - origin.x);
      h = next[h];
    } while (h != first);
    return twice;
  }
}
