package ellwand.many.cluster;

import ellwand.many.Errand;
import ellwand.many.Task;
import ellwand.many.TaskFailed;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import org.apache.pekko.actor.typed.ActorRef;

/** A task as it was handed in, with what the foreman knows of it. */
final class Handed implements Errand {

  private final long number;
  private final Task task;
  private final Consumer<byte[]> news;
  private final Executor answers;
  private final Consumer<Foreman.Command> foreman;
  private final BiFunction<Handed, String, Errand> anew;
  private final CompletableFuture<byte[]> done = new CompletableFuture<>();

  /** Known to the foreman alone. */
  private boolean hurried;

  private int lost;

  /** Who brought it; nobody else than this process's own cores where that is empty. */
  private volatile Optional<ActorRef<Link.Command>> broughtBy = Optional.empty();

  /**
   * @param answers where whoever asked is told, since that may take its time
   * @param foreman who is told what is wanted of it
   * @param anew asks for the same again, with why
   */
  Handed(
      long number,
      Task task,
      Consumer<byte[]> news,
      Executor answers,
      Consumer<Foreman.Command> foreman,
      BiFunction<Handed, String, Errand> anew) {
    this.number = number;
    this.task = task;
    this.news = news;
    this.answers = answers;
    this.foreman = foreman;
    this.anew = anew;
  }

  long number() {
    return number;
  }

  Task task() {
    return task;
  }

  Consumer<byte[]> news() {
    return news;
  }

  Optional<ActorRef<Link.Command>> broughtBy() {
    return broughtBy;
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

  void complete(byte[] made, Optional<ActorRef<Link.Command>> from) {
    broughtBy = from;
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
  public Errand refuse(String why) {
    if (broughtBy.isEmpty()) {
      throw new TaskFailed(why);
    }
    return anew.apply(this, why);
  }

  @Override
  public void withdraw() {
    done.cancel(false);
    foreman.accept(new Foreman.Withdrawn(this));
  }
}
