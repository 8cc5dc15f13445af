package ellwand.nest.kernel;

/** Shortens the best layout by small steps that keep its order. */
final class Tightening {

  /** Share of the length that is taken away at first, and at last; ours. */
  private static final double FIRST = 0.001;

  private static final double LAST = 1e-5;

  /** What a step that fails becomes; ours. */
  private static final double SHRINK = 0.5;

  /** Fruitless rounds and sweeps after which a parting fails; ours. */
  private static final int FAILURES = 2;

  private static final int PATIENCE = 60;

  private final Arrangement arrangement;
  private final ThreadBudget budget;
  private final Dice dice;
  private final Parting parting;

  Tightening(Arrangement arrangement, ThreadBudget budget, Dice dice, Parting parting) {
    this.arrangement = arrangement;
    this.budget = budget;
    this.dice = dice;
    this.parting = parting;
  }

  /** One pass from large to small steps; ends when there is no more parting. */
  void pass() {
    Plan plan = arrangement.plan;
    // Nothing is evaluated where nothing overlaps, so that the budget alone would not end it.
    for (double part = FIRST; part > LAST && !parting.over() && !budget.atLeast(plan); ) {
      double length = budget.best.length;
      double target = Math.max(plan.least, length * (1 - part));
      arrangement.take(budget.best);
      arrangement.resize(target, dice.between(0, length));
      if (parting.run(FAILURES, PATIENCE, Double.POSITIVE_INFINITY)) {
        budget.found(arrangement.snapshot().trimmed(plan));
      }
      // What cannot move may end as far on as before, though nothing overlaps.
      if (budget.best.length > (length + target) / 2) {
        part *= SHRINK;
      }
    }
  }
}
