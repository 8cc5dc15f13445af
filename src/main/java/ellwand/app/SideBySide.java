package ellwand.app;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Function;

/** Does some work for each of several things, as many at once as there are hands. */
final class SideBySide {

  private SideBySide() {}

  /**
   * What came of each, in their order.
   *
   * @param atOnce 1 or more
   */
  static <T, R> List<R> each(List<T> things, int atOnce, Function<T, R> work) {
    ExecutorService workers = Executors.newFixedThreadPool(atOnce);
    try {
      List<CompletableFuture<R>> running =
          things.stream()
              .map(t -> CompletableFuture.supplyAsync(() -> work.apply(t), workers))
              .toList();
      return running.stream().map(CompletableFuture::join).toList();
    } catch (CompletionException e) {
      throw e.getCause() instanceof RuntimeException known ? known : e;
    } finally {
      workers.shutdown();
    }
  }
}
