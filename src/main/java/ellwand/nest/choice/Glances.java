package ellwand.nest.choice;

import ellwand.nest.stretch.Decision;
import ellwand.nest.stretch.Found;
import ellwand.nest.stretch.Placing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Tries choices without a solver: lays many roughly, those first that are expected to take least,
 * goes on beside whatever takes less cloth, and searches the few that came out shortest. What was
 * looked at once is not looked at again.
 */
public final class Glances {

  /** So many decisions are listed one and all; where there are more, those near the best. */
  private static final int LISTED = 1_000;

  /** Decisions laid roughly at the most, and the part of the effort that all of them may take. */
  private static final int GLANCES = 80;

  private static final double GLANCING = 0.15;

  /** Decisions searched, and the part of the effort for each. */
  private static final int TRIES = 8;

  private static final double TRYING = 0.03;

  private final LayPlan plan;
  private final Placing placing;
  private final List<Decision> all;
  private final boolean choices;

  /** Those that were laid, and those that are to be, the next one first. */
  private final Set<Decision> seen = new HashSet<>();

  private final LinkedList<Decision> waiting = new LinkedList<>();

  /** Laid roughly and not searched. */
  private final List<Found> rough = new ArrayList<>();

  public Glances(LayPlan plan, Placing placing) {
    this.plan = plan;
    this.placing = placing;
    all = Choices.all(plan, LISTED);
    choices = !Choices.neighbours(plan, plan.decision()).isEmpty();
    waiting.addAll(likeliestFirst(all));
  }

  /** Whether there is more to choose than was listed. */
  public boolean more() {
    return choices && all.isEmpty();
  }

  /** Lays roughly what is near the best, and what else waits. */
  public void look() {
    look(List.of());
  }

  private void look(List<Decision> first) {
    Found best = placing.best();
    if (seen.add(best.decision())) {
      rough.add(best);
    }
    putFirst(Choices.neighbours(plan, best.decision()));
    waiting.addAll(0, first);
    for (int glances = 0; glances < GLANCES && !waiting.isEmpty() && goesOn(); ) {
      Decision next = waiting.removeFirst();
      if (seen.add(next) && placing.possible(next)) {
        Optional<Found> laid = placing.construct(next);
        if (laid.isEmpty()) {
          return;
        }
        glances++;
        rough.add(laid.get());
        if (laid.get().clothMm() < best.clothMm()) {
          best = laid.get();
          putFirst(Choices.neighbours(plan, best.decision()));
        }
      }
    }
  }

  /** The same, what somebody else proposes before all. */
  void look(Decision proposed) {
    look(
        Choices.keepingFold(plan, proposed).stream()
            .min(Comparator.comparingDouble(Decision::expectedMm))
            .stream()
            .toList());
  }

  /** Searches the shortest of those that were only looked at. */
  public void tryShortest() {
    rough.sort(Comparator.comparingDouble(Found::clothMm));
    List<Found> shortest = rough.subList(0, Math.min(TRIES, rough.size()));
    if (choices) {
      shortest.forEach(
          found -> {
            if (!placing.stopWanted()) {
              placing.search(found, TRYING);
            }
          });
    }
    shortest.clear();
  }

  private boolean goesOn() {
    return !placing.stopWanted() && placing.spent() < GLANCING;
  }

  private void putFirst(List<Decision> decisions) {
    waiting.addAll(
        0,
        likeliestFirst(decisions.stream().filter(decision -> !seen.contains(decision)).toList()));
  }

  private static List<Decision> likeliestFirst(List<Decision> decisions) {
    return decisions.stream()
        .map(decision -> Map.entry(decision.expectedMm(), decision))
        .sorted(Map.Entry.comparingByKey())
        .map(Map.Entry::getValue)
        .toList();
  }
}
