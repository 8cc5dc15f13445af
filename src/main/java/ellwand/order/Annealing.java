package ellwand.order;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;

/**
 * Looks for a plan of a fixed number of lays: small changes of one lay at a time, accepted by
 * simulated annealing (Kirkpatrick, Gelatt and Vecchi, Science 220, 1983). Sets outside the
 * tolerance are allowed meanwhile and count against a plan; what remains of them is for {@link
 * Mending}.
 */
final class Annealing {

  /** How much the cloth of a garment counts against one set outside the tolerance. */
  private static final double CLOTH_SHARE = 0.02;

  private static final double LAST_TEMPERATURE = 0.3;

  private final Numbers numbers;
  private final SplittableRandom random;
  private final List<Spread> kept;
  private final Spread[] plan;

  /** Of one turn of each lay. */
  private final double[] weights;

  private final int[][] sets;

  /**
   * @param kept lays that stay as they are
   * @param lays how many are planned besides them
   */
  Annealing(Numbers numbers, List<Spread> kept, int lays, SplittableRandom random) {
    this.numbers = numbers;
    this.random = random;
    this.kept = kept;
    this.sets = numbers.sets(kept);
    this.plan = new Spread[lays];
    this.weights = new double[lays];
    Arrays.setAll(plan, k -> numbers.nothing());
  }

  /** Goes on from a plan, all of whose lays may change. */
  static Annealing of(Numbers numbers, List<Spread> plan, SplittableRandom random) {
    Annealing annealing = new Annealing(numbers, List.of(), plan.size(), random);
    for (int k = 0; k < plan.size(); k++) {
      annealing.replace(k, plan.get(k));
    }
    return annealing;
  }

  /** Cools down over so many steps, or until the budget is over. */
  List<Spread> run(long steps, PlanningBudget budget) {
    return run(firstTemperature(), steps, budget);
  }

  /**
   * The same from a temperature: the garments missing or too many that a change may bring at first.
   */
  List<Spread> run(double first, long steps, PlanningBudget budget) {
    for (long i = 0; i < steps && !budget.over(); i++) {
      step(first * Math.pow(LAST_TEMPERATURE / first, (double) i / steps));
      budget.use();
    }
    return Stream.concat(kept.stream(), Arrays.stream(plan)).toList();
  }

  private void step(double temperature) {
    for (int i = 0; i < PlanningBudget.TRIES; i++) {
      int lay = random.nextInt(plan.length);
      Spread tried = Change.of(plan[lay], numbers, random);
      if (tried != null && rise(lay, tried) <= -temperature * Math.log(random.nextDouble())) {
        replace(lay, tried);
      }
    }
  }

  /** A third of what is missing of a size and colour on average. */
  private double firstTemperature() {
    double missing = 0;
    for (int c = 0; c < sets.length; c++) {
      for (int s = 0; s < sets[c].length; s++) {
        missing += numbers.outside(c, s, sets[c][s]);
      }
    }
    return Math.max(1, missing / (3.0 * sets.length * sets[0].length));
  }

  /** How much worse the plan becomes. */
  private double rise(int lay, Spread to) {
    Spread from = plan[lay];
    double weight = to.mix() == from.mix() ? weights[lay] : weight(to.mix());
    double rise = CLOTH_SHARE * (to.totalTurns() * weight - from.totalTurns() * weights[lay]);
    for (int c = 0; c < sets.length; c++) {
      int before = from.turns()[c];
      int after = to.turns()[c];
      // Most changes leave most colours alone.
      if (before == after && (before == 0 || to.mix() == from.mix())) {
        continue;
      }
      for (int s = 0; s < sets[c].length; s++) {
        int change = to.mix()[s] * after - from.mix()[s] * before;
        if (change != 0) {
          rise += numbers.outside(c, s, sets[c][s] + change) - numbers.outside(c, s, sets[c][s]);
        }
      }
    }
    return rise;
  }

  private double weight(int[] mix) {
    return Spread.sum(mix) == 0 ? 0 : numbers.turnWeight(mix);
  }

  private void replace(int lay, Spread to) {
    Spread from = plan[lay];
    for (int c = 0; c < sets.length; c++) {
      for (int s = 0; s < sets[c].length; s++) {
        sets[c][s] += to.mix()[s] * to.turns()[c] - from.mix()[s] * from.turns()[c];
      }
    }
    plan[lay] = to;
    weights[lay] = weight(to.mix());
  }
}
