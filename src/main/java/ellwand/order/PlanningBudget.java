package ellwand.order;

import ellwand.work.Effort;
import ellwand.work.Progress;
import ellwand.work.Request;
import ellwand.work.Spending;
import java.util.Optional;

/**
 * What is left of an effort. A step is {@link #LOOKS} looks of the enumeration, {@link #TRIES}
 * small changes of the annealing, {@link #CHANGES} changes looked up to exchange plies, or {@link
 * #MOVES} moves of the rule solver: about as long each.
 */
final class PlanningBudget {

  static final int LOOKS = 1000;
  static final int TRIES = 1000;
  static final int CHANGES = 10_000;
  static final int MOVES = 10;

  /** Steps a second, half a second of which count before the first is taken. */
  private static final double USUAL_SPEED = 2000;

  /** Share of the effort after which news come though nothing is better. */
  private static final double TELLING = 0.01;

  private final Request request;
  private final Spending spending;
  private final Effort fifth;
  private Optional<Value> told = Optional.empty();
  private double toldAt;

  /** Time runs from here. */
  PlanningBudget(Request request) {
    this.request = request;
    spending = new Spending(request.effort());
    fifth = request.effort().share(5);
  }

  /** Counts one step. */
  void use() {
    use(1);
  }

  void use(long steps) {
    spending.use(steps);
  }

  long used() {
    return (long) spending.used();
  }

  /** Whether to stop, since the user wants it or nothing is left. */
  boolean over() {
    return request.stop().wanted() || spending.over();
  }

  /** Whether a fifth is used up, or all is over. */
  boolean fifthUsed() {
    return over() || spending.atLeast(fifth);
  }

  /** Steps left; an estimate if time is what limits. */
  long left() {
    Effort effort = request.effort();
    if (effort.repeats()) {
      return effort.steps() - used();
    }
    double seconds = spending.seconds();
    double speed = (spending.used() + USUAL_SPEED / 2) / (seconds + 0.5);
    return (long) (speed * Math.max(0, effort.seconds() - seconds));
  }

  /** As many steps again, or this share of the time that is left. */
  Request again(double share) {
    Effort effort = request.effort();
    return effort.repeats() ? request : request.with(spending.rest().part(share));
  }

  /** Tells of the best plan, if it is better or a hundredth of the effort later than the last. */
  void tell(Value best) {
    double share = Math.min(1, spending.spent());
    if (told.isPresent() && best.compareTo(told.get()) >= 0 && share < toldAt + TELLING) {
      return;
    }
    told = Optional.of(best);
    toldAt = share;
    request
        .progress()
        .hear(
            new Progress.Cheaper(
                "",
                spending.seconds(),
                share,
                (int) best.lays(),
                best.cost() / 1e10,
                best.cloth() / 1000.0));
  }
}
