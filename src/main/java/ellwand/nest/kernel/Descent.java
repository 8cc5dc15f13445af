package ellwand.nest.kernel;

/**
 * Brings one copy's pose to a nearby cheaper one. Depth is nearly linear close by, so the poses
 * worth trying are those where one or two of the worst overlaps just end.
 */
final class Descent {

  /** The costliest overlaps that are looked at; ours. */
  private static final int WORST = 4;

  /** Moves at the most, each to a cheaper pose; ours. */
  private static final int ROUNDS = 12;

  private final Arrangement arrangement;

  /** The pose reached and its cost. */
  double x;

  double y;
  double cost;

  private int form;
  private int copy;
  private double bestX;
  private double bestY;
  private double bestCost;

  private int found;
  private final double[] dues = new double[WORST];
  private final double[] depths = new double[WORST];
  private final double[] ways = new double[2 * WORST];
  private final double[] way = new double[2];

  Descent(Arrangement arrangement) {
    this.arrangement = arrangement;
  }

  /** Starts from a pose of known cost; ends with x, y and cost set. */
  void run(int forCopy, int inForm, double fromX, double fromY, double fromCost) {
    copy = forCopy;
    form = inForm;
    x = fromX;
    y = fromY;
    cost = fromCost;
    for (int round = 0; round < ROUNDS && cost > 0; round++) {
      bestCost = cost;
      worst();
      double slack = arrangement.plan.tolerance / 2;
      for (int a = 0; a < found && bestCost > 0; a++) {
        double go = depths[a] - slack;
        double ax = ways[2 * a];
        double ay = ways[2 * a + 1];
        attempt(x + go * ax, y + go * ay);
        if (ax == 0 || ay == 0) {
          // The way out lies along an axis already.
          arrangement.passOver();
        } else {
          if (Math.abs(ax) > 0.05) {
            attempt(x + go / ax, y);
          }
          if (Math.abs(ay) > 0.05) {
            attempt(x, y + go / ay);
          }
        }
        for (int b = 0; b < a; b++) {
          double turn = ways[2 * b] * ay - ways[2 * b + 1] * ax;
          if (Math.abs(turn) > 0.02) {
            double other = depths[b] - slack;
            attempt(
                x + (other * ay - go * ways[2 * b + 1]) / turn,
                y + (go * ways[2 * b] - other * ax) / turn);
          }
        }
      }
      if (!(bestCost < cost * 0.9999)) {
        return;
      }
      x = bestX;
      y = bestY;
      cost = bestCost;
    }
  }

  private void attempt(double toX, double toY) {
    Kind kind = arrangement.kind(copy);
    double px = kind.x(form, toX, arrangement.length());
    double py = kind.y(form, toY);
    double c = arrangement.cost(copy, form, px, py, bestCost);
    if (c < bestCost) {
      bestCost = c;
      bestX = px;
      bestY = py;
    }
  }

  /** Collects the dearest overlaps at the present pose with their ways out. */
  private void worst() {
    found = 0;
    Arrangement a = arrangement;
    Neighbours near = a.neighbours;
    Plan plan = a.plan;
    int s = a.kind(copy).shape[form];
    double hx = plan.halfX[s];
    double hy = plan.halfY[s];
    int right = near.column(x + hx) * near.words;
    int left = near.column(x - hx) * near.words;
    int top = near.row(y + hy) * near.words;
    int bottom = near.row(y - hy) * near.words;
    for (int w = 0; w < near.words; w++) {
      long bits = near.near(w, left, right, bottom, top);
      if (copy >> 6 == w) {
        bits &= ~(1L << copy);
      }
      if (a.leftOut >> 6 == w) {
        bits &= ~(1L << a.leftOut);
      }
      while (bits != 0) {
        int k = (w << 6) + Long.numberOfTrailingZeros(bits);
        bits &= bits - 1;
        double dx = x - a.x[k];
        double dy = y - a.y[k];
        int t = a.shape[k];
        if (Math.abs(dx) < hx + plan.halfX[t] && Math.abs(dy) < hy + plan.halfY[t]) {
          double sign = plan.tables.sign(t, s);
          PairTable table = a.table(k, s);
          double d = table == null ? 0 : table.exit(sign * dx, sign * dy, way, 0);
          if (d > plan.tolerance) {
            keep(d * a.weights.now[copy * a.bodies + k], d, sign);
          }
        }
      }
    }
  }

  private void keep(double due, double d, double sign) {
    int at = found < WORST ? found++ : WORST;
    while (at > 0 && dues[at - 1] < due) {
      at--;
      if (at + 1 < WORST) {
        dues[at + 1] = dues[at];
        depths[at + 1] = depths[at];
        ways[2 * at + 2] = ways[2 * at];
        ways[2 * at + 3] = ways[2 * at + 1];
      }
    }
    if (at < WORST) {
      dues[at] = due;
      depths[at] = d;
      ways[2 * at] = sign * way[0];
      ways[2 * at + 1] = sign * way[1];
    }
  }
}
