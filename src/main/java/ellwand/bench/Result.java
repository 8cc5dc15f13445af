package ellwand.bench;

import ellwand.work.Seed;
import java.util.List;

/**
 * What one trial gave.
 *
 * @param moves poses evaluated
 * @param trace seconds and density of each better layout
 */
record Result(
    Instance instance,
    Seed seed,
    int threads,
    double seconds,
    long moves,
    List<double[]> trace,
    List<PlacedItem> placed) {

  double usedLength() {
    return Judge.usedLength(placed);
  }

  /** Area of all items against the strip used, 0 to 1. */
  double density() {
    return instance.area() / (instance.width() * usedLength());
  }

  double firstLegalSeconds() {
    return trace.get(0)[0];
  }

  /** When the layout was within the given share of the final one's length. */
  double secondsToWithin(double share) {
    double enough = trace.get(trace.size() - 1)[1] / (1 + share);
    return trace.stream().filter(t -> t[1] >= enough).findFirst().orElseThrow()[0];
  }
}
