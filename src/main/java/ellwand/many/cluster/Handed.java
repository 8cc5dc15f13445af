package ellwand.many.cluster;

import ellwand.many.Errand;
import ellwand.many.Task;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/** A task as it was handed in, with what the foreman knows of it. */
final class Handed implements Errand {

  private final long number;
  private final Task task;
  private final Consumer<byte[]> news;
  private final Executor answers;
  private final Consumer<Foreman.Command> foreman;
  private final CompletableFuture<byte[]> done = new CompletableFuture<>();

  /** Known to the foreman alone. */
  private boolean hurried;

  private int lost;

  /**
   * @param answers where whoever asked is told, since that may take its time
   * @param foreman who is told what is wanted of it
   */
  Handed(
      long number,
      Task task,
      Consumer<byte[]> news,
      Executor answers,
      Consumer<Foreman.Command> foreman) {
    this.number = number;
    this.task = task;
    this.news = news;
    this.answers = answers;
    this.foreman = foreman;
  }

  long number() {
    return number;
  }

  Task task() {
    return task;
  }

  boolean hurried() {
    return hurried;
  }

  void hurrying() {
    hurried = true;
  }

  /** How often whoever had it was lost, this time counted. */
  int lostOnceMore() {
    return ++lost;
  }

  void tell(byte[] told) {
    answers.execute(
        () -> {
          if (!done.isDone()) {
            news.accept(told);
          }
        });
  }

  void complete(byte[] made) {
    answers.execute(() -> done.complete(made));
  }

  void fail(RuntimeException why) {
    answers.execute(() -> done.completeExceptionally(why));
  }

  @Override
  public CompletableFuture<byte[]> done() {
    return done;
  }

  @Override
  public void hurry() {
    foreman.accept(new Foreman.Hurrying(this));
  }

  @Override
  public void withdraw() {
    done.cancel(false);
    foreman.accept(new Foreman.Withdrawn(this));
  }
}
