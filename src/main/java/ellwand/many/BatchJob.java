package ellwand.many;

import ellwand.app.Answer;
import ellwand.work.Progress;
import ellwand.work.Stop;
import java.util.function.Supplier;

/**
 * One job of a batch.
 *
 * @param name of its folder for results, unlike any other's of the batch
 * @param words what is asked, as a person would write it
 * @param cores that it keeps busy, 1 or more
 * @param reader reads it, or tells by an {@link ellwand.problem.InputException} why not
 */
public record BatchJob(String name, String words, int cores, Supplier<Ready> reader) {

  /**
   * A job that was read.
   *
   * @param key the same only for what gives the same: job, request, version of the program
   */
  public record Ready(String key, Maker maker) {}

  /** Makes what is asked for. */
  @FunctionalInterface
  public interface Maker {
    Answer make(Workshop workshop, Stop stop, Progress progress);
  }
}
