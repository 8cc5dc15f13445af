package ellwand.order;

import ellwand.work.Effort;
import ellwand.work.Progress;
import ellwand.work.Seed;
import ellwand.work.Stop;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Makes cut-order plans. A small order is tried out completely; for a larger one, plans are
 * searched with fixed numbers of lays, from the lower bound upwards, in rounds that grow longer
 * while fewer numbers stay in.
 *
 * <p>The same order, lengths, seed and step-limited effort give the same plan.
 */
public final class OrderPlanner {

  /** Steps of the first round for each number of lays. */
  private static final int FIRST_STEPS = 100;

  /** Most numbers of lays in the first round. */
  private static final int MOST_COUNTS = 12;

  /** Fewest numbers of lays in later rounds. */
  private static final int LEAST_COUNTS = 3;

  private final Numbers numbers;
  private final LowerBounds bounds;
  private final SplittableRandom random;
  private final Stop stop;
  private final Budget budget;
  private final Mending mending;
  private final PlanSearch search;

  private List<Spread> best;
  private Value bestValue;

  private OrderPlanner(Numbers numbers, Effort effort, Seed seed, Stop stop, Progress progress) {
    this.numbers = numbers;
    this.bounds = LowerBounds.of(numbers);
    this.random = seed.generator();
    this.stop = stop;
    this.budget = new Budget(effort, stop, progress);
    this.mending = new Mending(numbers, new Filling(numbers, random));
    this.search = new PlanSearch(seed, budget);
  }

  /**
   * Plans an order.
   *
   * @param lengths marker lengths to plan with; call again with better ones to improve the plan
   * @return the best plan found; see its {@link CutOrderPlan#misses}
   * @throws ellwand.pattern.InputException if a size has no length or is too long for the table
   */
  public static CutOrderPlan plan(
      Order order, MarkerLengths lengths, Effort effort, Seed seed, Stop stop, Progress progress) {
    return new OrderPlanner(new Numbers(order, lengths), effort, seed, stop, progress).run();
  }

  private CutOrderPlan run() {
    best = mending.mend(List.of());
    bestValue = numbers.value(best);
    Enumeration enumeration = new Enumeration(numbers, bounds, best, budget);
    boolean proved = enumeration.run();
    keep(enumeration.best());
    if (!proved) {
      rounds();
      proved = !promising(bounds.lays());
    }
    List<Miss> misses = InWords.misses(numbers);
    return new CutOrderPlan(
        numbers.order,
        InWords.lays(numbers, best),
        bounds,
        proved && misses.isEmpty(),
        misses,
        stop.wanted());
  }

  /**
   * Each round keeps the better half of the numbers of lays and looks twice as long at each. Half
   * of its steps are the rule solver's, which goes on from the best plan.
   */
  private void rounds() {
    List<Integer> counts = firstCounts();
    long steps = FIRST_STEPS;
    while (!budget.over() && promising(bounds.lays()) && !counts.isEmpty()) {
      counts = round(counts, steps);
      long affordable = budget.left() / 2 / Math.max(1, counts.size());
      // What would be left after the next round is too little for one more: use it now.
      steps = affordable < 5 * steps ? Math.max(1, affordable) : 2 * steps;
    }
  }

  private List<Integer> firstCounts() {
    int first = Math.max(1, bounds.lays());
    int last = Math.min(best.size() + 1, first + first / 2 + 4);
    int stride = Numbers.ceilDiv(last - first + 1, MOST_COUNTS);
    return IntStream.iterate(first, k -> k <= last, k -> k + stride).boxed().toList();
  }

  private List<Integer> round(List<Integer> counts, long steps) {
    record Found(int lays, List<Spread> plan, Value value) {}
    List<Found> found = new ArrayList<>();
    for (int lays : counts) {
      if (!budget.over() && promising(lays)) {
        List<Spread> plan =
            mending.mend(new Annealing(numbers, List.of(), lays, random).run(steps, budget));
        found.add(new Found(lays, plan, numbers.value(plan)));
        keep(plan);
      }
    }
    found.sort(Comparator.comparing(Found::value));
    if (!found.isEmpty() && !budget.over() && promising(bounds.lays())) {
      keep(search.run(numbers, best, steps * counts.size()));
    }
    int stay = Math.min(found.size(), Math.max(LEAST_COUNTS, (found.size() + 1) / 2));
    return found.subList(0, stay).stream().map(Found::lays).sorted().toList();
  }

  /** Whether a plan of so many lays, or more, could be better than the best. */
  private boolean promising(int lays) {
    return bounds.best(numbers, lays).compareTo(bestValue) < 0;
  }

  private void keep(List<Spread> plan) {
    Value value = numbers.value(plan);
    if (value.compareTo(bestValue) < 0) {
      best = plan;
      bestValue = value;
    }
    budget.tell(bestValue);
  }
}
