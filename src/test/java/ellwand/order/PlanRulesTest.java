package ellwand.order;

import static org.junit.jupiter.api.Assertions.assertEquals;

import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;
import org.optaplanner.core.api.solver.SolutionManager;

/**
 * Every rule, kept and broken, on 4 garments of size 10 and 2 of 12; at most 3 plies, 2 garments.
 */
class PlanRulesTest {

  private static final Numbers NUMBERS =
      new Numbers(
          new Order(
              Map.of("red", Orders.sizes("10=4, 12=2")),
              new Limits(3, 2, 2040, 40),
              new Tolerance(1, 0),
              new Cost(10, 2),
              Spreading.PLAIN),
          new GarmentLengths(Map.of("10", 1000.0, "12", 1001.0)));

  private static final SolutionManager<PlanBoard, BendableLongScore> MANAGER =
      SolutionManager.create(PlanSearch.solvers(new Seed(1)));

  private static Spread spread(int tens, int twelves, int plies) {
    return new Spread(new int[] {tens, twelves}, new int[] {plies});
  }

  /** What each rule takes off, 0 left out. */
  private static Map<String, BendableLongScore> broken(Spread... spreads) {
    PlanningBudget budget = new PlanningBudget(Request.of(Effort.ofSteps(1), new Seed(1)));
    PlanBoard board = new PlanBoard(NUMBERS, List.of(spreads), budget, 1);
    Map<String, BendableLongScore> broken = new TreeMap<>();
    MANAGER
        .explain(board)
        .getConstraintMatchTotalMap()
        .values()
        .forEach(
            total -> {
              if (!total.getScore().isZero()) {
                broken.put(total.getConstraintName(), total.getScore());
              }
            });
    return broken;
  }

  private static BendableLongScore hard(long amount) {
    return BendableLongScore.ofHard(1, 4, 0, -amount);
  }

  private static BendableLongScore soft(int level, long amount) {
    return BendableLongScore.ofSoft(1, 4, level, -amount);
  }

  @Test
  void aGoodPlanHasCostClothAndLaysOnly() {
    // 2 plies of two tens and 2 of one twelve: (2040 x 2 + 1041 x 2) mm, 2 a metre, 10 a lay.
    assertEquals(
        Map.of(
            "least cost", soft(0, 323_240_000_000L),
            "least cloth", soft(1, 6_162_000),
            "fewest lays", soft(2, 2)),
        broken(spread(2, 0, 2), spread(0, 1, 2)));
  }

  @Test
  void whatCutsNothingIsNoLay() {
    assertEquals(
        broken(spread(2, 0, 2), spread(0, 1, 2)),
        broken(spread(2, 0, 2), spread(0, 1, 2), spread(1, 1, 0), spread(0, 0, 3)));
  }

  @Test
  void outsideTheToleranceIsBroken() {
    // Six tens are one too many; no twelve is two too few.
    Map<String, BendableLongScore> broken = broken(spread(2, 0, 3));
    assertEquals(hard(3), broken.get("cut within tolerance"));
    assertEquals(soft(3, 4), broken.get("close to the order"));
  }

  @Test
  void withinTheToleranceOnlyDeviates() {
    Map<String, BendableLongScore> broken = broken(spread(2, 0, 2), spread(0, 1, 3));
    assertEquals(null, broken.get("cut within tolerance"));
    assertEquals(soft(3, 1), broken.get("close to the order"));
  }

  @Test
  void tooManyGarmentsInAMarker() {
    assertEquals(hard(1), broken(spread(3, 0, 1)).get("garments a marker may hold"));
    assertEquals(null, broken(spread(2, 0, 1)).get("garments a marker may hold"));
  }

  @Test
  void tooManyPliesInALay() {
    assertEquals(hard(2), broken(spread(1, 0, 5)).get("plies a lay may have"));
    assertEquals(null, broken(spread(1, 0, 3)).get("plies a lay may have"));
  }

  @Test
  void tooLongForTheTable() {
    assertEquals(hard(1), broken(spread(1, 1, 1)).get("marker fits the table"));
    assertEquals(null, broken(spread(2, 0, 1)).get("marker fits the table"));
  }

  @Test
  void theRulesAndTheValueOfAPlanAgree() {
    List<Spread> plan = List.of(spread(2, 0, 2), spread(0, 1, 3));
    Value value = NUMBERS.value(plan);
    assertEquals(
        Map.of(
            "least cost", soft(0, value.cost()),
            "least cloth", soft(1, value.cloth()),
            "fewest lays", soft(2, value.lays()),
            "close to the order", soft(3, value.deviation())),
        broken(plan.get(0), plan.get(1)));
  }
}
