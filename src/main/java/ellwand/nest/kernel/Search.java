package ellwand.nest.kernel;

import ellwand.work.Effort;
import ellwand.work.Seed;
import ellwand.work.Stop;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletionException;

/** Seeks the shortest legal layout of a strip. Prepared once; may be run several times. */
public final class Search {

  /** How far outlines are thinned outwards while searching, as a share of the strip's width. */
  private static final double THINNED = 0.0005;

  /** Share of the budget from which the true outlines are used. */
  private static final double REFINED_FROM = 0.95;

  private final Strip strip;
  private final Plan plan;

  /** The same with the true outlines. */
  private final Plan exact;

  /**
   * @param strip what to lay
   * @param noFit makes the no-fit polygons, when they are first needed
   */
  public Search(Strip strip, NoFit noFit) {
    this.strip = strip;
    exact = new Plan(strip, noFit, 0);
    Plan thinned = new Plan(strip, noFit, THINNED * (exact.highY - exact.lowY));
    plan = thinned.thinned() ? thinned : exact;
  }

  /**
   * Searches until the effort is used up, the stop is asked for, or no shorter layout can be.
   *
   * <p>An effort in steps is shared evenly by the threads; a step is 1,000 pose evaluations. The
   * same strip, seed, thread count and effort in steps give the same layout.
   *
   * @param start a layout to begin with, if there is one; it need not be legal
   * @param listener hears of every better layout that keeps the strip's longest length
   * @throws IllegalArgumentException if the start doesn't have a pose for each copy
   */
  public Outcome run(
      Optional<Layout> start, Effort effort, Seed seed, int threads, Stop stop, Listener listener) {
    if (threads < 1) {
      throw new IllegalArgumentException("a search needs a thread");
    }
    if (plan.least > strip.maxLength()) {
      return new Outcome(Optional.empty(), 0);
    }
    long began = System.nanoTime();
    Meeting meeting = new Meeting(plan, listener, threads);
    List<Budget> budgets = new ArrayList<>();
    for (int t = 0; t < threads; t++) {
      budgets.add(new Budget(effort, began, stop, meeting, t));
    }
    Snapshot first = first(start, budgets.get(0), seed);
    if (first == null) {
      return new Outcome(Optional.empty(), meeting.evaluations());
    }
    budgets.forEach(b -> b.best = first);
    List<Thread> others = new ArrayList<>();
    List<Throwable> failures = new ArrayList<>();
    for (int t = 1; t < threads; t++) {
      Budget budget = budgets.get(t);
      Seed own = seed.child(t);
      Thread thread =
          new Thread(
              () -> {
                try {
                  explore(budget, own, meeting);
                } catch (RuntimeException | Error failure) {
                  synchronized (failures) {
                    failures.add(failure);
                  }
                }
              },
              "search-" + t);
      others.add(thread);
      thread.start();
    }
    explore(budgets.get(0), seed.child(0), meeting);
    others.forEach(Search::join);
    if (!failures.isEmpty()) {
      throw new CompletionException(failures.get(0));
    }
    Snapshot best = first;
    for (Budget b : budgets) {
      best = b.best.length < best.length ? b.best : best;
    }
    boolean kept = best.length <= strip.maxLength() * (1 + 1e-12);
    return new Outcome(
        kept ? Optional.of(best.layout(plan)) : Optional.empty(), meeting.evaluations());
  }

  private Snapshot first(Optional<Layout> start, Budget budget, Seed seed) {
    Arrangement arrangement = new Arrangement(plan, budget);
    Snapshot laid = null;
    if (start.isPresent()) {
      laid = Snapshot.of(start.get(), plan).trimmed(plan);
      arrangement.take(laid);
      if (arrangement.total() > 0
          && !new Separation(arrangement, budget, new Dice(seed), true)
              .run(2, 60, Double.POSITIVE_INFINITY)) {
        laid = null;
      } else {
        laid = arrangement.snapshot().trimmed(plan);
      }
    }
    if (laid == null) {
      laid = new Opening(arrangement).lay(budget);
    }
    if (laid != null) {
      budget.found(laid);
    }
    return laid;
  }

  private void explore(Budget budget, Seed seed, Meeting meeting) {
    try {
      Dice dice = new Dice(seed);
      new Explorer(new Arrangement(plan, budget), budget, dice).run();
      compress(plan, true, budget, dice, plan == exact ? 1 : REFINED_FROM);
      if (plan != exact) {
        compress(exact, false, budget, dice, 1);
      }
    } finally {
      meeting.leave();
    }
  }

  private static void compress(
      Plan plan, boolean anywhere, Budget budget, Dice dice, double until) {
    Arrangement arrangement = new Arrangement(plan, budget);
    Separation separation = new Separation(arrangement, budget, dice, anywhere);
    Compression compression = new Compression(arrangement, budget, dice, separation);
    while (budget.share() < until && !budget.atLeast(plan)) {
      compression.pass(until);
    }
  }

  private static void join(Thread thread) {
    boolean interrupted = false;
    while (true) {
      try {
        thread.join();
        break;
      } catch (InterruptedException e) {
        interrupted = true;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
