package ellwand.nest.wish;

import ellwand.geometry.Box;
import ellwand.geometry.FreeRectangle;
import ellwand.geometry.Outline;
import ellwand.lay.Marker;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A rectangle on which nothing lies.
 *
 * @param zone id of the zone it lies in
 * @param box in the marker's frame
 */
record FreePlace(String zone, Box box, int plies) {

  /** The largest in a marker, counted with all its plies. */
  static Optional<FreePlace> largest(Marker marker) {
    List<Outline> taken = marker.covered();
    return marker.zones().stream()
        .flatMap(
            zone ->
                FreeRectangle.largest(zone.box(), taken)
                    .map(box -> new FreePlace(zone.id(), box, zone.plies()))
                    .stream())
        .max(Comparator.comparingDouble(place -> place.plies * place.box.area()));
  }
}
