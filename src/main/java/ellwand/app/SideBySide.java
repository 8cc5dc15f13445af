package ellwand.app;

import ellwand.work.Elsewhere;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Function;

/** Does some work for each of several things, as many at once as there are hands. */
final class SideBySide {

  private SideBySide() {}

  /**
   * What came of each, in their order. Where one fails no other is begun, and nothing goes on once
   * this has thrown what the first of them threw.
   *
   * @param atOnce 1 or more
   */
  static <T, R> List<R> each(List<T> things, int atOnce, Function<T, R> work) {
    AtomicBoolean failed = new AtomicBoolean();
    List<Callable<R>> tasks = new ArrayList<>();
    for (T thing : things) {
      tasks.add(
          () -> {
            if (failed.get()) {
              return null;
            }
            try {
              return work.apply(thing);
            } catch (RuntimeException | Error e) {
              failed.set(true);
              throw e;
            }
          });
    }
    ExecutorService workers = Executors.newFixedThreadPool(atOnce);
    try {
      List<R> results = new ArrayList<>();
      // They begin in their order, so that what failed comes before what was not begun.
      for (Future<R> done : workers.invokeAll(tasks)) {
        results.add(done.get());
      }
      return results;
    } catch (ExecutionException e) {
      throw Elsewhere.thrown(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CompletionException(e);
    } finally {
      workers.shutdown();
    }
  }
}
