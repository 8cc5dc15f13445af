package ellwand.nest.kernel;

import java.util.Arrays;

/**
 * Where all bodies lie just now on a strip of a certain length, overlaps allowed, and how deep each
 * pair overlaps. Belongs to one thread.
 */
final class Arrangement {

  final Plan plan;
  final int bodies;
  final int copies;
  final double[] x;
  final double[] y;
  final int[] form;
  final int[] shape;

  /** Middle and half reach of each body's box: x, y, half x, half y. */
  private final double[] boxes;

  /** Depth of each pair's overlap, body by body, both halves kept. */
  final double[] depth;

  /** What a unit of depth costs just now. */
  final Weights weights;

  /** With how many others each body overlaps. */
  final int[] clashes;

  final Neighbours neighbours;

  /** A body that other poses are reckoned without; -1 for none. */
  int leftOut = -1;

  private final ThreadBudget budget;
  private double length;

  Arrangement(Plan plan, ThreadBudget budget) {
    this.plan = plan;
    this.budget = budget;
    bodies = plan.bodies;
    copies = plan.copies;
    x = new double[bodies];
    y = new double[bodies];
    form = new int[bodies];
    shape = new int[bodies];
    boxes = new double[4 * bodies];
    depth = new double[bodies * bodies];
    weights = new Weights(plan.base, bodies);
    clashes = new int[bodies];
    neighbours = new Neighbours(bodies);
    for (int i = copies; i < bodies; i++) {
      x[i] = plan.obstacleX[i - copies];
      y[i] = plan.obstacleY[i - copies];
      shape[i] = plan.kinds[plan.kind[i]].shape[0];
    }
  }

  double length() {
    return length;
  }

  Kind kind(int copy) {
    return plan.kinds[plan.kind[copy]];
  }

  /** Takes over places and length; every pair's depth is measured anew. */
  void take(Snapshot snapshot) {
    length = snapshot.length;
    for (int i = 0; i < copies; i++) {
      form[i] = snapshot.form[i];
      shape[i] = kind(i).shape[form[i]];
      x[i] = snapshot.x[i];
      y[i] = snapshot.y[i];
    }
    measure();
  }

  /** Changes the length; what lies beyond {@code cut} moves along, the rest stays if it can. */
  void resize(double newLength, double cut) {
    double by = newLength - length;
    length = newLength;
    for (int i = 0; i < copies; i++) {
      Kind k = kind(i);
      while (!k.fits(form[i], length)) {
        form[i] = (form[i] + 1) % k.forms;
      }
      shape[i] = k.shape[form[i]];
      x[i] = k.x(form[i], x[i] > cut ? x[i] + by : x[i], length);
      y[i] = k.y(form[i], y[i]);
    }
    measure();
  }

  /** Takes all copies off a strip of about the given length. */
  void clear(double roughLength) {
    length = roughLength;
    neighbours.begin(length, plan.lowY, plan.highY);
    for (int i = copies; i < bodies; i++) {
      box(i);
    }
  }

  /** Puts down a copy that was taken off, without measuring overlaps. */
  void put(int copy, int newForm, double newX, double newY) {
    form[copy] = newForm;
    shape[copy] = kind(copy).shape[newForm];
    x[copy] = newX;
    y[copy] = newY;
    box(copy);
  }

  private void box(int body) {
    double hx = plan.halfX[shape[body]];
    double hy = plan.halfY[shape[body]];
    boxes[4 * body] = x[body];
    boxes[4 * body + 1] = y[body];
    boxes[4 * body + 2] = hx;
    boxes[4 * body + 3] = hy;
    neighbours.put(body, x[body], y[body], hx, hy);
  }

  private void measure() {
    neighbours.begin(length, plan.lowY, plan.highY);
    for (int i = 0; i < bodies; i++) {
      box(i);
    }
    Arrays.fill(depth, 0);
    Arrays.fill(clashes, 0);
    for (int i = 0; i < copies; i++) {
      add(i);
    }
  }

  /** Puts a copy elsewhere and measures its overlaps. */
  void move(int copy, int newForm, double newX, double newY) {
    for (int k = 0; k < bodies; k++) {
      if (depth[copy * bodies + k] > 0) {
        depth[copy * bodies + k] = 0;
        depth[k * bodies + copy] = 0;
        clashes[k]--;
      }
    }
    clashes[copy] = 0;
    put(copy, newForm, newX, newY);
    add(copy);
  }

  private void add(int copy) {
    for (int k = 0; k < bodies; k++) {
      if (k != copy && depth[copy * bodies + k] == 0) {
        double d = depth(copy, k);
        if (d > plan.tolerance) {
          depth[copy * bodies + k] = d;
          depth[k * bodies + copy] = d;
          clashes[copy]++;
          clashes[k]++;
        }
      }
    }
  }

