package ellwand.nest.kernel;

/** The few arrangements nearest to legal at one length. */
final class Pool {

  /** Ours. */
  private static final int SIZE = 10;

  private final Snapshot[] snapshots = new Snapshot[SIZE + 1];
  private final double[] totals = new double[SIZE + 1];
  private int count;

  void clear() {
    count = 0;
  }

  boolean empty() {
    return count == 0;
  }

  double least() {
    return count == 0 ? Double.POSITIVE_INFINITY : totals[0];
  }

  void add(Snapshot snapshot, double total) {
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
    return snapshots[(int) (u * u * count)];
  }
}
