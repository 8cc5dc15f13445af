package ellwand.nest.kernel;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * The first legal layout: copy by copy, large ones first, each to the place that ends furthest left
 * among those where it touches two others, or one and a border. When there is no time left the rest
 * goes behind all that lies there.
 */
final class OpeningLayout {

  private final Arrangement arrangement;
  private final Plan plan;
  private final int[] placed;
  private int count;
  private final boolean[] laid;

  /** The best place for the copy in hand. */
  private int form;

  private double x;
  private double y;
  private double end;

  OpeningLayout(Arrangement arrangement) {
    this.arrangement = arrangement;
    plan = arrangement.plan;
    placed = new int[plan.bodies];
    laid = new boolean[plan.copies];
    arrangement.clear(2 * plan.least);
    for (int i = plan.copies; i < plan.bodies; i++) {
      placed[count++] = i;
    }
  }

  /** Lays a copy where it is known to be free. */
  void put(int copy, int inForm, double atX, double atY) {
    arrangement.put(copy, inForm, atX, atY);
    placed[count++] = copy;
    laid[copy] = true;
  }

  /** Lays the rest of the copies; null if the search is to stop before that. */
  Snapshot lay(ThreadBudget budget) {
    int[] order =
        IntStream.range(0, plan.copies)
            .filter(i -> !laid[i])
            .boxed()
            .sorted(Comparator.comparingDouble(i -> -plan.size[arrangement.kind(i).shape[0]]))
            .mapToInt(i -> i)
            .toArray();
    for (int copy : order) {
      if (budget.stopped()) {
        return null;
      }
      if (budget.late()) {
        behindAll(arrangement.kind(copy));
      } else {
        place(copy);
      }
      put(copy, form, x, y);
    }
    return arrangement.snapshot().trimmed(plan);
  }

  private void place(int copy) {
    Kind kind = arrangement.kind(copy);
    behindAll(kind);
    for (int f = 0; f < kind.forms; f++) {
      double[] lines = lines(kind, f);
      for (double line : lines) {
        attempt(copy, kind, f, kind.lowX[f], line);
      }
      for (int i = count - 1; i >= 0; i--) {
        beside(copy, kind, f, placed[i], lines);
      }
    }
  }

  /** A place after everything laid so far, which is always free. */
  private void behindAll(Kind kind) {
    double after = 0;
    for (int i = 0; i < count; i++) {
      int k = placed[i];
      after = Math.max(after, arrangement.x[k] + plan.halfX[arrangement.shape[k]]);
    }
    form = 0;
    x = Math.max(kind.lowX[0], kind.alongX[0].atOrAbove(after + plan.halfX[kind.shape[0]]));
    y = kind.y(0, kind.lowY[0]);
    end = x + kind.reach[0];
  }

  /** Values of y at which places are sought: the window's borders, or all lines of a lattice. */
  private static double[] lines(Kind kind, int f) {
    double step = kind.alongY[f].step();
    if (step == 0) {
      return kind.lowY[f] == kind.highY[f]
          ? new double[] {kind.lowY[f]}
          : new double[] {kind.lowY[f], kind.highY[f]};
    }
    double first = kind.y(f, kind.lowY[f]);
    double last = kind.y(f, kind.highY[f]);
    double[] lines = new double[1 + (int) Math.round((last - first) / step)];
    Arrays.setAll(lines, i -> first + i * step);
    return lines;
  }

  /** Tries the corners of the no-fit polygon about a body, and where it crosses the lines. */
  private void beside(int copy, Kind kind, int f, int other, double[] lines) {
    double ox = arrangement.x[other];
    double oy = arrangement.y[other];
    int s = kind.shape[f];
    int t = arrangement.shape[other];
    if (ox - plan.halfX[t] - plan.halfX[s] + kind.reach[f] >= end) {
      return;
    }
    PairTable table = arrangement.table(other, s);
    if (table == null) {
      return;
    }
    double sign = plan.tables.sign(t, s);
    double[] edges = table.edges();
    boolean free = kind.alongY[f].step() == 0 && kind.highY[f] > kind.lowY[f];
    double wall = kind.lowX[f];
    for (int e = 0; e < edges.length; e += PairTable.EDGE) {
      double ax = ox + sign * edges[e];
      double ay = oy + sign * edges[e + 1];
      double dx = sign * edges[e + 2] * edges[e + 4];
      double dy = sign * edges[e + 3] * edges[e + 4];
      if (free && ax >= wall && ay >= kind.lowY[f] && ay <= kind.highY[f]) {
        attempt(copy, kind, f, ax, ay);
      }
      for (double line : lines) {
        if ((ay - line) * (ay + dy - line) <= 0 && dy != 0) {
          attempt(copy, kind, f, ax + dx * (line - ay) / dy, line);
        }
      }
      if (free && (ax - wall) * (ax + dx - wall) < 0) {
        attempt(copy, kind, f, wall, ay + dy * (wall - ax) / dx);
      }
    }
  }

  private void attempt(int copy, Kind kind, int f, double wantedX, double atY) {
    double px = kind.alongX[f].atOrAbove(wantedX);
    if (px + kind.reach[f] < end
        && px >= kind.lowX[f]
        && atY >= kind.lowY[f]
        && atY <= kind.highY[f]
        && arrangement.cost(copy, f, px, atY, Double.MIN_VALUE) == 0) {
      form = f;
      x = px;
      y = atY;
      end = px + kind.reach[f];
    }
  }
}