  private double depth(int copy, int other) {
    int s = shape[copy];
    int t = shape[other];
    double dx = x[copy] - x[other];
    double dy = y[copy] - y[other];
    if (Math.abs(dx) >= plan.halfX[s] + plan.halfX[t]
        || Math.abs(dy) >= plan.halfY[s] + plan.halfY[t]) {
      return 0;
    }
    PairTable table = plan.tables.table(t, s, budget);
    if (table == null) {
      // Nobody can tell any more whether they overlap.
      return plan.size[s];
    }
    double sign = plan.tables.sign(t, s);
    return table.depth(sign * dx, sign * dy);
  }

  /**
   * The table of a shape seen from a body; null where it isn't there and cannot be made in time.
   */
  PairTable table(int body, int moving) {
    return plan.tables.table(shape[body], moving, budget);
  }

  /** Counts a pose that is known as if it were evaluated, so that steps hold as much as ever. */
  void passOver() {
    budget.evaluations++;
  }

  /**
   * What the copy's overlaps would cost in another place; any value from {@code bound} up once it
   * is clear that the cost is not below that.
   */
  double cost(int copy, int inForm, double atX, double atY, double bound) {
    budget.evaluations++;
    int s = kind(copy).shape[inForm];
    double hx = plan.halfX[s];
    double hy = plan.halfY[s];
    int row = s * plan.shapes;
    PairTable[] tables = plan.tables.tables;
    double[] signs = plan.tables.signs;
    double[] boxes = this.boxes;
    double[] weight = weights.now;
    double sum = 0;
    int words = neighbours.words;
    int right = neighbours.column(atX + hx) * words;
    int left = neighbours.column(atX - hx) * words;
    int top = neighbours.row(atY + hy) * words;
    int bottom = neighbours.row(atY - hy) * words;
    for (int w = 0; w < words; w++) {
      long near = neighbours.near(w, left, right, bottom, top);
      if (copy >> 6 == w) {
        near &= ~(1L << copy);
      }
      if (leftOut >> 6 == w) {
        near &= ~(1L << leftOut);
      }
      while (near != 0) {
        int k = (w << 6) + Long.numberOfTrailingZeros(near);
        near &= near - 1;
        double dx = atX - boxes[4 * k];
        double dy = atY - boxes[4 * k + 1];
        if (Math.abs(dx) < hx + boxes[4 * k + 2] && Math.abs(dy) < hy + boxes[4 * k + 3]) {
          int pair = row + shape[k];
          PairTable table = tables[pair];
          if (table == null) {
            table = table(k, s);
            if (table == null) {
              return Double.POSITIVE_INFINITY;
            }
          }
          double d = table.depth(signs[pair] * dx, signs[pair] * dy);
          if (d > plan.tolerance) {
            sum += d * weight[copy * bodies + k];
            if (sum >= bound) {
              return sum;
            }
          }
        }
      }
    }
    return sum;
  }

  /** What the copy's overlaps cost where it lies. */
  double cost(int copy) {
    double sum = 0;
    for (int k = copy * bodies; k < (copy + 1) * bodies; k++) {
      sum += depth[k] * weights.now[k];
    }
    return sum;
  }

  /** What all overlaps of two copies cost where they lie. */
  double cost(int copy, int other) {
    int pair = copy * bodies + other;
    return cost(copy) + cost(other) - depth[pair] * weights.now[pair];
  }

  /** The copy that overlaps most with others that are not left out; -1 if none does. */
  int worst(boolean[] leftOut) {
    int worst = -1;
    double deepest = 0;
    for (int i = 0; i < copies; i++) {
      double deep = 0;
      for (int k = 0; k < bodies && clashes[i] > 0 && !leftOut[i]; k++) {
        deep += k < copies && leftOut[k] ? 0 : depth[i * bodies + k];
      }
      if (deep > deepest) {
        deepest = deep;
        worst = i;
      }
    }
    return worst;
  }

  /** All depths, scaled by the sizes of the pairs; 0 when the arrangement is legal. */
  double total() {
    double total = 0;
    for (int i = 0; i < copies; i++) {
      if (clashes[i] > 0) {
        for (int k = i + 1; k < bodies; k++) {
          total += depth[i * bodies + k] * plan.base[i * bodies + k];
        }
      }
    }
    return total;
  }

  Snapshot snapshot() {
    return new Snapshot(
        length, Arrays.copyOf(form, copies), Arrays.copyOf(x, copies), Arrays.copyOf(y, copies));
  }
}
