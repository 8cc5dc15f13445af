package ellwand.nest;

import ellwand.cloth.LaidCloth;
import ellwand.lay.Heading;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.optaplanner.core.api.domain.solution.PlanningEntityCollectionProperty;
import org.optaplanner.core.api.domain.solution.PlanningScore;
import org.optaplanner.core.api.domain.solution.PlanningSolution;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.score.buildin.simplelong.SimpleLongScore;

/**
 * Planning solution: where everything wanted is served, which way garments head, how long it gets.
 */
@PlanningSolution
public class LayPlan {

  @PlanningEntityCollectionProperty private List<Serving> servings;
  @PlanningEntityCollectionProperty private List<GarmentHeading> headings;
  @PlanningEntityCollectionProperty private List<StretchLength> lengths;

  @ValueRangeProvider(id = "headings")
  private List<Heading> bothHeadings = List.of(Heading.values());

  @PlanningScore private SimpleLongScore score;

  /** For the solver. */
  public LayPlan() {}

  LayPlan(List<Serving> servings, List<GarmentHeading> headings, LaidCloth cloth) {
    this.servings = servings;
    this.headings = headings;
    this.lengths =
        IntStream.range(0, cloth.stretches().size()).mapToObj(StretchLength::new).toList();
  }

  List<Serving> servings() {
    return servings;
  }

  List<GarmentHeading> headings() {
    return headings;
  }

  List<StretchLength> lengths() {
    return lengths;
  }

  Decision decision() {
    return new Decision(
        servings.stream().map(Serving::station).toList(),
        headings.stream()
            .collect(
                Collectors.toUnmodifiableMap(GarmentHeading::garment, GarmentHeading::heading)));
  }
}
