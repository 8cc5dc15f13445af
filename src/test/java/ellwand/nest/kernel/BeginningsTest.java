package ellwand.nest.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.NoFitUnion;
import ellwand.work.Effort;
import ellwand.work.Seed;
import ellwand.work.Stop;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Which of several beginnings goes on, and when there are several. */
class BeginningsTest {

  private final Stop stop = new Stop();
  private final List<Layout> heard = new ArrayList<>();
  private final Dice dice = new Dice(new Seed(3));
  private final List<Seeking> begun = new ArrayList<>();
  private Strip strip;
  private Plan plan;
  private ThreadBudget budget;
  private Arrangement arrangement;
  private Snapshot start;
  private Beginnings beginnings;

  @BeforeEach
  void stars() {
    on(Shapes.stars(2, 3, 7));
  }

  private void on(Strip laid) {
    strip = laid;
    plan = new Plan(strip, new Outlines(strip.shapes(), Set.of(), NoFitUnion::rings, 0));
    ThreadMeeting meeting = new ThreadMeeting(plan, (layout, evaluations) -> heard.add(layout), 1);
    budget = new ThreadBudget(Effort.ofSteps(12_000), stop, meeting, 0);
    arrangement = new Arrangement(plan, budget);
    start = new OpeningLayout(arrangement).lay(budget);
    budget.found(start);
    beginnings = new Beginnings(plan, budget, this::begin);
  }

  private Seeking begin() {
    begun.add(new Seeking(arrangement, budget, dice, start));
    return begun.get(begun.size() - 1);
  }

  @Test
  void theShortestGoesOnAndAllHadATurn() {
    Seeking farthest = beginnings.farthest(begin(), 2);
    assertEquals(4, begun.size());
    assertTrue(budget.share() >= 0.5 && budget.share() < 0.7, "used " + budget.share());
    for (Seeking seeking : begun) {
      assertTrue(seeking.length() < start.length, "each had a turn");
      assertTrue(farthest.length() <= seeking.length(), "the shortest is left");
    }
    farthest.run(Seeking.SOUGHT);
    assertEquals(farthest.length(), budget.best.length, "the budget's best is its own");
    assertEquals(List.of(), Shapes.faults(strip, budget.best.layout(plan)));
    assertEquals(heard.get(heard.size() - 1).length(), budget.best.length, "it was told last");
  }

  /** Four rectangles round a square, on a square. */
  @Test
  void noneGoesOnWhenNothingShorterIsPossible() {
    List<Shape> shapes = List.of(Shapes.box(6, 4), Shapes.box(4, 6), Shapes.box(2, 2));
    List<List<StripForm>> copies = new ArrayList<>();
    for (int shape : new int[] {0, 0, 1, 1, 2}) {
      copies.add(List.of(StripForm.within(10, shape, shapes.get(shape))));
    }
    on(Strip.open(shapes, copies));
    assertTrue(start.length > 10.5, "it is not laid so at first");
    assertEquals(10, beginnings.farthest(begin(), 3).length(), 1e-4);
    assertEquals(1, begun.stream().filter(seeking -> seeking.length() < 10.001).count());
  }

  @Test
  void aStopLeavesTheShortestSoFar() {
    Seeking first = begin();
    first.run(0.3);
    stop.request();
    assertSame(first, beginnings.farthest(first, 3));
    first.run(Seeking.SOUGHT);
    assertTrue(budget.best.length < start.length);
  }

  @Test
  void onlyLongSearchesBeginSeveralTimes() {
    assertEquals(0, Beginnings.rounds(100_000, 5), "a small lay, some fifteen seconds");
    assertEquals(0, Beginnings.rounds(360_000, 64), "a large one, a minute");
    assertEquals(4, Beginnings.rounds(7_000_000, 99), "twenty minutes");
    int before = 0;
    for (double steps = 1000; steps < 1e10; steps *= 1.1) {
      int rounds = Beginnings.rounds(steps, 30);
      assertTrue(rounds >= before && rounds <= Beginnings.rounds(steps, 29));
      before = rounds;
    }
    assertEquals(4, before);
  }
}
