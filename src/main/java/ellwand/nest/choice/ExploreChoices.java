package ellwand.nest.choice;

import ellwand.nest.stretch.Decision;
import ellwand.nest.stretch.Found;
import ellwand.nest.stretch.Placing;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.phase.custom.CustomPhaseCommand;

/**
 * Phase: first lays many choices roughly, the ones expected to be best and those one change away,
 * and moves on whenever one takes less cloth; then searches the few that came out shortest.
 */
public final class ExploreChoices implements CustomPhaseCommand<LayPlan> {

  /** Decisions laid roughly at the most, and the part of the effort that all of them may take. */
  private static final int GLANCES = 80;

  private static final double GLANCING = 0.15;

  /** Decisions searched, and the part of the effort for each. */
  private static final int TRIES = 4;

  private static final double TRYING = 0.04;

  private final Placing placing;

  public ExploreChoices(Placing placing) {
    this.placing = placing;
  }

  @Override
  public void changeWorkingSolution(ScoreDirector<LayPlan> director) {
    List<Found> glanced = glance(director.getWorkingSolution());
    glanced.sort(Comparator.comparingDouble(Found::clothMm));
    Found best = glanced.get(0);
    for (Found rough : glanced.subList(0, Math.min(TRIES, glanced.size()))) {
      Found found = placing.stopWanted() ? rough : placing.search(rough, TRYING);
      best = found.clothMm() < best.clothMm() ? found : best;
    }
    Deepen.settle(director, best);
  }

  private List<Found> glance(LayPlan plan) {
    Found best = placing.best();
    List<Found> glanced = new ArrayList<>(List.of(best));
    Set<Decision> seen = new HashSet<>(Set.of(best.decision()));
    Queue<Decision> waiting = new ArrayDeque<>();
    Choices.keepingFold(plan, plan.decision()).stream()
        .min(Comparator.comparingDouble(Decision::expectedMm))
        .filter(seen::add)
        .filter(placing::possible)
        .ifPresent(waiting::add);
    waiting.addAll(unseen(plan, best.decision(), seen));
    while (!waiting.isEmpty() && glanced.size() < GLANCES && goesOn()) {
      Optional<Found> laid = placing.construct(waiting.remove());
      if (laid.isEmpty()) {
        break;
      }
      Found found = laid.get();
      glanced.add(found);
      if (found.clothMm() < best.clothMm()) {
        best = found;
        waiting.forEach(seen::remove);
        waiting.clear();
        waiting.addAll(unseen(plan, best.decision(), seen));
      }
    }
    return glanced;
  }

  private boolean goesOn() {
    return !placing.stopWanted() && placing.spent() < GLANCING;
  }

  private List<Decision> unseen(LayPlan plan, Decision from, Set<Decision> seen) {
    return Choices.neighbours(plan, from).stream()
        .filter(seen::add)
        .filter(placing::possible)
        .sorted(Comparator.comparingDouble(Decision::expectedMm))
        .toList();
  }
}
