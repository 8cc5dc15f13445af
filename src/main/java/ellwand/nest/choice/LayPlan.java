package ellwand.nest.choice;

import ellwand.cloth.LaidCloth;
import ellwand.lay.Copy;
import ellwand.lay.Heading;
import ellwand.nest.pose.Station;
import ellwand.nest.repeat.Free;
import ellwand.nest.repeat.Phases;
import ellwand.nest.stretch.Decision;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

  private Map<Free, List<Double>> phases;
  private Map<Free, Double> firstPhases;

  @PlanningScore private SimpleLongScore score;

  /** For the solver. */
  public LayPlan() {}

  LayPlan(
      List<Serving> servings,
      List<GarmentHeading> headings,
      LaidCloth cloth,
      Phases phases,
      Map<Free, Double> firstPhases) {
    this.servings = servings;
    this.headings = headings;
    this.phases = phases.candidates();
    this.firstPhases = firstPhases;
    this.lengths =
        IntStream.range(0, cloth.stretches().size()).mapToObj(StretchLength::new).toList();
  }

  public List<Serving> servings() {
    return servings;
  }

  List<GarmentHeading> headings() {
    return headings;
  }

  List<StretchLength> lengths() {
    return lengths;
  }

  /** Places in the repeat that may be chosen, each with those worth a trial. */
  Map<Free, List<Double>> phases() {
    return phases;
  }

  /** What the planning variables say now, with the first places in the repeat. */
  SimpleLongScore score() {
    return score;
  }

  /**
   * The choices with which the copies of a marker lie as they do; empty if there are none. Not on
   * cloth with a repeat, in which places are chosen, too.
   */
  public Optional<Decision> asLaid(List<Copy> copies) {
    List<Copy> left = new ArrayList<>(copies);
    List<Station> stations = new ArrayList<>();
    for (Serving serving : servings) {
      Optional<Station> station =
          serving.stations().stream().filter(s -> s.takeFrom(left)).findFirst();
      if (station.isEmpty()) {
        return Optional.empty();
      }
      stations.add(station.get());
    }
    Map<Integer, Heading> chosen = new HashMap<>();
    for (GarmentHeading garment : headings) {
      copies.stream()
          .filter(copy -> copy.garment() == garment.garment())
          .findFirst()
          .ifPresent(copy -> chosen.put(garment.garment(), copy.heading()));
    }
    return left.isEmpty() && phases.isEmpty()
        ? Optional.of(new Decision(stations, chosen, firstPhases).agreeing())
        : Optional.empty();
  }

  public Decision decision() {
    return new Decision(
            servings.stream().map(Serving::station).toList(),
            headings.stream()
                .collect(
                    Collectors.toUnmodifiableMap(GarmentHeading::garment, GarmentHeading::heading)),
            firstPhases)
        .agreeing();
  }
}
