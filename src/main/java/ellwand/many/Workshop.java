package ellwand.many;

import java.util.function.Consumer;

/** Whoever takes tasks: this process, or helpers on other machines too. For use by any thread. */
public interface Workshop extends AutoCloseable {

  /** How many cores work at once, 1 or more; it may change while helpers come and go. */
  int cores();

  /**
   * Hands a task in; returns at once. Tasks are begun in the order in which they are handed in.
   *
   * @param news hears what is told on the way, from any thread; what a helper told before it was
   *     lost is told again by the next
   */
  Errand give(Task task, Consumer<byte[]> news);

  /** Withdraws whatever is not done and ends all that was started for it. */
  @Override
  void close();
}
