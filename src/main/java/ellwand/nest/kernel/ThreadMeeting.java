package ellwand.nest.kernel;

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
  private final Snapshot[][] shown;
  private final AtomicLongArray counts;
  private double reported = Double.POSITIVE_INFINITY;

  ThreadMeeting(Plan plan, Listener listener, int threads) {
    this.plan = plan;
    this.listener = listener;
    this.threads = threads;
    phaser = new Phaser(threads);
    shown = new Snapshot[2][threads];
    counts = new AtomicLongArray(threads);
    reported = Math.nextUp(plan.strip.maxLength() * (1 + 1e-12));
  }

  int threads() {
    return threads;
  }

  /** Waits for the others; the shortest of all their layouts, the first thread's among equals. */
  Snapshot exchange(int thread, Snapshot best) {
    // two sets by turns: nobody writes to one that a slower thread may still be reading
    Snapshot[] table = shown[phaser.getPhase() & 1];
    table[thread] = best;
    phaser.arriveAndAwaitAdvance();
    Snapshot shortest = null;
    for (Snapshot s : table) {
      if (s != null && (shortest == null || s.length < shortest.length)) {
        shortest = s;
      }
    }
    return shortest;
  }

  /** A thread that has ended is no longer waited for. */
  void leave() {
    phaser.arriveAndDeregister();
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
