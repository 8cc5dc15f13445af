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
 * goes on beside whatever takes less cloth, and searches those that came out shortest, the better
 * half of them ever longer. What was looked at once is not looked at again.
 */
public final class Glances {

  /** So many decisions are listed one and all; where there are more, those near the best. */
  private static final int LISTED = 1_000;

  /**
   * Decisions laid roughly, and the part of the effort that all of them may take; more of them as
   * long as that is little.
   */
  private static final int GLANCES = 80;

  private static final double GLANCING = 0.15;

  private static final double LITTLE = 0.03;

  /** The part of the effort for all that are searched; each round of them takes as much. */
  private static final double TRYING = 0.25;

  /** Decisions searched at least, and at the most. */
  private static final int FEWEST = 4;

  private static final int MOST = 80;

  /** Steps for each in the first round, but where there are the fewest; measured. */
  private static final double FIRST_STEPS = 15;

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
    for (int glances = 0; !waiting.isEmpty() && goesOn(glances); ) {
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

  /**
   * Searches the shortest of those that were only looked at, in rounds: after each the better half
   * goes on.
   */
  public void tryShortest() {
    rough.sort(Comparator.comparingDouble(Found::clothMm));
    int number = choices ? entrants() : 0;
    List<Found> going = List.copyOf(rough.subList(0, number));
    rough.subList(0, number).clear();
    double round = TRYING / Math.max(1, rounds(going.size()));
    while (going.size() > 1) {
      going = betterHalf(searched(going, round / going.size()));
    }
  }

  /** As many as can have the steps that it takes to tell them apart. */
  private int entrants() {
    int number = Math.min(MOST, rough.size());
    double steps = TRYING * placing.stepsInAll();
    while (number > FEWEST && steps / rounds(number) / number < FIRST_STEPS) {
      number--;
    }
    return number;
  }

  /** How often half of them goes on until one is left. */
  private static int rounds(int number) {
    return number < 2 ? 0 : 1 + rounds(half(number));
  }

  private static int half(int number) {
    return (number + 1) / 2;
  }

  private List<Found> searched(List<Found> going, double share) {
    List<Found> searched = new ArrayList<>();
    for (Found found : going) {
      if (!placing.stopWanted()) {
        searched.add(placing.search(found, share));
      }
    }
    return searched;
  }

  private static List<Found> betterHalf(List<Found> searched) {
    return searched.stream()
        .sorted(Comparator.comparingDouble(Found::clothMm))
        .limit(half(searched.size()))
        .toList();
  }

  private boolean goesOn(int glances) {
    double spent = placing.spent();
    return !placing.stopWanted() && spent < (glances < GLANCES ? GLANCING : LITTLE);
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
