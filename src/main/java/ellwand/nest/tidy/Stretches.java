package ellwand.nest.tidy;

import ellwand.cloth.Cloth;
import ellwand.cloth.KeepOut;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Zone;
import ellwand.geometry.Box;
import ellwand.lay.Copy;
import ellwand.lay.Marker;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The stretches of a marker one after another along the cloth, and where each may end.
 *
 * @param pinned copies that stay where they are, by their places in the marker
 */
record Stretches(Marker marker, Set<Integer> pinned) {

  /** Farther than any table is long, mm. */
  private static final double FAR_MM = 1e6;

  int count() {
    return (int) marker.zones().stream().map(z -> z.box().minX()).distinct().count();
  }

  /** Zones side by side. */
  List<Zone> zones(int stretch) {
    double x =
        marker.zones().stream()
            .mapToDouble(z -> z.box().minX())
            .distinct()
            .sorted()
            .skip(stretch)
            .findFirst()
            .orElseThrow();
    return marker.zones().stream().filter(z -> z.box().minX() == x).toList();
  }

  /** The copies on a stretch, by their places in the marker. */
  IntStream copies(int stretch) {
    Set<String> ids = zones(stretch).stream().map(Zone::id).collect(Collectors.toSet());
    return IntStream.range(0, marker.copies().size())
        .filter(i -> ids.contains(marker.copies().get(i).zone()));
  }

  private IntStream copies(int from, int to) {
    return IntStream.range(from, to).flatMap(this::copies);
  }

  /** Whether nothing lies behind it. */
  boolean last(int stretch) {
    return copies(stretch + 1, count()).findAny().isEmpty();
  }

  /** The gap from what lies on an earlier stretch; 0 if nothing does. */
  double beforeMm(int stretch) {
    return copies(0, stretch).findAny().isPresent() ? marker.lay().cloth().gapMm() : 0;
  }

  /** Whether its end stays: something in it or behind it depends on where that lies. */
  boolean endStays(int stretch) {
    Cloth cloth = marker.lay().cloth();
    boolean doubled = marker.fold().doublesLength() && zones(stretch).get(0).plies() == 2;
    return cloth.stock().isPresent()
        || (doubled || !last(stretch))
            && (!cloth.flaws().isEmpty()
                || cloth.repeat().isPresent()
                || copies(stretch + 1, count()).anyMatch(pinned::contains));
  }

  /** How long it may become, mm. */
  double mostMm(int stretch) {
    return endStays(stretch) ? zones(stretch).get(0).box().length() : Double.POSITIVE_INFINITY;
  }

  /** Flaws on it, as far as it may reach. */
  List<KeepOut> keepOuts(int stretch) {
    Cloth cloth = marker.lay().cloth();
    Optional<LaidCloth> laid = LaidCloth.like(cloth, marker.fold(), marker.zones());
    return zones(stretch).stream()
        .flatMap(
            zone ->
                laid.flatMap(l -> l.band(zone.id())).stream()
                    .flatMap(
                        band ->
                            KeepOut.of(
                                cloth,
                                band,
                                marker.acrossMm(),
                                zone.box().minX(),
                                endStays(stretch) ? zone.box().maxX() : FAR_MM)
                                .stream()))
        .toList();
  }

  /** The marker once a stretch is laid otherwise: it ends where its copies do, others follow. */
  Marker ended(int stretch, Marker laid) {
    if (endStays(stretch)) {
      return laid;
    }
    List<Zone> zones = zones(stretch);
    double oldEnd = zones.get(0).box().maxX();
    double end =
        copies(stretch)
            .mapToDouble(i -> laid.copies().get(i).outline().box().maxX())
            .max()
            .orElse(oldEnd);
    double shift = end - oldEnd;
    Set<String> behind =
        IntStream.range(stretch + 1, count())
            .boxed()
            .flatMap(later -> zones(later).stream())
            .map(Zone::id)
            .collect(Collectors.toSet());
    List<Zone> ending =
        laid.zones().stream()
            .map(
                z ->
                    behind.contains(z.id())
                        ? within(z, z.box().minX() + shift, z.box().maxX() + shift)
                        : zones.contains(z) ? within(z, z.box().minX(), end) : z)
            .toList();
    List<Copy> copies =
        laid.copies().stream()
            .map(c -> behind.contains(c.zone()) ? c.shifted(shift, 0) : c)
            .toList();
    return laid.with(copies).withZones(ending);
  }

  private static Zone within(Zone zone, double fromX, double toX) {
    Box box = zone.box();
    return new Zone(
        zone.id(),
        new Box(fromX, box.minY(), toX, box.maxY()),
        zone.plies(),
        zone.foldEdges(),
        zone.sideUp());
  }
}
