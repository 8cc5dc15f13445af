package ellwand.nest.kernel;

import java.util.Arrays;

/**
 * Ends restarts early that do worse than those before them: at each of a few checks only the better
 * half goes on. Those that will succeed are nearly always in it, long before they do; measured, 64
 * sweeps after the start they are in the best fifth.
 */
final class Race {

  /** For what is not raced. */
  static final Race NONE = new Race(0);

  /** Sweeps before the first check; each further one comes after twice as many. */
  private static final int FIRST = 32;

  private static final int CHECKS = 3;

  /** How many of the latest totals are kept for each check. */
  private static final int KEPT = 48;

  /** Nothing is ended before so many have come as far. */
  private static final int FEWEST = 6;

  private final double[][] totals;
  private final int[] counts;
  private final double[] sorted = new double[KEPT];

  Race() {
    this(CHECKS);
  }

  private Race(int checks) {
    totals = new double[checks][KEPT];
    counts = new int[checks];
  }

  /**
   * Whether a parting should end.
   *
   * @param sweeps how many it has made
   * @param total the least that it has come down to
   */
  boolean lost(int sweeps, double total) {
    for (int check = 0; check < counts.length; check++) {
      if (sweeps == FIRST << check) {
        int known = Math.min(counts[check], KEPT);
        totals[check][counts[check]++ % KEPT] = total;
        System.arraycopy(totals[check], 0, sorted, 0, known);
        Arrays.sort(sorted, 0, known);
        return known >= FEWEST && total > sorted[known / 2];
      }
    }
    return false;
  }
}
