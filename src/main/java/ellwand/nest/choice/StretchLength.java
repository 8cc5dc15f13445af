package ellwand.nest.choice;

import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.valuerange.CountableValueRange;
import org.optaplanner.core.api.domain.valuerange.ValueRangeFactory;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.domain.variable.PlanningVariable;

/**
 * Planning entity: the length that the placing phases found for a stretch, or none while it is only
 * estimated.
 */
@PlanningEntity
public class StretchLength {

  @PlanningId private int stretch;

  /** Micrometres, so that the score is exact. */
  @PlanningVariable(valueRangeProviderRefs = "micrometres", nullable = true)
  private Long micrometres;

  /** For the solver. */
  public StretchLength() {}

  StretchLength(int stretch) {
    this.stretch = stretch;
  }

  @ValueRangeProvider(id = "micrometres")
  public CountableValueRange<Long> range() {
    return ValueRangeFactory.createLongValueRange(0, Long.MAX_VALUE / 1_000_000);
  }

  int stretch() {
    return stretch;
  }

  Long micrometres() {
    return micrometres;
  }

  void measure(double lengthMm) {
    micrometres = Math.round(lengthMm * 1000);
  }
}
