package ellwand.nest.kernel;

import ellwand.work.Effort;
import ellwand.work.Stop;

/** What one thread may still spend, what it has spent, and the best legal layout it knows of. */
final class Budget {

  /** Pose evaluations that make one step. */
  static final long STEP = 1000;

  /** Evaluations between two meetings of the threads. */
  private static final long BETWEEN_MEETINGS = 500 * STEP;

  /** Share of the budget from which all threads work on the same best. */
  private static final double TOGETHER = 0.85;

  /** How much longer a thread's best may be before it takes over the others'. */
  private static final double BEHIND = 0.005;

  private final long began;
  private final long deadline;
  private final long most;
  private final Stop stop;
  private final Meeting meeting;
  private final int thread;

  private long nextMeeting = BETWEEN_MEETINGS;
  private boolean over;

  /** Poses evaluated by this thread. */
  long evaluations;

  /** The best known to this thread; null before the first. */
  Snapshot best;

  Budget(Effort effort, long began, Stop stop, Meeting meeting, int thread) {
    this.began = began;
    double nanos = effort.seconds() * 1e9;
    deadline = nanos < 1e18 ? began + (long) nanos : Long.MAX_VALUE;
    long share = effort.steps() / meeting.threads();
    most = share > Long.MAX_VALUE / STEP ? Long.MAX_VALUE : Math.max(1, share) * STEP;
    this.stop = stop;
    this.meeting = meeting;
    this.thread = thread;
  }

  /** Whether the thread has to end; from time to time the threads exchange their best here. */
  boolean spent() {
    if (over) {
      return true;
    }
    if (evaluations >= nextMeeting && meeting.threads() > 1) {
      nextMeeting += BETWEEN_MEETINGS;
      adopt(meeting.exchange(thread, best));
    }
    meeting.count(thread, evaluations);
    over =
        evaluations >= most
            || stop.wanted()
            || (deadline != Long.MAX_VALUE && System.nanoTime() - deadline >= 0);
    return over;
  }

  /** Threads search apart, each from its own best, unless one is far behind; they end together. */
  private void adopt(Snapshot shortest) {
    if (used() >= TOGETHER || shortest.length < best.length * (1 - BEHIND)) {
      best = shortest;
    }
  }

  /** Whether somebody wants the search to end, whatever is left of the budget. */
  boolean stopped() {
    return stop.wanted();
  }

  /** Share of the budget that is used, 0 to 1. */
  double share() {
    if (spent()) {
      return 1;
    }
    return used();
  }

  private double used() {
    return deadline == Long.MAX_VALUE
        ? (double) evaluations / most
        : (double) (System.nanoTime() - began) / (deadline - began);
  }

  /** Whether the best is as short as any layout can be. */
  boolean atLeast(Plan plan) {
    return best.length <= plan.least * (1 + 1e-9);
  }

  /** Keeps a legal layout that is shorter than the best. */
  void found(Snapshot legal) {
    if (best == null || legal.length < best.length) {
      best = legal;
      meeting.count(thread, evaluations);
      meeting.report(legal);
    }
  }
}
