package ellwand.nest.choice;

import ellwand.lay.Heading;
import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.variable.PlanningVariable;

/** Planning entity: the heading that all pieces of one garment share. */
@PlanningEntity
public class GarmentHeading {

  @PlanningId private int garment;

  @PlanningVariable(valueRangeProviderRefs = "headings")
  private Heading heading;

  /** For the solver. */
  public GarmentHeading() {}

  GarmentHeading(int garment, Heading heading) {
    this.garment = garment;
    this.heading = heading;
  }

  int garment() {
    return garment;
  }

  Heading heading() {
    return heading;
  }

  void head(Heading chosen) {
    heading = chosen;
  }
}
