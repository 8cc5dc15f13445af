package ellwand.nest.kernel;

import ellwand.work.Seed;
import java.util.SplittableRandom;

/** A small fast generator (xorshift128+, Vigna 2017); one for each thread. */
final class Dice {

  private long a;
  private long b;

  Dice(Seed seed) {
    SplittableRandom random = seed.generator();
    a = random.nextLong();
    b = random.nextLong() | 1;
  }

  private long next() {
    long x = a;
    long y = b;
    a = y;
    x ^= x << 23;
    b = x ^ y ^ (x >>> 18) ^ (y >>> 5);
    return b + y;
  }

  /** From 0 to below 1. */
  double unit() {
    return (next() >>> 11) * 0x1p-53;
  }

  double between(double lo, double hi) {
    return lo + (hi - lo) * unit();
  }

  /** From 0 to below the bound. */
  int below(int bound) {
    return (int) (((next() >>> 33) * bound) >>> 31);
  }

  /** Shuffles the first {@code count} numbers. */
  void shuffle(int[] numbers, int count) {
    for (int i = count - 1; i > 0; i--) {
      int k = below(i + 1);
      int swap = numbers[i];
      numbers[i] = numbers[k];
      numbers[k] = swap;
    }
  }
}
