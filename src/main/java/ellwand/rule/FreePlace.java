package ellwand.rule;

import ellwand.cloth.Zone;
import ellwand.geometry.Box;
import ellwand.geometry.FreeRectangle;
import ellwand.geometry.Outline;
import ellwand.geometry.Region;
import ellwand.lay.Marker;
import java.util.ArrayList;
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

  /** How large the largest of some is, all its plies, square mm; 0 if there is none. */
  static double largestMm2(List<FreePlace> free) {
    return free.stream().mapToDouble(FreePlace::areaMm2).max().orElse(0);
  }

  /**
   * The largest, then the largest beside that, and so on.
   *
   * @param most so many at most
   * @param leastMm neither shorter nor narrower than this
   */
  public static List<FreePlace> several(Marker marker, int most, double leastMm) {
    List<Outline> taken = new ArrayList<>(marker.covered());
    List<FreePlace> found = new ArrayList<>();
    for (Zone zone : marker.zones()) {
      Optional<Box> next = useful(marker, zone, taken, leastMm);
      for (int i = 0; i < most && next.isPresent(); i++) {
        found.add(new FreePlace(zone, next.get()));
        taken.add(Outline.of(next.get()));
        next = useful(marker, zone, taken, leastMm);
      }
    }
    return found.stream()
        .sorted(Comparator.comparingDouble(FreePlace::areaMm2).reversed())
        .limit(most)
        .toList();
  }

  private static Optional<Box> useful(
      Marker marker, Zone zone, List<Outline> taken, double leastMm) {
    return FreeRectangle.largest(counted(marker, zone), taken, leastMm)
        .filter(box -> Math.min(box.length(), box.width()) >= leastMm);
  }

  /** All of each zone on which nothing lies, in the marker's frame. */
  public static List<Region> regions(Marker marker) {
    Region covered = Region.union(marker.covered().stream().map(Region::of).toList());
    return marker.zones().stream()
        .map(zone -> counted(marker, zone))
        .filter(box -> box.area() > 0)
        .map(box -> Region.of(box).minus(covered))
        .toList();
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
