package ellwand.nest.kernel;

/**
 * A search for ever shorter layouts: shorten, part what overlaps, and when that fails try from
 * elsewhere. It can be left and gone on with.
 */
final class Seeking {

  /** Share of the budget after which the best is only tightened; ours. */
  static final double SOUGHT = 0.85;

  /**
   * Share of the length that is taken away at first, and at least; measured, 0.002 is no better.
   */
  private static final double FIRST_STEP = 0.02;

  private static final double LEAST_STEP = 0.001;

  /** Fruitless rounds and sweeps after which a parting fails; Gardeyn et al. 2025. */
  private static final int FAILURES = 3;

  private static final int PATIENCE = 200;

  /**
   * A parting that stays above so many times the least total is given up; measured, 2.5 is no
   * better.
   */
  private static final double HOPELESS = 6;

  /** Restarts before the best is tightened again; most end early in the race. */
  private static final int RESTARTS = 60;

  /** How much of what was taken away is given back, one try after the other; ours. */
  private static final double[] REOPENED = {0.3, 0.6, 0.85};

  private final Plan plan;
  private final Arrangement arrangement;
  private final ThreadBudget budget;
  private final Dice dice;
  private final Parting parting;
  private final Tightening tightening;
  private final Pool pool = new Pool();
  private final Race race = new Race();
  private double step = FIRST_STEP;
  private Weights.Growth growth = Weights.Growth.GENTLE;

  /** The shortest that it has come to when it was left. */
  private Snapshot best;

  /** Share of the budget after which it is left. */
  private double until;

  /** Length of the best that was tightened last. */
  private double tightened;

  /** Length of the best when the pool was begun. */
  private double poolFor;

  /**
   * @param arrangement to work with; others may do so while this one is left
   * @param start legal
   */
  Seeking(Arrangement arrangement, ThreadBudget budget, Dice dice, Snapshot start) {
    best = start;
    this.plan = arrangement.plan;
    this.arrangement = arrangement;
    this.budget = budget;
    this.dice = dice;
    parting = new Parting(arrangement, budget, dice, true, SOUGHT);
    tightening = new Tightening(arrangement, budget, dice, parting);
  }

  /** Length of the shortest layout that it has come to. */
  double length() {
    return best.length;
  }

  /**
   * Searches on from its own best until so much of the budget is used or nothing shorter is
   * possible. What it has come to is then the budget's best.
   *
   * @param share at most {@link #SOUGHT}
   */
  void run(double share) {
    until = share;
    budget.best = best;
    arrangement.weights.grow(growth);
    while (!over() && !budget.atLeast(plan)) {
      double length = budget.best.length;
      if (length != poolFor) {
        pool.clear();
        poolFor = length;
      }
      double target = target(length * (1 - step));
      arrangement.take(budget.best);
      arrangement.resize(target, dice.between(0, length));
      if (step == LEAST_STEP) {
        growth = Weights.Growth.STEEP;
        arrangement.weights.grow(growth);
      }
      // At the least step the restarts are the better use of the effort.
      if (part(step > LEAST_STEP ? FAILURES : 1, Race.NONE)) {
        step = Math.min(FIRST_STEP, step * 1.25);
      } else {
        pool.add(parting.closest, parting.closestTotal);
        elsewhere(target);
      }
    }
    best = budget.best;
  }

  private boolean over() {
    return budget.share() >= until;
  }

  /** After a failed parting: with less taken away, or at the least step from other arrangements. */
  private void elsewhere(double target) {
    if (step == LEAST_STEP) {
      restart(target);
      tighten();
    } else if (!reopen(target)) {
      step = Math.max(LEAST_STEP, step / 2);
      pool.clear();
    }
  }

  /** Once for each layout: a second pass seldom finds more than the first. */
  private void tighten() {
    if (budget.best.length != tightened) {
      tightening.pass();
      tightened = budget.best.length;
    }
  }

  private double target(double wanted) {
    double most = plan.strip.maxLength();
    double bounded = budget.best.length > most ? Math.max(most, wanted) : wanted;
    return Math.max(plan.least, bounded);
  }

  private boolean part(int failures, Race against) {
    if (parting.run(failures, PATIENCE, HOPELESS * pool.least(), against)) {
      budget.found(arrangement.snapshot().trimmed(plan));
      return true;
    }
    return false;
  }

  /** Gives back a part of what was taken away. */
  private boolean reopen(double target) {
    Snapshot closest = pool.pick(dice);
    double from = budget.best.length;
    for (double part : REOPENED) {
      if (parting.over()) {
        return false;
      }
      double length = target + part * (from - target);
      arrangement.take(closest);
      arrangement.resize(length, dice.between(0, target));
      if (parting.run(1, PATIENCE / 3, Double.POSITIVE_INFINITY)) {
        budget.found(arrangement.snapshot().trimmed(plan));
        return true;
      }
    }
    return false;
  }

  /** Starts again from failed arrangements, each with two large copies exchanged. */
  private void restart(double target) {
    for (int i = 0; i < RESTARTS && !over() && target < budget.best.length; i++) {
      arrangement.take(pool.pick(dice));
      for (int swaps = 1 + dice.below(2); swaps > 0; swaps--) {
        swapLarge();
      }
      if (part(FAILURES, race)) {
        return;
      }
      if (!parting.lost) {
        pool.replace(parting.closest, parting.closestTotal);
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
