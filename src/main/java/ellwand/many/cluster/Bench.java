package ellwand.many.cluster;

import ellwand.many.Craft;
import ellwand.many.Errand;
import ellwand.many.OwnCores;
import ellwand.many.Task;
import ellwand.many.TaskFailed;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;

/** Does on this process's cores what is ordered, and reports. */
final class Bench implements AutoCloseable {

  private final OwnCores cores;
  private final Consumer<Post.Report> reports;
  private final Map<Long, Errand> begun = new ConcurrentHashMap<>();

  /**
   * @param reports hears from any thread
   */
  Bench(Craft craft, int cores, Consumer<Post.Report> reports) {
    this.cores = new OwnCores(craft, cores);
    this.reports = reports;
  }

  void take(Post.Order order) {
    if (order instanceof Post.Begin begin) {
      begin(begin);
    } else if (order instanceof Post.Hurry hurry) {
      Optional.ofNullable(begun.get(hurry.errand())).ifPresent(Errand::hurry);
    } else if (order instanceof Post.Withdraw withdraw) {
      Optional.ofNullable(begun.remove(withdraw.errand())).ifPresent(Errand::withdraw);
    }
  }

  private void begin(Post.Begin begin) {
    long number = begin.errand();
    Task task =
        new Task(begin.kind(), begin.asked(), begin.cores(), Duration.ofMillis(begin.mostMillis()));
    Errand errand = cores.give(task, news -> reports.accept(new Post.Told(number, news)));
    begun.put(number, errand);
    errand
        .done()
        .whenComplete(
            (made, why) -> {
              if (begun.remove(number) != null) {
                reports.accept(report(number, made, why));
              }
            });
  }

  private static Post.Report report(long number, byte[] made, Throwable why) {
    return why == null
        ? new Post.Done(number, made)
        : why instanceof TaskFailed
            ? new Post.Failed(number, why.getMessage())
            : new Post.GivenUp(number, why.toString());
  }

  /** Withdraws all that is begun. */
  @Override
  public void close() {
    begun.clear();
    cores.close();
  }
}
