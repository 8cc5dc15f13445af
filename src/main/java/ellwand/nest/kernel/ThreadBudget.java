package ellwand.nest.kernel;

import ellwand.work.Effort;
import ellwand.work.Spending;
import ellwand.work.Stop;

/** What one thread may still spend, what it has spent, and the best legal layout it knows of. */
final class ThreadBudget {

  /** Pose evaluations that make one step. */
  static final long STEP = 1000;

  /** Evaluations between two meetings of the threads. */
  private static final long BETWEEN_MEETINGS = 500 * STEP;

  /** Share of the budget from which all threads work on the same best. */
  private static final double TOGETHER = 0.85;

  /** How much longer a thread's best may be before it takes over the others'. */
  private static final double BEHIND = 0.005;

  private final Spending spending;
  private final double seconds;
  private final Stop stop;
  private final ThreadMeeting meeting;
  private final int thread;

  private long nextMeeting = Long.MAX_VALUE;
  private boolean over;
  private boolean apart;

  /** Poses evaluated by this thread. */
  long evaluations;

  /** The best known to this thread; null before the first. */
  Snapshot best;

  /** Time runs from here; steps are shared evenly by the threads that meet. */
  ThreadBudget(Effort effort, Stop stop, ThreadMeeting meeting, int thread) {
    this.spending = Spending.patient(effort.repeats() ? effort.share(meeting.threads()) : effort);
    this.seconds = effort.seconds();
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
    spending.reach(evaluations / (double) STEP);
    over = spending.over() || stop.wanted();
    return over;
  }

  /**
   * The thread meets the others from now on. Before, the first layout is the work of one of them,
   * and the others wait for it.
   */
  void meet() {
    nextMeeting = (evaluations / BETWEEN_MEETINGS + 1) * BETWEEN_MEETINGS;
  }

  /** Where one can find nothing shorter, all end. */
  private void adopt(Snapshot shortest) {
    if (meeting.atLeast(shortest) || !apart && outdone(shortest)) {
      best = shortest;
    }
  }

  /** Threads search apart, each from its own best, unless one is far behind; they end together. */
  private boolean outdone(Snapshot shortest) {
    return spending.spent() >= TOGETHER || shortest.length < best.length * (1 - BEHIND);
  }

  /** Whether the others' best is left to them from now on. */
  void apart(boolean apart) {
    this.apart = apart;
  }

  /** The steps that all of the budget comes to, of a time at the pace so far. */
  double stepsInAll() {
    return spending.stepsInAll();
  }

  /** Whether somebody wants the search to end, whatever is left of the budget. */
  boolean stopped() {
    return stop.wanted();
  }

  /** Whether there is no time left to prepare anything, such as a pair's table. */
  boolean late() {
    return stop.wanted() || spending.seconds() >= seconds;
  }

  /** Share of the budget that is used, 0 to 1. */
  double share() {
    return spent() ? 1 : spending.spent();
  }

  /** Whether the best is as short as any layout can be. */
  boolean atLeast(Plan plan) {
    return plan.atLeast(best.length);
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
