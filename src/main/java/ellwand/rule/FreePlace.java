package ellwand.rule;

import ellwand.cloth.Zone;
import ellwand.geometry.Box;
import ellwand.geometry.FreeRectangle;
import ellwand.geometry.Outline;
import ellwand.lay.Marker;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The largest rectangle of a zone on which nothing lies.
 *
 * @param box in the marker's frame
 */
public record FreePlace(Zone zone, Box box) {

  /** That of each zone that has one. */
  public static List<FreePlace> of(Marker marker) {
    List<Outline> taken = marker.covered();
    return marker.zones().stream()
        .flatMap(
            zone ->
                FreeRectangle.largest(counted(marker, zone), taken)
                    .map(box -> new FreePlace(zone, box))
                    .stream())
        .toList();
  }

  /** The largest of any zone, all its plies. */
  public static Optional<FreePlace> largest(Marker marker) {
    return of(marker).stream().max(Comparator.comparingDouble(FreePlace::areaMm2));
  }

  /** Of all plies, square mm. */
  public double areaMm2() {
    return zone.plies() * box.area();
  }

  /** As much of a zone as counts: cloth that is bought ends with the marker. */
  static Box counted(Marker marker, Zone zone) {
    Box box = zone.box();
    double end = marker.lay().cloth().stock().isPresent() ? box.maxX() : marker.lengthMm();
    return new Box(
        box.minX(), box.minY(), Math.max(box.minX(), Math.min(box.maxX(), end)), box.maxY());
  }
}
