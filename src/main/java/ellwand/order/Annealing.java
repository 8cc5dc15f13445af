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
  private static final double CLOTH_SHARE = 0.2;

  private static final double LAST_TEMPERATURE = 0.01;

  private final Numbers numbers;
  private final SplittableRandom random;
  private final List<Spread> kept;
  private final Spread[] plan;
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
    Arrays.setAll(plan, k -> numbers.nothing());
  }

  /** Cools down over so many steps, or until the budget is over. */
  List<Spread> run(long steps, Budget budget) {
    double first = firstTemperature();
    for (long i = 0; i < steps && !budget.over(); i++) {
      step(first * Math.pow(LAST_TEMPERATURE / first, (double) i / steps));
      budget.use();
    }
    return Stream.concat(kept.stream(), Arrays.stream(plan)).toList();
  }

  private void step(double temperature) {
    for (int i = 0; i < Budget.TRIES; i++) {
      int lay = random.nextInt(plan.length);
      Spread tried = Change.of(plan[lay], numbers, random);
      if (tried != null && rise(plan[lay], tried) <= -temperature * Math.log(random.nextDouble())) {
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
  private double rise(Spread from, Spread to) {
    long outside = 0;
    for (int c = 0; c < sets.length; c++) {
      for (int s = 0; s < sets[c].length; s++) {
        int change = to.mix()[s] * to.turns()[c] - from.mix()[s] * from.turns()[c];
        if (change != 0) {
          outside += numbers.outside(c, s, sets[c][s] + change) - numbers.outside(c, s, sets[c][s]);
        }
      }
    }
    return outside + CLOTH_SHARE * (weight(to) - weight(from));
  }

  private double weight(Spread spread) {
    return spread.empty() ? 0 : spread.totalTurns() * numbers.turnWeight(spread.mix());
  }

  private void replace(int lay, Spread to) {
    Spread from = plan[lay];
    for (int c = 0; c < sets.length; c++) {
      for (int s = 0; s < sets[c].length; s++) {
        sets[c][s] += to.mix()[s] * to.turns()[c] - from.mix()[s] * from.turns()[c];
      }
    }
    plan[lay] = to;
  }
}
