package ellwand.work;

import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;

/** A wish to stop, set by one thread (Ctrl-C, a closed page) and polled by those that search. */
public final class Stop {

  private static final long POLL_MILLIS = 20;

  private final BooleanSupplier elsewhere;
  private volatile boolean wanted;

  public Stop() {
    this(() -> false);
  }

  /**
   * One that is wanted for another reason, too; to request it is nothing to that.
   *
   * @param elsewhere asked from several threads, and often
   */
  public Stop(BooleanSupplier elsewhere) {
    this.elsewhere = elsewhere;
  }

  public void request() {
    wanted = true;
  }

  public boolean wanted() {
    return wanted || elsewhere.getAsBoolean();
  }

  /** What somebody else is making, waited for; empty if a stop is wanted before it is there. */
  public <T> Optional<T> unlessWanted(Future<T> made) {
    while (!wanted()) {
      try {
        return Optional.of(made.get(POLL_MILLIS, TimeUnit.MILLISECONDS));
      } catch (TimeoutException e) {
        // not yet
      } catch (ExecutionException e) {
        throw Elsewhere.thrown(e);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return Optional.empty();
      }
    }
    return Optional.empty();
  }
}
