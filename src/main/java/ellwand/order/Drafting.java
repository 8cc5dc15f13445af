package ellwand.order;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Works on drafts: plans of a fixed number of lays that may still cut too little or too much. Each
 * is annealed again and again, its plies exchanged after that, and the better one stays; one that
 * has not become better for long is begun anew.
 */
final class Drafting {

  private static final long FIRST_STEPS = 300;
  private static final long LATER_STEPS = 100;

  /** How hot a draft becomes again, in garments. */
  private static final double LEAST_HEAT = 2;

  private static final double MOST_HEAT = 15;
  private static final int PATIENCE = 40;

  /** Sets that may lie outside the tolerance, a colour, for an exchange of plies to be tried. */
  private static final int NEAR = 8;

  /** How many more drafts than this one should be possible with the steps that are left. */
  private static final int DRAFTS = 20;

  private record LayDraft(List<Spread> plan, long outside, long cloth, int tries) {

    /** As good a draft replaces one that lacks something, so that the search moves on. */
    boolean replaces(LayDraft last) {
      return outside < last.outside
          || outside == last.outside && (outside > 0 || cloth < last.cloth);
    }

    boolean better(LayDraft last) {
      return outside < last.outside || outside == last.outside && cloth < last.cloth;
    }

    LayDraft after(int tries) {
      return new LayDraft(plan, outside, cloth, tries);
    }
  }

  private final Numbers numbers;
  private final SplittableRandom random;
  private final PlanningBudget budget;
  private final PlyExchange exchange;
  private final Map<Integer, LayDraft> drafts = new HashMap<>();

  Drafting(Numbers numbers, SplittableRandom random, PlanningBudget budget) {
    this.numbers = numbers;
    this.random = random;
    this.budget = budget;
    this.exchange = new PlyExchange(numbers, random, budget);
  }

  /** Another draft of so many lays. */
  List<Spread> next(int lays) {
    LayDraft last = drafts.get(lays);
    boolean first = last == null || last.tries() > PATIENCE;
    LayDraft next = draft(exchanged(first ? fresh(lays) : again(last)));
    if (first) {
      drafts.put(lays, next);
    } else {
      int tries = next.better(last) ? 0 : last.tries() + 1;
      drafts.put(lays, (next.replaces(last) ? next : last).after(tries));
    }
    return next.plan();
  }

  private List<Spread> exchanged(List<Spread> plan) {
    return numbers.outside(plan) <= NEAR * numbers.colours.size() ? exchange.exchange(plan) : plan;
  }

  private List<Spread> fresh(int lays) {
    return new Annealing(numbers, List.of(), lays, random).run(steps(FIRST_STEPS), budget);
  }

  private List<Spread> again(LayDraft last) {
    double heat = LEAST_HEAT + (MOST_HEAT - LEAST_HEAT) * random.nextDouble();
    return Annealing.of(numbers, last.plan(), random).run(heat, steps(LATER_STEPS), budget);
  }

  private long steps(long most) {
    return Math.max(1, Math.min(most, budget.left() / DRAFTS));
  }

  private LayDraft draft(List<Spread> plan) {
    return new LayDraft(plan, numbers.outside(plan), numbers.cloth(plan), 0);
  }
}
