package ellwand.nest.kernel;

/**
 * A few arrangements that are nearly legal at one length. What comes of one takes its place, and no
 * two are alike: kept for long, the nearest alone would all become one and the same.
 */
final class Pool {

  /** Ours. */
  private static final int SIZE = 10;

  /** Arrangements whose totals differ by a smaller share are taken for the same; ours. */
  private static final double ALIKE = 0.01;

  private final Snapshot[] snapshots = new Snapshot[SIZE + 1];
  private final double[] totals = new double[SIZE + 1];
  private int count;

  /** Where the one lies that was picked last. */
  private int picked;

  void clear() {
    count = 0;
  }

  double least() {
    return count == 0 ? Double.POSITIVE_INFINITY : totals[0];
  }

  /** Adds an arrangement, unless one like it is there or all are nearer to legal. */
  void add(Snapshot snapshot, double total) {
    if (!known(total, -1)) {
      put(snapshot, total);
    }
  }

  /** Puts what came of the one picked last in its place, unless another is like it. */
  void replace(Snapshot snapshot, double total) {
    if (!known(total, picked)) {
      count--;
      for (int i = picked; i < count; i++) {
        snapshots[i] = snapshots[i + 1];
        totals[i] = totals[i + 1];
      }
      put(snapshot, total);
    }
  }

  private boolean known(double total, int but) {
    for (int i = 0; i < count; i++) {
      if (i != but && Math.abs(totals[i] - total) < ALIKE * total) {
        return true;
      }
    }
    return false;
  }

  private void put(Snapshot snapshot, double total) {
    int at = count;
    while (at > 0 && totals[at - 1] > total) {
      snapshots[at] = snapshots[at - 1];
      totals[at] = totals[at - 1];
      at--;
    }
    snapshots[at] = snapshot;
    totals[at] = total;
    count = Math.min(SIZE, count + 1);
  }

  /** One of them, the nearer to legal the likelier. */
  Snapshot pick(Dice dice) {
    double u = dice.unit();
    picked = (int) (u * u * count);
    return snapshots[picked];
  }
}
