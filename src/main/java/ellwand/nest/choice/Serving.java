package ellwand.nest.choice;

import ellwand.lay.Wanted;
import ellwand.nest.pose.Station;
import java.util.List;
import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.domain.variable.PlanningVariable;

/** Planning entity: one thing wanted, and the station at which it is served. */
@PlanningEntity
public class Serving {

  @PlanningId private int id;
  private List<Wanted> wants;

  @ValueRangeProvider(id = "stations")
  private List<Station> stations;

  @PlanningVariable(valueRangeProviderRefs = "stations")
  private Station station;

  /** For the solver. */
  public Serving() {}

  Serving(int id, List<Wanted> wants, List<Station> stations) {
    this.id = id;
    this.wants = wants;
    this.stations = stations;
  }

  List<Wanted> wants() {
    return wants;
  }

  public List<Station> stations() {
    return stations;
  }

  Station station() {
    return station;
  }

  void serveAt(Station chosen) {
    station = chosen;
  }
}
