package ellwand.nest.choice;

import static ellwand.nest.NesterTest.cloth;
import static ellwand.nest.NesterTest.lay;
import static ellwand.nest.NesterTest.rectangle;
import static ellwand.nest.NesterTest.wanted;
import static org.junit.jupiter.api.Assertions.assertEquals;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.LaidCloth;
import ellwand.lay.Lay;
import ellwand.nest.repeat.Phases;
import ellwand.pattern.Cut.How;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.optaplanner.core.api.solver.SolutionManager;

/** What choices cost, in micrometres of cloth. */
class LayConstraintsTest {

  private static final Cloth CLOTH = cloth(1000, 0, Direction.ANY_WAY, Fold.LENGTHWISE);

  /**
   * A half of 300 x 400 mm and a whole of 250 x 600 mm that only an opened stretch is wide enough
   * for.
   */
  private static LayPlan plan() {
    Lay lay =
        lay(
            CLOTH,
            wanted(rectangle("back", How.FOLD, 300, 400), 1),
            wanted(rectangle("skirt", How.WHOLE, 250, 600), 1));
    LaidCloth folded = LaidCloth.of(CLOTH, Fold.LENGTHWISE);
    return FirstPlan.of(lay, folded, new Phases(lay, folded));
  }

  private static long score(LayPlan plan) {
    SolutionManager.create(
            LaySolver.of(Request.of(Effort.ofSteps(1), new Seed(1)), false, List.of()))
        .update(plan);
    return plan.score().score();
  }

  /** 0.8 of the band is usually filled: 400 of 500 mm by 300 mm is expected to take just 300 mm. */
  @Test
  void whatIsNotYetPlacedCostsWhatItIsExpectedToTake() {
    assertEquals(-(300_000 + 250_000), score(plan()));
  }

  @Test
  void whatIsPlacedCostsItsLength() {
    LayPlan plan = plan();
    plan.lengths().get(0).measure(312.5);
    assertEquals(-(312_500 + 250_000), score(plan));
    plan.lengths().get(1).measure(251);
    assertEquals(-(312_500 + 251_000), score(plan));
  }

  @Test
  void decisionsAreExpectedToTakeWhatTheScoreSays() {
    LayPlan plan = plan();
    assertEquals(-score(plan) / 1000.0, plan.decision().expectedMm(), 0.001);
  }
}
