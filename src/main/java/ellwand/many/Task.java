package ellwand.many;

import java.time.Duration;
import java.util.Objects;

/**
 * A piece of work that can be done anywhere: what comes of it depends on its bytes alone, so that
 * it may be done again elsewhere.
 *
 * @param kind which work it is
 * @param asked what it is done with; not to be changed
 * @param cores how many threads it works on, 1 or more
 * @param most so long it may take at the most; who has not brought it back by then is not waited
 *     for
 */
public record Task(String kind, byte[] asked, int cores, Duration most) {

  public Task {
    Objects.requireNonNull(kind);
    Objects.requireNonNull(asked);
    if (cores < 1 || most.isNegative() || most.isZero()) {
      throw new IllegalArgumentException("a task takes a core or more and some time");
    }
  }
}
