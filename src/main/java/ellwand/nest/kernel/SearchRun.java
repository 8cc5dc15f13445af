package ellwand.nest.kernel;

import ellwand.work.Request;
import ellwand.work.Seed;
import ellwand.work.Stop;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;

/** One run of a search: its threads, and what each does from first to last. */
final class SearchRun {

  /** Share of the budget from which the true outlines are used. */
  private static final double REFINED_FROM = 0.95;

  /**
   * Pairs of corners from which on the first layout is made of the boxes round the outlines: the
   * tables of so many take a second or more.
   */
  private static final double MUCH = 2e5;

  private final Plan plan;
  private final Plan exact;
  private final Seed seed;
  private final Stop stop;
  private final ThreadMeeting meeting;
  private final List<ThreadBudget> budgets = new ArrayList<>();
  private final CompletableFuture<Snapshot> first = new CompletableFuture<>();

  /**
   * @param plan with outlines that may be thinned
   * @param exact with the true ones; may be the same
   */
  SearchRun(Plan plan, Plan exact, Request request, Listener listener) {
    this.plan = plan;
    this.exact = exact;
    seed = request.seed();
    // A failure ends all threads of this run, not what else the request is for.
    stop = new Stop(request.stop()::wanted);
    meeting = new ThreadMeeting(plan, listener, request.threads());
    for (int t = 0; t < request.threads(); t++) {
      budgets.add(new ThreadBudget(request.effort(), stop, meeting, t));
    }
  }

  /**
   * @param starts layouts to begin from the shortest of; they need not be legal
   */
  Outcome outcome(List<Layout> starts) {
    return from(() -> first(starts));
  }

  /**
   * From this layout and no other; it need not be legal, but then it may become longer. Empty if
   * that takes longer than the effort allows.
   */
  Outcome goneOn(Layout start) {
    return from(() -> parted(start));
  }

  private Outcome from(Supplier<Snapshot> begin) {
    List<CompletableFuture<Void>> helpers = new ArrayList<>();
    for (int t = 1; t < budgets.size(); t++) {
      int thread = t;
      CompletableFuture<Void> done = new CompletableFuture<>();
      helpers.add(done);
      new Thread(() -> end(thread, done), "search-" + t).start();
    }
    try {
      first.complete(begin.get());
      seek(0);
    } catch (RuntimeException | Error failure) {
      stop.request();
      first.completeExceptionally(failure);
      throw failure;
    } finally {
      leave(0);
      helpers.forEach(h -> h.handle((done, failure) -> null).join());
    }
    helpers.forEach(CompletableFuture::join);
    Snapshot best = first.join();
    for (ThreadBudget b : budgets) {
      best = b.best != null && b.best.length < best.length ? b.best : best;
    }
    boolean kept = best != null && best.length <= plan.strip.maxLength() * (1 + 1e-12);
    return new Outcome(
        kept ? Optional.of(best.layout(plan)) : Optional.empty(), meeting.evaluations());
  }

  private void end(int thread, CompletableFuture<Void> done) {
    try {
      help(thread);
      done.complete(null);
    } catch (RuntimeException | Error failure) {
      stop.request();
      done.completeExceptionally(failure);
    } finally {
      leave(thread);
    }
  }

  private void leave(int thread) {
    meeting.leave(thread, budgets.get(thread).best);
  }

  /** Builds tables until there is a first layout to search from. */
  private void help(int thread) {
    plan.tables.buildAll(() -> first.isDone() || budgets.get(thread).late());
    seek(thread);
  }

  private Snapshot first(List<Layout> starts) {
    ThreadBudget budget = budgets.get(0);
    Arrangement arrangement = new Arrangement(plan, budget);
    for (Layout start : starts) {
      parted(Snapshot.of(start, plan), arrangement, budget).ifPresent(budget::found);
    }
    if (budget.best == null) {
      Arrangement opening =
          plan.tables.work() > MUCH ? new Arrangement(plan.boxed(), budget) : arrangement;
      Optional.ofNullable(new OpeningLayout(opening).lay(budget)).ifPresent(budget::found);
    }
    return budget.best;
  }

  /** The layout made legal: as it is, parted, or what clashes laid anew; null if stopped before. */
  private Snapshot parted(Layout layout) {
    ThreadBudget budget = budgets.get(0);
    // Thinned outlines of copies that touch overlap.
    Arrangement truly = new Arrangement(exact, budget);
    truly.take(Snapshot.of(layout, exact).trimmed(exact));
    if (truly.total() == 0) {
      budget.found(truly.snapshot());
    } else {
      parted(Snapshot.of(layout, plan), new Arrangement(plan, budget), budget)
          .or(() -> Optional.ofNullable(laidAnew(truly, budget)))
          .ifPresent(budget::found);
    }
    return budget.best;
  }

  private static Snapshot laidAnew(Arrangement arrangement, ThreadBudget budget) {
    Snapshot start = arrangement.snapshot();
    boolean[] clashes = new boolean[arrangement.copies];
    for (int copy = arrangement.worst(clashes); copy >= 0; copy = arrangement.worst(clashes)) {
      clashes[copy] = true;
    }
    OpeningLayout opening = new OpeningLayout(arrangement);
    for (int copy = 0; copy < arrangement.copies; copy++) {
      if (!clashes[copy]) {
        opening.put(copy, start.form[copy], start.x[copy], start.y[copy]);
      }
    }
    return opening.lay(budget);
  }

  /** The given layout, made legal if it isn't. */
  private Optional<Snapshot> parted(Snapshot start, Arrangement arrangement, ThreadBudget budget) {
    arrangement.take(start.trimmed(plan));
    Parting parting = new Parting(arrangement, budget, new Dice(seed), true, 1);
    return parting.run(2, 60, Double.POSITIVE_INFINITY)
        ? Optional.of(arrangement.snapshot().trimmed(plan))
        : Optional.empty();
  }

  private void seek(int thread) {
    ThreadBudget budget = budgets.get(thread);
    Snapshot start = first.join();
    if (start == null) {
      return;
    }
    budget.meet();
    Dice dice = new Dice(seed.child(thread));
    Arrangement arrangement = new Arrangement(plan, budget);
    new Beginnings(plan, budget, () -> new Seeking(arrangement, budget, dice, start))
        .farthest()
        .run(Seeking.SOUGHT);
    tighten(plan, true, budget, dice, plan == exact ? 1 : REFINED_FROM);
    if (plan != exact) {
      tighten(exact, false, budget, dice, 1);
    }
  }

  private static void tighten(
      Plan plan, boolean anywhere, ThreadBudget budget, Dice dice, double until) {
    Arrangement arrangement = new Arrangement(plan, budget);
    Parting parting = new Parting(arrangement, budget, dice, anywhere, until);
    Tightening tightening = new Tightening(arrangement, budget, dice, parting);
    boolean goesOn = true;
    while (goesOn && !parting.over() && !budget.atLeast(plan)) {
      double share = budget.share();
      double length = budget.best.length;
      tightening.pass();
      goesOn = budget.share() > share || budget.best.length < length;
    }
  }
}
