package ellwand.work;

import java.util.SplittableRandom;

/** Where all randomness of one run comes from. */
public record Seed(long value) {

  /** A fresh generator; the same seed always gives the same numbers. */
  public SplittableRandom generator() {
    return new SplittableRandom(value * 0x9E3779B97F4A7C15L + 1);
  }

  /** A seed of its own for part {@code index} of the work (a thread, a cloth). */
  public Seed child(long index) {
    return new Seed(value * 31 + index + 1);
  }
}
