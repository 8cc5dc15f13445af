package ellwand.app;

import ellwand.work.Effort;
import ellwand.work.Seed;

/**
 * How markers are searched for.
 *
 * @param effort for one cloth's marker
 * @param threads 1 or more
 */
public record SearchOptions(Effort effort, Seed seed, int threads) {

  public SearchOptions {
    if (threads < 1) {
      throw new IllegalArgumentException("a search needs one thread or more");
    }
  }
}
