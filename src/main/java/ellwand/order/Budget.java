package ellwand.order;

import ellwand.work.Effort;
import ellwand.work.Progress;
import ellwand.work.Stop;

/**
 * What is left of an effort. A step is {@link #LOOKS} looks of the enumeration, {@link #TRIES}
 * small changes of the annealing, {@link #CHANGES} changes looked up to exchange plies, or {@link
 * #MOVES} moves of the rule solver: about as long each.
 */
final class Budget {

  static final int LOOKS = 1000;
  static final int TRIES = 1000;
  static final int CHANGES = 10_000;
  static final int MOVES = 10;

  /** Steps a second, half a second of which count before the first is taken. */
  private static final double USUAL_SPEED = 2000;

  private final Effort effort;
  private final Stop stop;
  private final Progress progress;
  private final long started = System.nanoTime();
  private long used;

  Budget(Effort effort, Stop stop, Progress progress) {
    this.effort = effort;
    this.stop = stop;
    this.progress = progress;
  }

  /** Counts one step. */
  void use() {
    use(1);
  }

  void use(long steps) {
    used += steps;
  }

  long used() {
    return used;
  }

  /** Whether to stop, since the user wants it or nothing is left. */
  boolean over() {
    return stop.wanted() || used >= effort.steps() || seconds() >= effort.seconds();
  }

  /** Whether a fifth is used up, or all is over. */
  boolean fifthUsed() {
    return over() || used >= effort.steps() / 5 || seconds() >= effort.seconds() / 5;
  }

  /** Steps left; an estimate if time is what limits. */
  long left() {
    if (effort.repeats()) {
      return effort.steps() - used;
    }
    double speed = (used + USUAL_SPEED / 2) / (seconds() + 0.5);
    return (long) (speed * Math.max(0, effort.seconds() - seconds()));
  }

  /** As many steps again, or this share of the time that is left. */
  Effort again(double share) {
    return effort.repeats()
        ? effort
        : Effort.ofSeconds(Math.max(1e-3, share * (effort.seconds() - seconds())));
  }

  void tell(Value best) {
    double share = effort.repeats() ? (double) used / effort.steps() : seconds() / effort.seconds();
    progress.hear(
        new Progress.News("cut-order plan", seconds(), Math.min(1, share), best.cloth() / 1000.0));
  }

  private double seconds() {
    return (System.nanoTime() - started) / 1e9;
  }
}
