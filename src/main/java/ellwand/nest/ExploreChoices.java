package ellwand.nest;

import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Queue;
import java.util.Set;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.phase.custom.CustomPhaseCommand;

/**
 * Phase: places the choices expected to be best and those one change away, and moves on whenever
 * one takes less cloth.
 */
final class ExploreChoices implements CustomPhaseCommand<LayPlan> {

  /** Decisions tried at the most, and the part of the effort that all of them may take. */
  private static final int TRIES = 8;

  private static final double SHARE = 0.25;

  private final Placing placing;

  ExploreChoices(Placing placing) {
    this.placing = placing;
  }

  @Override
  public void changeWorkingSolution(ScoreDirector<LayPlan> director) {
    LayPlan plan = director.getWorkingSolution();
    Found best = placing.search(placing.best(), SHARE / (TRIES + 1));
    Set<Decision> seen = new HashSet<>(Set.of(best.decision()));
    Queue<Decision> waiting = new ArrayDeque<>();
    if (seen.add(plan.decision()) && placing.possible(plan.decision())) {
      waiting.add(plan.decision());
    }
    waiting.addAll(unseen(plan, best.decision(), seen));
    for (int i = 0; i < TRIES && !waiting.isEmpty() && goesOn(); i++) {
      Found found = placing.search(placing.construct(waiting.remove()), SHARE / (TRIES + 1));
      if (found.clothMm() < best.clothMm()) {
        best = found;
        waiting.clear();
        waiting.addAll(unseen(plan, best.decision(), seen));
      }
    }
    Deepen.settle(director, best);
  }

  private boolean goesOn() {
    return !placing.stopWanted() && placing.spent() < SHARE;
  }

  private List<Decision> unseen(LayPlan plan, Decision from, Set<Decision> seen) {
    return Choices.neighbours(plan, from).stream()
        .filter(seen::add)
        .filter(placing::possible)
        .sorted(Comparator.comparingDouble(Decision::expectedMm))
        .toList();
  }
}
