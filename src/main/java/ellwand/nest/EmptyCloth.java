package ellwand.nest;

import ellwand.cloth.LaidCloth;
import ellwand.cloth.Zone;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.nest.pose.Station;
import ellwand.nest.pose.Stations;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The cloth of a lay on the table before anything is laid on it. */
public final class EmptyCloth {

  /** How long each of its stretches is; of no account. */
  private static final double LENGTH_MM = 10;

  private EmptyCloth() {}

  /**
   * Markers without copies, one for each way to lie that has room for all pieces: with the
   * stretches that some piece cannot do without, so that no marker that lies so is narrower.
   */
  public static List<Marker> of(Lay lay) {
    return lay.cloth().possibleFolds().stream()
        .flatMap(fold -> Borders.of(lay, fold).stream())
        .flatMap(way -> of(lay, way).stream())
        .toList();
  }

  private static Optional<Marker> of(Lay lay, LaidCloth way) {
    Set<Integer> needed = new TreeSet<>();
    for (List<Wanted> serving : Stations.servings(lay, way)) {
      Set<Integer> stretches =
          Stations.of(serving, lay.cloth(), way).stream()
              .map(Station::stretch)
              .collect(Collectors.toSet());
      if (stretches.isEmpty()) {
        return Optional.empty();
      }
      if (stretches.size() == 1) {
        needed.addAll(stretches);
      }
    }
    List<Zone> zones = new ArrayList<>();
    for (int stretch : needed.isEmpty() ? Set.of(0) : needed) {
      double fromX = stretch * LENGTH_MM;
      way.stretches().get(stretch).forEach(b -> zones.add(b.zone(fromX, fromX + LENGTH_MM)));
    }
    return Optional.of(new Marker(lay, way.fold(), zones, List.of()));
  }
}
