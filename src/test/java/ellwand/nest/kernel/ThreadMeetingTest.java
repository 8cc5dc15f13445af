package ellwand.nest.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.NoFitUnion;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import ellwand.work.Stop;
import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What threads hear of one another, and that they wait for nobody who waits for them. */
class ThreadMeetingTest {

  private final Strip strip = Shapes.stars(2, 3, 7);
  private final Plan plan =
      new Plan(strip, new Outlines(strip.shapes(), Set.of(), NoFitUnion::rings, 0));
  private final ThreadMeeting meeting = new ThreadMeeting(plan, Listener.NONE, 2);
  private final ThreadBudget first = budget(0);
  private final ThreadBudget second = budget(1);

  private ThreadBudget budget(int thread) {
    return new ThreadBudget(Effort.ofSteps(1_000_000), new Stop(), meeting, thread);
  }

  private Snapshot begun() {
    first.found(new OpeningLayout(new Arrangement(plan, first)).lay(first));
    second.best = first.best;
    second.meet();
    return first.best;
  }

  private static Snapshot cut(Snapshot whole, double length) {
    return new Snapshot(length, whole.form, whole.x, whole.y);
  }

  /** As if the second had worked until they meet. */
  private void meetOnceMore() {
    second.evaluations += 500_000;
    assertFalse(second.spent());
  }

  @Test
  void threadsTakeOverWhatIsMuchShorterUnlessTheyAreApart() {
    Snapshot start = begun();
    Snapshot shorter = cut(start, start.length * 0.98);
    meeting.leave(0, shorter);
    second.apart(true);
    meetOnceMore();
    assertSame(start, second.best);
    second.apart(false);
    meetOnceMore();
    assertSame(shorter, second.best, "of one that ended long ago");
  }

  @Test
  void nobodySeeksOnWhereOneCanFindNothingShorter() {
    Snapshot start = begun();
    second.apart(true);
    meeting.leave(0, cut(start, plan.least));
    assertFalse(second.atLeast(plan));
    meetOnceMore();
    assertTrue(second.atLeast(plan));
  }

  /** All copies on one place take longer to part than threads search between two meetings. */
  @Test
  void aLongPartingAtTheBeginningIsDoneByOneThreadAlone() {
    Strip many = Shapes.stars(4, 25, 9);
    StripSearch search = new StripSearch(many, NoFitUnion::rings);
    Layout laid =
        search
            .run(Optional.empty(), Request.of(Effort.ofSteps(1), new Seed(1)), Listener.NONE)
            .layout()
            .orElseThrow();
    Layout heap = new Layout(Collections.nCopies(100, laid.poses().get(0)), laid.length() / 2);
    Request request = Request.of(Effort.ofSteps(1_200), new Seed(1)).onThreads(2);
    Outcome outcome =
        assertTimeoutPreemptively(
            Duration.ofMinutes(2), () -> search.goOn(heap, request, Listener.NONE));
    assertTrue(outcome.evaluations() >= 600_000, "more than until they would meet");
    outcome.layout().ifPresent(layout -> assertEquals(List.of(), Shapes.faults(many, layout)));
  }
}
