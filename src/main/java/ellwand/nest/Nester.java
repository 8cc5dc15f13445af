package ellwand.nest;

import ellwand.cloth.Fold;
import ellwand.cloth.LaidCloth;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.rule.Check;
import ellwand.work.Effort;
import ellwand.work.Progress;
import ellwand.work.Seed;
import ellwand.work.Stop;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.impl.phase.custom.CustomPhaseCommand;

/** Makes markers. */
public final class Nester {

  private Nester() {}

  /**
   * The best marker found for a lay on a cloth folded so.
   *
   * <p>The same lay, seed, thread count and step-limited effort give the same marker. When a stop
   * is wanted the best so far is returned, the construction at least.
   *
   * <p>On a remnant it may turn out longer than that is: then no more was found to fit.
   *
   * @param progress hears of every better marker
   * @throws NoRoomException if a piece fits into no zone
   */
  public static Marker nest(
      Lay lay, Fold fold, Effort effort, Seed seed, int threads, Stop stop, Progress progress) {
    LaidCloth cloth = LaidCloth.of(lay.cloth(), fold);
    Phases repeat = new Phases(lay);
    LayPlan plan = Choices.first(lay, cloth, repeat);
    Placing placing = new Placing(lay, cloth, repeat, effort, seed, threads, stop, progress);
    boolean choices = !Choices.neighbours(plan, plan.decision()).isEmpty();
    boolean stationsDiffer = plan.servings().stream().anyMatch(s -> s.stations().size() > 1);
    List<CustomPhaseCommand<LayPlan>> phases = new ArrayList<>();
    if (choices) {
      phases.add(new ExploreChoices(placing));
    }
    phases.add(new Deepen(placing));
    // Configuring the solver takes a second when cold, the first marker less: so both at once.
    CompletableFuture<Solver<LayPlan>> solver =
        CompletableFuture.supplyAsync(
            () -> LaySolver.of(seed, stationsDiffer, phases).buildSolver());
    placing.construct(plan.decision());
    solver.join().solve(plan);
    Marker.Search search =
        new Marker.Search(seed.value(), threads, effort.toString(), stop.wanted());
    Lay endless = new Lay(lay.style(), lay.cloth().endless(), lay.wanted(), lay.matches());
    // The kernel's sums are not trusted: the shortest that passes the check is the answer.
    return placing.betterAndBetter().stream()
        .filter(found -> Check.of(found.marker(endless, cloth, search)).isEmpty())
        .map(found -> found.marker(lay, cloth, search))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no marker found passes the check"));
  }
}
