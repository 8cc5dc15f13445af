package ellwand.many;

import ellwand.work.Stop;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;

/**
 * A workshop of this process alone: nothing to start, no socket. A task waits until as many cores
 * are free as it asks for; one that asks for more than there are has all.
 */
public final class OwnCores implements Workshop {

  private final Craft craft;
  private final int cores;
  private final Deque<Own> waiting = new ArrayDeque<>();
  private final Set<Own> begun = new HashSet<>();
  private final ExecutorService workers =
      Executors.newCachedThreadPool(
          work -> {
            Thread thread = new Thread(work, "task");
            thread.setDaemon(true);
            return thread;
          });
  private int free;

  /**
   * @param cores 1 or more
   */
  public OwnCores(Craft craft, int cores) {
    this.craft = craft;
    this.cores = cores;
    this.free = cores;
  }

  @Override
  public int cores() {
    return cores;
  }

  @Override
  public Errand give(Task task, Consumer<byte[]> news) {
    Own own = new Own(task, news);
    synchronized (this) {
      waiting.add(own);
    }
    begin();
    return own;
  }

  /** Begins what there are cores for, those that came first before all others. */
  private synchronized void begin() {
    while (!waiting.isEmpty() && waiting.peek().cores() <= free && !workers.isShutdown()) {
      Own next = waiting.remove();
      free -= next.cores();
      begun.add(next);
      workers.execute(next);
    }
  }

  private void end(Own own) {
    synchronized (this) {
      begun.remove(own);
      free += own.cores();
    }
    begin();
  }

  @Override
  public void close() {
    Set<Own> all;
    synchronized (this) {
      all = new HashSet<>(waiting);
      all.addAll(begun);
      workers.shutdown();
    }
    all.forEach(Own::withdraw);
  }

  /** A task, waiting or begun. */
  private final class Own implements Errand, Runnable {

    private final Task task;
    private final Consumer<byte[]> news;
    private final Stop stop = new Stop();
    private final CompletableFuture<byte[]> done = new CompletableFuture<>();

    Own(Task task, Consumer<byte[]> news) {
      this.task = task;
      this.news = news;
    }

    int cores() {
      return Math.min(cores, task.cores());
    }

    @Override
    public void run() {
      try {
        done.complete(craft.work(task, stop, this::tell));
      } catch (RuntimeException e) {
        done.completeExceptionally(new TaskFailed(e.toString(), e));
      } catch (Error e) {
        // Memory ran out, which the asker tells better than a thread that ends.
        done.completeExceptionally(e);
      } finally {
        end(this);
      }
    }

    private void tell(byte[] told) {
      if (!done.isDone()) {
        news.accept(told);
      }
    }

    @Override
    public CompletableFuture<byte[]> done() {
      return done;
    }

    @Override
    public void hurry() {
      stop.request();
    }

    @Override
    public Errand refuse(String why) {
      throw new TaskFailed(why);
    }

    @Override
    public void withdraw() {
      // Cancelled first: told to stop, the task could otherwise still be done in between.
      done.cancel(false);
      stop.request();
      synchronized (OwnCores.this) {
        waiting.remove(this);
      }
      begin();
    }
  }
}
