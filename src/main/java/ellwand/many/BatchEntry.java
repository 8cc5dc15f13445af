package ellwand.many;

import java.util.List;
import java.util.Locale;

/**
 * What came of one job of a batch.
 *
 * @param name of the job and of its folder
 * @param asked in words
 * @param key see {@link BatchJob.Ready}; empty if it could not be read
 * @param said the result in a line, or why there is none
 * @param seconds that it took, wall clock
 * @param files that lie in its folder
 */
public record BatchEntry(
    String name,
    String asked,
    State state,
    String key,
    String said,
    double seconds,
    List<String> files) {

  /** How far it has come. */
  public enum State {
    /** Made, and it came to what was asked for. */
    DONE,
    /** Made; nothing fits, or the order cannot be met. */
    NO,
    /** Refused: what is asked for is wrong. */
    REFUSED,
    /** A mistake of ours, or memory ran out. */
    BROKEN,
    /** Not made yet. */
    LEFT;

    /** As in the index. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  public BatchEntry {
    files = List.copyOf(files);
  }

  /** Whether there is a result. */
  public boolean made() {
    return state == State.DONE || state == State.NO;
  }

  static BatchEntry left(BatchJob job) {
    return new BatchEntry(job.name(), job.words(), State.LEFT, "", "", 0, List.of());
  }
}
