package ellwand.nest.kernel;

/**
 * Ends overlaps at a fixed length: sweeps over the overlapping copies, and after each sweep makes
 * the pairs that still overlap dearer (guided local search; Umetani et al. 2009).
 */
final class Parting {

  /** A total above this share of the last isn't progress; Gardeyn et al. 2025. */
  private static final double PROGRESS = 0.98;

  private final Arrangement arrangement;
  private final ThreadBudget budget;
  private final Dice dice;
  private final Mover mover;
  private final double until;
  private final int[] order;

  /** The arrangement of the least total, and that total, when a parting has failed. */
  Snapshot closest;

  double closestTotal;

  /** Whether the last parting ended because others had done better. */
  boolean lost;

  /**
   * @param anywhere whether copies may jump to any place, or only move nearby
   * @param until share of the budget after which nothing is parted any more, 0 to 1
   */
  Parting(Arrangement arrangement, ThreadBudget budget, Dice dice, boolean anywhere, double until) {
    this.arrangement = arrangement;
    this.budget = budget;
    this.dice = dice;
    this.until = until;
    mover = new Mover(arrangement, dice, anywhere);
    order = new int[arrangement.copies];
  }

  /** Whether its share of the budget is used. */
  boolean over() {
    return budget.share() >= until;
  }

  /**
   * Whether the arrangement could be made legal.
   *
   * @param failures rounds without progress that end it; each begins from the closest
   * @param patience sweeps without progress that end a round
   * @param hopeless total at which to give up when a round has ended
   */
  boolean run(int failures, int patience, double hopeless) {
    return run(failures, patience, hopeless, Race.NONE);
  }

  /**
   * The same against others.
   *
   * @param race ends it when it does worse than those before it
   */
  boolean run(int failures, int patience, double hopeless, Race race) {
    arrangement.weights.calm();
    lost = false;
    closest = arrangement.snapshot();
    closestTotal = arrangement.total();
    if (closestTotal == 0) {
      return true;
    }
    int failed = 0;
    int sweeps = 0;
    while (failed < failures) {
      double before = closestTotal;
      double mark = closestTotal;
      int idle = 0;
      while (idle < patience) {
        sweep();
        if (over()) {
          return arrangement.total() == 0;
        }
        double total = arrangement.total();
        if (total == 0) {
          return true;
        }
        idle++;
        sweeps++;
        if (total < closestTotal) {
          closestTotal = total;
          closest = arrangement.snapshot();
          if (total < mark * PROGRESS) {
            mark = total;
            idle = 0;
          }
        }
        lost = race.lost(sweeps, closestTotal);
        if (lost) {
          return false;
        }
        arrangement.weights.shift(arrangement.depth, arrangement.clashes, arrangement.copies);
      }
      failed = closestTotal < before * PROGRESS ? 0 : failed + 1;
      if (closestTotal > hopeless) {
        return false;
      }
      if (failed < failures) {
        arrangement.take(closest);
      }
    }
    return false;
  }

  private void sweep() {
    int count = 0;
    for (int i = 0; i < arrangement.copies; i++) {
      if (arrangement.clashes[i] > 0) {
        order[count++] = i;
      }
    }
    dice.shuffle(order, count);
    for (int i = 0; i < count && !budget.spent(); i++) {
      if (arrangement.clashes[order[i]] > 0) {
        mover.improve(order[i]);
      }
    }
  }
}
