package ellwand.order;

import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import ellwand.work.Stop;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Makes cut-order plans. A small order is tried out completely; for a larger one drafts with fixed
 * numbers of lays are searched, a few lays more or fewer than the best plan has, in turn with the
 * rule solver, which goes on from the best plan. One size a lay is always among the plans.
 *
 * <p>A tolerance never makes a plan dearer: the same order is first planned without, in half the
 * time or more, or with as many steps again.
 *
 * <p>The same order, lengths, seed and step-limited effort give the same plan. Plans on the thread
 * that calls, whatever threads the request names; calls share nothing.
 */
public final class OrderPlanner {

  /** Drafts in the first round; each later round is longer by a half. */
  private static final int FIRST_DRAFTS = 16;

  /** A lay that costs as much as the cloth of so many garments is worth cutting some over. */
  private static final double DEAR_LAY = 5;

  private final Numbers numbers;
  private final LowerBounds bounds;
  private final SplittableRandom random;
  private final Stop stop;
  private final PlanningBudget budget;
  private final Mending mending;
  private final PlanSearch search;
  private final List<Drafting> drafting;

  private List<Spread> best;
  private Value bestValue;

  private OrderPlanner(Numbers numbers, Request request) {
    this.numbers = numbers;
    this.bounds = LowerBounds.of(numbers);
    this.random = request.seed().generator();
    this.stop = request.stop();
    this.budget = new PlanningBudget(request);
    this.mending = new Mending(numbers, new Filling(numbers, random));
    this.search = new PlanSearch(request.seed(), budget);
    this.drafting =
        (numbers.exact() ? List.of(numbers) : List.of(numbers.withoutSurplus(), numbers))
            .stream().map(n -> new Drafting(n, random, budget)).toList();
    this.best = new OneSizeALay(numbers).plan();
    this.bestValue = numbers.value(best);
  }

  /**
   * Plans an order.
   *
   * @param lengths marker lengths to plan with; call again with better ones to improve the plan
   * @return the best plan found; see its {@link CutOrderPlan#misses}
   * @throws ellwand.problem.InputException if a size has no length or is too long for the table
   */
  public static CutOrderPlan plan(Order order, MarkerLengths lengths, Request request) {
    OrderPlanner planner = new OrderPlanner(new Numbers(order, lengths), request);
    if (planner.tryAll()) {
      return planner.plan(true);
    }
    Order exact = order.exactly();
    if (!exact.equals(order)) {
      OrderPlanner without =
          new OrderPlanner(new Numbers(exact, lengths), planner.budget.again(planner.exactShare()));
      if (!without.tryAll()) {
        without.rounds();
      }
      planner.keep(without.best);
    }
    return planner.rounds();
  }

  /** The plain plan, every lay of which has one size only, as well as can be. */
  public static CutOrderPlan oneSizeALay(Order order, MarkerLengths lengths) {
    return new OrderPlanner(new Numbers(order, lengths), Request.of(Effort.ofSteps(1), new Seed(1)))
        .plan(false);
  }

  /** Garments over seldom pay for a lay that costs less than a few; what is under always pays. */
  private double exactShare() {
    boolean seldomPays = numbers.order.tolerance().under() == 0 && numbers.layWeight() < DEAR_LAY;
    return seldomPays ? 0.8 : 0.4;
  }

  private CutOrderPlan plan(boolean proved) {
    List<Miss> misses = InWords.misses(numbers);
    return new CutOrderPlan(
        numbers.order,
        InWords.lays(numbers, best),
        bounds,
        proved && misses.isEmpty(),
        misses,
        stop.wanted());
  }

  /** Whether the best plan is known to be the best there is, since every plan was tried. */
  private boolean tryAll() {
    keep(mending.mend(List.of()));
    Enumeration enumeration = new Enumeration(numbers, bounds, best, budget);
    boolean proved = enumeration.run();
    keep(enumeration.best());
    return proved;
  }

  private CutOrderPlan rounds() {
    for (int lays = Math.max(1, bounds.lays()); lays <= best.size() && goOn(); lays++) {
      if (promising(lays)) {
        draft(lays);
      }
    }
    double drafts = FIRST_DRAFTS;
    while (goOn()) {
      long before = budget.used();
      for (int i = 0; i < drafts && goOn(); i++) {
        draft(lays());
      }
      if (goOn()) {
        keep(search.run(numbers, best, budget.used() - before));
      }
      drafts *= 1.5;
    }
    return plan(!promising(bounds.lays()));
  }

  private boolean goOn() {
    return !budget.over() && promising(bounds.lays());
  }

  private void draft(int lays) {
    keep(mending.mend(drafting.get(random.nextInt(drafting.size())).next(lays)));
  }

  /** One or two lays fewer than the best plan mostly, sometimes as many or one more. */
  private int lays() {
    int[] more = {-1, -1, -1, -1, -2, -2, 0, 1};
    int lays = best.size() + more[random.nextInt(more.length)];
    while (lays > bounds.lays() && !promising(lays)) {
      lays--;
    }
    return Math.max(1, Math.max(bounds.lays(), lays));
  }

  /** Whether a plan of so many lays, or more, could be better than the best. */
  private boolean promising(int lays) {
    return bounds.best(numbers, lays).compareTo(bestValue) < 0;
  }

  private void keep(List<Spread> plan) {
    Value value = numbers.value(plan);
    if (numbers.within(plan) && value.compareTo(bestValue) < 0) {
      best = plan;
      bestValue = value;
    }
    budget.tell(bestValue);
  }
}
