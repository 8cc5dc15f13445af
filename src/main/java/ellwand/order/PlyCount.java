package ellwand.order;

import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.variable.PlanningVariable;

/** How many turns of one colour are spread for one lay. */
@PlanningEntity
public class PlyCount {

  @PlanningId private int id;
  private PlanBoard.DraftLay lay;
  private int colour;

  @PlanningVariable(valueRangeProviderRefs = PlanBoard.TURNS)
  private Integer turns;

  /** For the solver's copies. */
  public PlyCount() {}

  PlyCount(int id, PlanBoard.DraftLay lay, int colour, int turns) {
    this.id = id;
    this.lay = lay;
    this.colour = colour;
    this.turns = turns;
  }

  PlanBoard.DraftLay lay() {
    return lay;
  }

  int colour() {
    return colour;
  }

  int turns() {
    return turns;
  }

  void setTurns(Integer turns) {
    this.turns = turns;
  }

  Integer getTurns() {
    return turns;
  }
}
