package ellwand.nest.kernel;

/**
 * Ends overlaps at a fixed length: sweeps over the overlapping copies, and after each sweep makes
 * the pairs that still overlap dearer (guided local search; Umetani et al. 2009).
 */
final class Separation {

  /** A fall of the total by less than this share doesn't count as progress. */
  private static final double PROGRESS = 0.98;

  private final Arrangement arrangement;
  private final Budget budget;
  private final Dice dice;
  private final Mover mover;
  private final int[] order;

  /** The arrangement of the least total, and that total, when a separation has failed. */
  Snapshot closest;

  double closestTotal;

  /**
   * @param anywhere whether copies may jump to any place, or only move nearby
   */
  Separation(Arrangement arrangement, Budget budget, Dice dice, boolean anywhere) {
    this.arrangement = arrangement;
    this.budget = budget;
    this.dice = dice;
    mover = new Mover(arrangement, dice, anywhere);
    order = new int[arrangement.copies];
  }

  /**
   * Whether the arrangement could be made legal.
   *
   * @param strikes how often to start again from the closest
   * @param patience sweeps without progress before a strike
   * @param hopeless total at which to give up when a strike falls
   */
  boolean run(int strikes, int patience, double hopeless) {
    arrangement.weights.calm();
    closest = arrangement.snapshot();
    closestTotal = arrangement.total();
    if (closestTotal == 0) {
      return true;
    }
    int fallen = 0;
    while (fallen < strikes) {
      double before = closestTotal;
      double mark = closestTotal;
      int idle = 0;
      while (idle < patience) {
        sweep();
        if (budget.spent()) {
          return arrangement.total() == 0;
        }
        double total = arrangement.total();
        if (total == 0) {
          return true;
        }
        idle++;
        if (total < closestTotal) {
          closestTotal = total;
          closest = arrangement.snapshot();
          if (total < mark * PROGRESS) {
            mark = total;
            idle = 0;
          }
        }
        arrangement.weights.shift(arrangement.depth, arrangement.clashes, arrangement.copies);
      }
      fallen = closestTotal < before * PROGRESS ? 0 : fallen + 1;
      if (closestTotal > hopeless) {
        return false;
      }
      if (fallen < strikes) {
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
