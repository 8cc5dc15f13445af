package ellwand.order;

import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.variable.PlanningVariable;

/** How many garments of one size go into the marker of one lay. */
@PlanningEntity
public class SizeCount {

  @PlanningId private int id;
  private PlanBoard.DraftLay lay;
  private int size;

  @PlanningVariable(valueRangeProviderRefs = PlanBoard.GARMENTS)
  private Integer garments;

  /** For the solver's copies. */
  public SizeCount() {}

  SizeCount(int id, PlanBoard.DraftLay lay, int size, int garments) {
    this.id = id;
    this.lay = lay;
    this.size = size;
    this.garments = garments;
  }

  PlanBoard.DraftLay lay() {
    return lay;
  }

  int size() {
    return size;
  }

  int garments() {
    return garments;
  }

  void setGarments(Integer garments) {
    this.garments = garments;
  }

  Integer getGarments() {
    return garments;
  }
}
