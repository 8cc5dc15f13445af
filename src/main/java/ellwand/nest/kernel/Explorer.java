package ellwand.nest.kernel;

/** One thread's search: shorten, separate, and when that fails try from elsewhere. */
final class Explorer {

  /** Share of the budget after which the best is only compressed. */
  private static final double EXPLORED = 0.85;

  private static final double FIRST_STEP = 0.02;
  private static final double LEAST_STEP = 0.001;
  private static final int STRIKES = 3;
  private static final int PATIENCE = 200;
  private static final double HOPELESS = 6;
  private static final int RESTARTS = 15;
  private static final double[] REOPENED = {0.3, 0.6, 0.85};

  private final Plan plan;
  private final Arrangement arrangement;
  private final Budget budget;
  private final Dice dice;
  private final Separation separation;
  private final Compression compression;
  private final Pool pool = new Pool();
  private double step = FIRST_STEP;

  /** Length of the best that was compressed last. */
  private double compressed;

  /** Length of the best when the pool was begun. */
  private double poolFor;

  Explorer(Arrangement arrangement, Budget budget, Dice dice) {
    this.plan = arrangement.plan;
    this.arrangement = arrangement;
    this.budget = budget;
    this.dice = dice;
    separation = new Separation(arrangement, budget, dice, true);
    compression = new Compression(arrangement, budget, dice, separation);
  }

  /** Searches until most of the budget is used or nothing shorter is possible. */
  void run() {
    while (budget.share() < EXPLORED && !budget.atLeast(plan)) {
      double length = budget.best.length;
      if (length != poolFor) {
        pool.clear();
        poolFor = length;
      }
      double target = target(length * (1 - step));
      arrangement.take(budget.best);
      arrangement.resize(target, dice.between(0, length));
      if (separate()) {
        step = Math.min(FIRST_STEP, step * 1.25);
      } else if (step == LEAST_STEP || !reopen(target)) {
        if (step > LEAST_STEP) {
          step = Math.max(LEAST_STEP, step / 2);
          pool.clear();
        } else {
          restart(target);
          compress();
        }
      }
    }
  }

  /** Once for each layout: a second pass seldom finds more than the first. */
  private void compress() {
    if (budget.best.length != compressed) {
      compression.pass(EXPLORED);
      compressed = budget.best.length;
    }
  }

  private double target(double wanted) {
    double most = plan.strip.maxLength();
    double bounded = budget.best.length > most ? Math.max(most, wanted) : wanted;
    return Math.max(plan.least, bounded);
  }

  private boolean separate() {
    if (separation.run(STRIKES, PATIENCE, HOPELESS * pool.least())) {
      budget.found(arrangement.snapshot().trimmed(plan));
      return true;
    }
    pool.add(separation.closest, separation.closestTotal);
    return false;
  }

  /** Gives back a part of what was taken away. */
  private boolean reopen(double target) {
    Snapshot closest = pool.pick(dice);
    double from = budget.best.length;
    for (double part : REOPENED) {
      if (budget.spent()) {
        return false;
      }
      double length = target + part * (from - target);
      arrangement.take(closest);
      arrangement.resize(length, dice.between(0, target));
      if (separation.run(1, PATIENCE / 3, Double.POSITIVE_INFINITY)) {
        budget.found(arrangement.snapshot().trimmed(plan));
        return true;
      }
    }
    return false;
  }

  /** Starts again from failed arrangements, each with two large copies exchanged. */
  private void restart(double target) {
    for (int i = 0; i < RESTARTS && !budget.spent() && target < budget.best.length; i++) {
      arrangement.take(pool.pick(dice));
      for (int swaps = 1 + dice.below(2); swaps > 0; swaps--) {
        swapLarge();
      }
      if (separate()) {
        return;
      }
    }
  }

  private void swapLarge() {
    int a = large();
    int b = large();
    for (int tries = 0; tries < 20 && plan.kind[a] == plan.kind[b]; tries++) {
      b = large();
    }
    double ax = arrangement.x[a];
    double ay = arrangement.y[a];
    put(a, arrangement.x[b], arrangement.y[b]);
    put(b, ax, ay);
  }

  /** The largest of a few copies drawn at random. */
  private int large() {
    int largest = dice.below(plan.copies);
    for (int i = 0; i < 2; i++) {
      int other = dice.below(plan.copies);
      if (plan.size[arrangement.shape[other]] > plan.size[arrangement.shape[largest]]) {
        largest = other;
      }
    }
    return largest;
  }

  private void put(int copy, double x, double y) {
    Kind kind = arrangement.kind(copy);
    int f = arrangement.form[copy];
    arrangement.move(copy, f, kind.x(f, x, arrangement.length()), kind.y(f, y));
  }
}
