package ellwand.nest.kernel;

import ellwand.work.Request;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Seeks the shortest legal layout of a strip. Prepared once, when first run; may be run several
 * times, one after another, but not by two callers at once: a later run goes on from the block that
 * an earlier one repeated. A run makes its own threads and ends them before it returns, also by an
 * exception, which makes it ask for the stop too; they share what was prepared, to which tables are
 * added as they are first needed. Searches made from another ({@link #StripSearch(Strip,
 * StripSearch)}) share these tables too and may run beside it.
 */
public final class StripSearch {

  /** Pose evaluations in a step. */
  public static final long STEP = ThreadBudget.STEP;

  /** How far outlines are thinned outwards while searching, as a share of the strip's width. */
  private static final double THINNED = 0.0005;

  /** The same for layouts that are only a beginning. */
  private static final double THINNED_ROUGHLY = 0.01;

  /** Share of the effort that goes to the block when a block is repeated. */
  private static final double TILED = 0.6;

  private final Strip strip;
  private final Supplier<Prepared> preparing;
  private Prepared prepared;

  /**
   * What takes a while to make.
   *
   * @param plan with outlines that may be thinned
   * @param exact the same with the true outlines
   * @param rough the same with outlines of few corners, for a layout to begin with
   */
  private record Prepared(Plan plan, Plan exact, Plan rough, Optional<Tiling> tiling) {}

  /**
   * @param strip what to lay
   * @param noFit makes the no-fit polygons, when they are first needed
   */
  public StripSearch(Strip strip, NoFit noFit) {
    this.strip = strip;
    preparing = () -> prepared(strip, noFit);
  }

  private static Prepared prepared(Strip strip, NoFit noFit) {
    Set<Integer> fixed =
        strip.obstacles().stream().map(Obstacle::shape).collect(Collectors.toSet());
    Plan exact = new Plan(strip, new Outlines(strip.shapes(), fixed, noFit, 0));
    double reach = exact.highY - exact.lowY;
    Outlines thinned = new Outlines(strip.shapes(), fixed, noFit, THINNED * reach);
    Plan plan = thinned.thinned() ? new Plan(strip, thinned) : exact;
    Outlines few = Outlines.rough(strip.shapes(), fixed, noFit, THINNED_ROUGHLY * reach);
    Plan rough = few.thinned() ? new Plan(strip, few) : plan;
    return new Prepared(plan, exact, rough, Tiling.of(plan));
  }

  /**
   * Takes what was prepared over from another search.
   *
   * @param strip what to lay
   * @param like a search on a strip with the same shapes, whatever copies it has
   * @throws IllegalArgumentException if the shapes differ
   */
  public StripSearch(Strip strip, StripSearch like) {
    if (!strip.shapes().equals(like.strip.shapes())) {
      throw new IllegalArgumentException("what was prepared is for other shapes");
    }
    this.strip = strip;
    preparing = () -> prepared(strip, like.prepared());
  }

  private static Prepared prepared(Strip strip, Prepared like) {
    Plan exact = new Plan(strip, like.exact.outlines);
    Plan plan = like.plan == like.exact ? exact : new Plan(strip, like.plan.outlines);
    Plan rough = like.rough == like.plan ? plan : new Plan(strip, like.rough.outlines);
    return new Prepared(plan, exact, rough, Optional.empty());
  }

  private synchronized Prepared prepared() {
    prepared = prepared == null ? preparing.get() : prepared;
    return prepared;
  }

  /** What it lays. */
  public Strip strip() {
    return strip;
  }

  /**
   * Searches until the effort is used up, the stop is asked for, or no shorter layout can be.
   *
   * <p>An effort in steps is shared evenly by the threads; a step is 1,000 pose evaluations. The
   * same strip, seed, thread count and effort in steps give the same layout.
   *
   * @param start a layout to begin with, if there is one; it need not be legal
   * @param request whose progress hears nothing; the listener does
   * @param listener hears of every better layout that keeps the strip's longest length
   * @throws IllegalArgumentException if the start doesn't have a pose for each copy
   */
  public Outcome run(Optional<Layout> start, Request request, Listener listener) {
    start.ifPresent(this::requireComplete);
    Plan plan = prepared().plan;
    Plan exact = prepared().exact;
    Optional<Tiling> tiling = prepared().tiling;
    if (plan.least > strip.maxLength()) {
      return new Outcome(Optional.empty(), 0);
    }
    Listener shorter = new Shorter(listener);
    if (tiling.isEmpty()) {
      return new SearchRun(plan, exact, request, shorter).outcome(start.stream().toList());
    }
    Outcome tiled = tiling.get().run(request.part(TILED), shorter);
    Listener after =
        (layout, evaluations) -> shorter.better(layout, tiled.evaluations() + evaluations);
    return new SearchRun(plan, exact, request.part(1 - TILED), after)
        .outcome(Stream.concat(start.stream(), tiled.layout().stream()).toList())
        .after(tiled.evaluations());
  }

  /**
   * Searches on from a layout and from nothing else: what overlaps is parted first, or laid where
   * there is room.
   *
   * @throws IllegalArgumentException if the start doesn't have a pose for each copy
   * @see #run
   */
  public Outcome goOn(Layout start, Request request, Listener listener) {
    requireComplete(start);
    return new SearchRun(prepared().plan, prepared().exact, request, new Shorter(listener))
        .goneOn(start);
  }

  /**
   * As {@link #run}, on outlines of few corners, which are quickly prepared: a layout to begin
   * with. Its length says roughly what a search would come to.
   */
  public Outcome roughly(Request request) {
    Plan rough = prepared().rough;
    return prepared().tiling.isPresent() || rough.least > strip.maxLength()
        ? run(Optional.empty(), request, Listener.NONE)
        : new SearchRun(rough, rough, request, Listener.NONE).outcome(List.of());
  }

  /** Passes on what is shorter than all before. */
  private static final class Shorter implements Listener {

    private final Listener listener;
    private double shortest = Double.POSITIVE_INFINITY;

    Shorter(Listener listener) {
      this.listener = listener;
    }

    @Override
    public synchronized void better(Layout layout, long evaluations) {
      if (layout.length() < shortest) {
        shortest = layout.length();
        listener.better(layout, evaluations);
      }
    }
  }

  private void requireComplete(Layout start) {
    if (start.poses().size() != strip.copies().size()) {
      throw new IllegalArgumentException(
          "a start of %d poses for %d copies"
              .formatted(start.poses().size(), strip.copies().size()));
    }
    for (int i = 0; i < strip.copies().size(); i++) {
      if (start.poses().get(i).form() >= strip.copies().get(i).size()) {
        throw new IllegalArgumentException("the start has a form that copy " + i + " has not");
      }
    }
  }
}
