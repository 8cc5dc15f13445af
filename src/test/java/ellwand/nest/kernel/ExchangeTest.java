package ellwand.nest.kernel;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.NoFitUnion;
import ellwand.work.Effort;
import ellwand.work.Seed;
import ellwand.work.Stop;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Which copies change places, and what is reckoned of it. */
class ExchangeTest {

  private static final double WALL = 5;

  private final Dice dice = new Dice(new Seed(2));

  private static Arrangement on(Strip strip) {
    Plan plan = new Plan(strip, new Outlines(strip.shapes(), Set.of(), NoFitUnion::rings, 0));
    ThreadMeeting meeting = new ThreadMeeting(plan, Listener.NONE, 1);
    return new Arrangement(plan, new ThreadBudget(Effort.ofSteps(1000), new Stop(), meeting, 0));
  }

  /** Two boxes as wide as the strip, before a wall and behind it, on a strip of 13 + a wall. */
  private static Arrangement boxes(double before, double behind, double wallAt) {
    List<Shape> shapes =
        List.of(Shapes.box(before, 10), Shapes.box(behind, 10), Shapes.box(WALL, 10));
    List<List<StripForm>> copies = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      copies.add(List.of(StripForm.within(10, i, shapes.get(i))));
    }
    List<Obstacle> wall = List.of(new Obstacle(2, wallAt, 0));
    Arrangement arrangement = on(new Strip(shapes, copies, wall, 13 + WALL));
    double[] x = {before / 2, 13 + WALL - behind / 2};
    arrangement.take(new Snapshot(13 + WALL, new int[2], x, new double[] {5, 5}));
    return arrangement;
  }

  private void attempt(Arrangement arrangement, int copy) {
    new Exchange(arrangement, dice, new Descent(arrangement)).attempt(copy);
  }

  @Test
  void theLongerOneGoesWhereThereIsRoomForIt() {
    Arrangement arrangement = boxes(7, 6, 6);
    assertEquals(1, arrangement.clashes[0], "7 before the wall where there are 6");
    attempt(arrangement, 0);
    assertEquals(0, arrangement.total());
    assertTrue(arrangement.x[0] > 6 + WALL && arrangement.x[1] < 6, "they changed sides");
  }

  @Test
  void whatGainsNothingStays() {
    Arrangement lawful = boxes(6, 7, 6);
    double[] x = lawful.x.clone();
    attempt(lawful, 0);
    attempt(lawful, 1);
    assertArrayEquals(x, lawful.x);
    Arrangement unlike = boxes(10.5, 2, 2.5);
    x = unlike.x.clone();
    attempt(unlike, 0);
    assertTrue(unlike.clashes[0] > 0, "more than four times the area of the other");
    assertArrayEquals(x, unlike.x);
  }

  @Test
  void nothingThatIsTriedCostsMoreAndDepthsAreKept() {
    Strip strip = Shapes.stars(4, 5, 9);
    Arrangement arrangement = on(strip);
    Plan plan = arrangement.plan;
    int[] form = new int[plan.copies];
    double[] x = new double[plan.copies];
    double[] y = new double[plan.copies];
    for (int i = 0; i < plan.copies; i++) {
      Kind kind = plan.kinds[plan.kind[i]];
      form[i] = dice.below(kind.forms);
      x[i] = dice.between(kind.lowX[form[i]], 100 - kind.reach[form[i]]);
      y[i] = dice.between(kind.lowY[form[i]], kind.highY[form[i]]);
    }
    arrangement.take(new Snapshot(100, form, x, y));
    int changed = 0;
    double all = all(arrangement);
    for (int i = 0; i < 300; i++) {
      attempt(arrangement, dice.below(plan.copies));
      double now = all(arrangement);
      assertTrue(now <= all * (1 + 1e-12), all + " became " + now);
      changed += now < all ? 1 : 0;
      all = now;
    }
    assertTrue(changed > 3, changed + " changed places");
    double total = arrangement.total();
    arrangement.take(arrangement.snapshot());
    assertEquals(total, arrangement.total(), 1e-9 * total, "measured anew");
  }

  private static double all(Arrangement arrangement) {
    double all = 0;
    for (int i = 0; i < arrangement.copies; i++) {
      all += arrangement.cost(i) / 2;
    }
    return all;
  }
}
