package ellwand.order;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.AbstractMove;

/** Sets the mix and the turns of some lays; only what differs is touched. */
public class PlanMove extends AbstractMove<PlanBoard> {

  private final Map<Integer, Spread> spreads;

  PlanMove(Map<Integer, Spread> spreads) {
    this.spreads = Map.copyOf(spreads);
  }

  @Override
  public boolean isMoveDoable(ScoreDirector<PlanBoard> director) {
    return true;
  }

  @Override
  protected PlanMove createUndoMove(ScoreDirector<PlanBoard> director) {
    Map<Integer, Spread> now = new HashMap<>();
    spreads.keySet().forEach(lay -> now.put(lay, director.getWorkingSolution().spread(lay)));
    return new PlanMove(now);
  }

  @Override
  protected void doMoveOnGenuineVariables(ScoreDirector<PlanBoard> director) {
    PlanBoard board = director.getWorkingSolution();
    spreads.forEach(
        (lay, spread) -> {
          board.sizeCounts(lay).forEach(count -> set(director, count, spread.mix()));
          board.plyCounts(lay).forEach(count -> set(director, count, spread.turns()));
        });
  }

  private static void set(ScoreDirector<PlanBoard> director, SizeCount count, int[] mix) {
    if (count.garments() != mix[count.size()]) {
      director.beforeVariableChanged(count, "garments");
      count.setGarments(mix[count.size()]);
      director.afterVariableChanged(count, "garments");
    }
  }

  private static void set(ScoreDirector<PlanBoard> director, PlyCount count, int[] turns) {
    if (count.turns() != turns[count.colour()]) {
      director.beforeVariableChanged(count, "turns");
      count.setTurns(turns[count.colour()]);
      director.afterVariableChanged(count, "turns");
    }
  }

  @Override
  public Collection<?> getPlanningEntities() {
    return List.of();
  }

  @Override
  public Collection<?> getPlanningValues() {
    return List.of();
  }
}
