package ellwand.nest;

import ellwand.cloth.Band;
import ellwand.lay.Heading;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

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
    Map<Integer, Map<Band, double[]>> stretches = new HashMap<>();
    for (Station station : stations) {
      double[] sums =
          stretches
              .computeIfAbsent(station.stretch(), s -> new HashMap<>())
              .computeIfAbsent(station.band(), b -> new double[2]);
      sums[0] += station.fillMm();
      sums[1] = Math.max(sums[1], station.longestClothMm());
    }
    return stretches.values().stream()
        .mapToDouble(
            bands -> bands.values().stream().mapToDouble(s -> Math.max(s[0], s[1])).max().orElse(0))
        .sum();
  }
}
