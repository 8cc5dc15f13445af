package ellwand.nest.kernel;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Objects;
import java.util.concurrent.Phaser;
import java.util.concurrent.atomic.AtomicLongArray;

/**
 * Where the threads of a search exchange their best layouts. They meet after fixed numbers of
 * evaluations, so that what each learns doesn't depend on which runs faster.
 */
final class ThreadMeeting {

  private final Plan plan;
  private final Listener listener;
  private final int threads;
  private final Phaser phaser;
  private final Snapshot[] shown;
  private final AtomicLongArray counts;
  private Snapshot shortest;
  private double reported;

  ThreadMeeting(Plan plan, Listener listener, int threads) {
    this.plan = plan;
    this.listener = listener;
    this.threads = threads;
    phaser =
        new Phaser(threads) {
          @Override
          protected boolean onAdvance(int phase, int left) {
            shortest = shortest();
            return super.onAdvance(phase, left);
          }
        };
    shown = new Snapshot[threads];
    counts = new AtomicLongArray(threads);
    reported = Math.nextUp(plan.strip.maxLength() * (1 + 1e-12));
  }

  int threads() {
    return threads;
  }

  /** Waits for the others; the shortest of all their layouts, the first thread's among equals. */
  Snapshot exchange(int thread, Snapshot best) {
    shown[thread] = best;
    phaser.arriveAndAwaitAdvance();
    return shortest;
  }

  /** Asked while all wait: nobody writes to what they have shown. */
  private Snapshot shortest() {
    return Arrays.stream(shown)
        .filter(Objects::nonNull)
        .min(Comparator.comparingDouble(s -> s.length))
        .orElse(null);
  }

  /** A thread that has ended is no longer waited for, but what it came to is still heard of. */
  void leave(int thread, Snapshot best) {
    shown[thread] = best;
    phaser.arriveAndDeregister();
  }

  /** Whether no layout can be shorter. */
  boolean atLeast(Snapshot legal) {
    return plan.atLeast(legal.length);
  }

  void count(int thread, long evaluations) {
    counts.lazySet(thread, evaluations);
  }

  long evaluations() {
    long sum = 0;
    for (int i = 0; i < threads; i++) {
      sum += counts.get(i);
    }
    return sum;
  }

  /** Tells the listener of a layout shorter than all before. */
  synchronized void report(Snapshot legal) {
    if (legal.length < reported) {
      reported = legal.length;
      listener.better(legal.layout(plan), evaluations());
    }
  }
}
