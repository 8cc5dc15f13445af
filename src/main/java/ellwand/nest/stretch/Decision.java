package ellwand.nest.stretch;

import ellwand.lay.Heading;
import ellwand.nest.pose.Placement;
import ellwand.nest.pose.Station;
import ellwand.nest.repeat.Free;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The discrete choices behind a marker.
 *
 * @param stations one for each serving, in their order
 * @param headings by garment, where garments choose; empty where the cloth decides
 * @param phases places in the cloth's repeat, where pieces that match choose one
 */
public record Decision(
    List<Station> stations, Map<Integer, Heading> headings, Map<Free, Double> phases) {

  public Decision {
    stations = List.copyOf(stations);
    headings = Map.copyOf(headings);
    phases = Map.copyOf(phases);
  }

  public Decision at(int serving, Station station) {
    List<Station> changed = new ArrayList<>(stations);
    changed.set(serving, station);
    return new Decision(changed, headings, phases);
  }

  public Decision heading(int garment, Heading heading) {
    Map<Integer, Heading> changed = new HashMap<>(headings);
    changed.put(garment, heading);
    return new Decision(stations, changed, phases);
  }

  public Decision phase(Free free, double mm) {
    Map<Free, Double> changed = new HashMap<>(phases);
    changed.put(free, mm);
    return new Decision(stations, headings, changed);
  }

  /** The same with garments that share a piece heading as the first of them does. */
  public Decision agreeing() {
    Map<Integer, Heading> agreed = new HashMap<>(headings);
    List<Placement> shared =
        headings.isEmpty()
            ? List.of()
            : stations.stream()
                .flatMap(station -> station.placements().stream())
                .filter(placement -> placement.secondGarment().isPresent())
                .sorted(Comparator.comparingInt(placement -> placement.wanted().garment()))
                .toList();
    for (Placement placement : shared) {
      agreed.put(placement.secondGarment().getAsInt(), agreed.get(placement.wanted().garment()));
    }
    return new Decision(stations, agreed, phases);
  }

  /** Cloth that the choices are expected to take, judged as the constraint streams do, mm. */
  public double expectedMm() {
    Map<Integer, List<Station>> stretches =
        stations.stream().collect(Collectors.groupingBy(Station::stretch));
    return stretches.values().stream().mapToDouble(Station::expectedMm).sum();
  }
}
