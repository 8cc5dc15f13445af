package ellwand.nest.kernel;

/**
 * Seeks a cheaper pose for one copy: random poses, poses near its own, the best brought down; where
 * there is none, one in exchange for another copy's.
 */
final class Mover {

  /** Poses tried anywhere and near its own; measured, 10 and 6 are no better. */
  private static final int ANYWHERE = 24;

  private static final int NEARBY = 12;

  /** The best poses that are brought down; ours. */
  private static final int REFINED = 3;

  /** Refined poses are at least so far apart, as a share of the copy's size. */
  private static final double APART = 0.02;

  private final Arrangement arrangement;
  private final Dice dice;
  private final int jumps;
  private final Descent descent;
  private final Exchange exchange;

  private int kept;
  private double apart;
  private final int[] forms = new int[REFINED];
  private final double[] xs = new double[REFINED];
  private final double[] ys = new double[REFINED];
  private final double[] costs = new double[REFINED];

  Mover(Arrangement arrangement, Dice dice, boolean anywhere) {
    jumps = anywhere ? ANYWHERE : 0;
    this.arrangement = arrangement;
    this.dice = dice;
    descent = new Descent(arrangement);
    exchange = new Exchange(arrangement, dice, descent);
  }

  /** Moves the copy if a cheaper pose is found, or two where together they cost less then. */
  void improve(int copy) {
    Arrangement a = arrangement;
    Kind kind = a.kind(copy);
    kept = 0;
    double now = a.cost(copy);
    double length = a.length();
    keep(a.form[copy], a.x[copy], a.y[copy], now);
    for (int i = 0; i < jumps; i++) {
      int f = kind.forms == 1 ? 0 : dice.below(kind.forms);
      double x = kind.x(f, dice.between(kind.lowX[f], length - kind.reach[f]), length);
      double y = kind.y(f, dice.between(kind.lowY[f], kind.highY[f]));
      sample(copy, kind, f, x, y);
    }
    int s = a.shape[copy];
    apart = APART * a.plan.size[s];
    for (int i = 0; i < NEARBY; i++) {
      int f = kind.forms == 1 || i % 3 > 0 ? a.form[copy] : dice.below(kind.forms);
      double x = kind.x(f, a.x[copy] + a.plan.halfX[s] * dice.between(-1, 1), length);
      double y = kind.y(f, a.y[copy] + a.plan.halfY[s] * dice.between(-1, 1));
      sample(copy, kind, f, x, y);
    }
    double best = now;
    int bestForm = 0;
    double bestX = 0;
    double bestY = 0;
    for (int i = 0; i < kept && best > 0; i++) {
      descent.run(copy, forms[i], xs[i], ys[i], costs[i]);
      if (descent.cost < best) {
        best = descent.cost;
        bestForm = forms[i];
        bestX = descent.x;
        bestY = descent.y;
      }
    }
    if (best < now) {
      a.move(copy, bestForm, bestX, bestY);
    } else if (jumps > 0) {
      exchange.attempt(copy);
    }
  }

  private void sample(int copy, Kind kind, int f, double x, double y) {
    if (!kind.fits(f, arrangement.length())) {
      return;
    }
    double bound = kept < REFINED ? Double.POSITIVE_INFINITY : costs[REFINED - 1];
    double cost = arrangement.cost(copy, f, x, y, bound);
    if (cost < bound && !nearAnother(f, x, y)) {
      keep(f, x, y, cost);
    }
  }

  /** Whether a kept pose lies so near that both would come down to the same place. */
  private boolean nearAnother(int f, double x, double y) {
    for (int i = 0; i < kept; i++) {
      if (forms[i] == f && Math.abs(xs[i] - x) + Math.abs(ys[i] - y) < apart) {
        return true;
      }
    }
    return false;
  }

  private void keep(int f, double x, double y, double cost) {
    int at = kept < REFINED ? kept++ : REFINED - 1;
    while (at > 0 && costs[at - 1] > cost) {
      at--;
      forms[at + 1] = forms[at];
      xs[at + 1] = xs[at];
      ys[at + 1] = ys[at];
      costs[at + 1] = costs[at];
    }
    forms[at] = f;
    xs[at] = x;
    ys[at] = y;
    costs[at] = cost;
  }
}
