package ellwand.trial;

import java.util.List;
import java.util.SplittableRandom;

/** What is left to chance, the same for a number each time. */
final class Dice {

  private final SplittableRandom random;

  Dice(long number) {
    random = new SplittableRandom(number);
  }

  /** From 0 to below that. */
  int nextInt(int below) {
    return random.nextInt(below);
  }

  boolean chance(int oneIn) {
    return random.nextInt(oneIn) == 0;
  }

  /** To a thousandth of a mm, or round. */
  double between(double low, double high) {
    double mm = low + (high - low) * random.nextDouble();
    return chance(2) ? Math.rint(mm) : Math.rint(mm * 1000) / 1000;
  }

  double share(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  <T> T any(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }
}
