package ellwand.nest.kernel;

import java.util.Optional;

/**
 * How a search ended.
 *
 * @param layout the shortest legal one found; empty when nothing was found that keeps the longest
 *     length allowed, or a stop came before the first
 * @param evaluations poses evaluated, by all threads together
 */
public record Outcome(Optional<Layout> layout, long evaluations) {

  /** The same when other poses had been evaluated before. */
  Outcome after(long earlier) {
    return new Outcome(layout, earlier + evaluations);
  }
}
