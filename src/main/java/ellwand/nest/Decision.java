package ellwand.nest;

import ellwand.lay.Heading;
import java.util.ArrayList;
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
record Decision(List<Station> stations, Map<Integer, Heading> headings, Map<Free, Double> phases) {

  Decision {
    stations = List.copyOf(stations);
    headings = Map.copyOf(headings);
    phases = Map.copyOf(phases);
  }

  Decision at(int serving, Station station) {
    List<Station> changed = new ArrayList<>(stations);
    changed.set(serving, station);
    return new Decision(changed, headings, phases);
  }

  Decision heading(int garment, Heading heading) {
    Map<Integer, Heading> changed = new HashMap<>(headings);
    changed.put(garment, heading);
    return new Decision(stations, changed, phases);
  }

  Decision phase(Free free, double mm) {
    Map<Free, Double> changed = new HashMap<>(phases);
    changed.put(free, mm);
    return new Decision(stations, headings, changed);
  }

  /** Cloth that the choices are expected to take, judged as {@link LayConstraints} does, mm. */
  double expectedMm() {
    Map<Integer, List<Station>> stretches =
        stations.stream().collect(Collectors.groupingBy(Station::stretch));
    return stretches.values().stream().mapToDouble(Station::expectedMm).sum();
  }
}
