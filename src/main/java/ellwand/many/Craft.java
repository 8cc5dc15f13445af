package ellwand.many;

import ellwand.work.Stop;
import java.util.function.Consumer;

/** How tasks are done: a function of their bytes, without anything else to depend on. */
@FunctionalInterface
public interface Craft {

  /**
   * Does a task on the calling thread and as many more as it asks for.
   *
   * @param stop once it is wanted the work ends soon, with the best that there is
   * @param news hears on the way, as bytes, some thousand at most; called from any thread, and must
   *     return quickly
   * @return what came of it
   * @throws RuntimeException if it cannot be done, which then holds wherever it is tried
   */
  byte[] work(Task task, Stop stop, Consumer<byte[]> news);
}
