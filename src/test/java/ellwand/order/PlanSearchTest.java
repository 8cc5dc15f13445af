package ellwand.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The searches that larger orders rely on, each alone. */
class PlanSearchTest {

  private static final Numbers LARGE = new Numbers(Orders.large(0), Orders.childrensLengths());

  private static PlanningBudget budget(long steps) {
    return new PlanningBudget(Request.of(Effort.ofSteps(steps), new Seed(1)));
  }

  private static Mending mending() {
    return new Mending(LARGE, new Filling(LARGE, new SplittableRandom(1)));
  }

  private static void assertWithinTolerance(List<Spread> plan) {
    int[][] sets = LARGE.sets(plan);
    for (int c = 0; c < sets.length; c++) {
      for (int s = 0; s < sets[c].length; s++) {
        assertEquals(0, LARGE.outside(c, s, sets[c][s]));
      }
    }
    for (Spread spread : plan) {
      assertTrue(LARGE.fits(spread.mix()) && spread.totalTurns() <= LARGE.maxTurns);
    }
  }

  @Test
  void fillingAloneCutsTheOrder() {
    assertWithinTolerance(mending().mend(List.of()));
  }

  @Test
  void annealingNeedsFarFewerLaysThanFilling() {
    List<Spread> filled = mending().mend(List.of());
    List<Spread> annealed =
        mending()
            .mend(
                new Annealing(LARGE, List.of(), 14, new SplittableRandom(1)).run(200, budget(200)));
    assertWithinTolerance(annealed);
    assertTrue(annealed.size() <= filled.size() - 3, annealed.size() + " of " + filled.size());
  }

  @Test
  void theRuleSolverImprovesAPlanAndKeepsItsLimits() {
    List<Spread> filled = mending().mend(List.of());
    List<Spread> solved = new PlanSearch(new Seed(1), budget(600)).run(LARGE, filled, 600);
    assertWithinTolerance(solved);
    assertTrue(LARGE.value(solved).compareTo(LARGE.value(filled)) < 0);
  }

  @Test
  void mendingTakesOffWhatIsTooMuch() {
    int[] mix = LARGE.one(0);
    int[] turns = new int[LARGE.colours.size()];
    turns[0] = LARGE.most[0][0] + 5;
    List<Spread> mended = mending().mend(List.of(new Spread(mix, turns)));
    assertWithinTolerance(mended);
  }
}
