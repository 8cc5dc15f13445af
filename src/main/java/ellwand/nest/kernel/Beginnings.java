package ellwand.nest.kernel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;

/**
 * A long search begins several times from the same layout. After each round the better half goes
 * on, for twice as long, until one is left: luck in the beginning decides how far a search comes
 * (successive halving; Jamieson and Talwalkar 2016).
 */
final class Beginnings {

  /** Share of the budget that is used when one is left; ours. */
  private static final double CHOSEN = 0.5;

  /** Each round halves what is left; ours. */
  private static final int MOST_ROUNDS = 4;

  /** The better of only two gains too little for what both take; ours. */
  private static final int FEWEST_ROUNDS = 2;

  /** What each takes in the first round at least, and that for each copy: steps; ours. */
  private static final double LEAST_STEPS = 20_000;

  private static final double STEPS_A_COPY = 500;

  /** Share of the budget after which the steps that a time comes to are told; ours. */
  private static final double PACE_KNOWN = 0.005;

  private final Plan plan;
  private final ThreadBudget budget;
  private final Supplier<Seeking> begun;

  /**
   * @param begun searches that have not begun, all from one layout
   */
  Beginnings(Plan plan, ThreadBudget budget, Supplier<Seeking> begun) {
    this.plan = plan;
    this.budget = budget;
    this.begun = begun;
  }

  /** Searches until one is left, which can go on; where little can be spent, that is the first. */
  Seeking farthest() {
    Seeking first = begun.get();
    first.run(PACE_KNOWN);
    return farthest(first, rounds(budget.stepsInAll(), plan.copies));
  }

  /** The same in so many rounds, unless nothing shorter is possible before they are over. */
  Seeking farthest(Seeking first, int rounds) {
    List<Seeking> going = new ArrayList<>(List.of(first));
    while (going.size() < 1 << rounds) {
      going.add(begun.get());
    }
    budget.apart(true);
    double from = budget.share();
    double round = (CHOSEN - from) / Math.max(1, rounds);
    for (double until = from; going.size() > 1; ) {
      double turn = round / going.size();
      for (Seeking seeking : going) {
        until += turn;
        if (!budget.atLeast(plan)) {
          seeking.run(until);
        }
      }
      going.sort(Comparator.comparingDouble(Seeking::length));
      going.subList(going.size() / 2, going.size()).clear();
    }
    budget.apart(false);
    return going.get(0);
  }

  /**
   * How often half of those that begin is left out; 0 if only one begins.
   *
   * @param steps of the whole budget
   */
  static int rounds(double steps, int copies) {
    double least = Math.max(LEAST_STEPS, copies * STEPS_A_COPY);
    for (int rounds = MOST_ROUNDS; rounds >= FEWEST_ROUNDS; rounds--) {
      if (CHOSEN * steps / rounds / (1 << rounds) >= least) {
        return rounds;
      }
    }
    return 0;
  }
}
