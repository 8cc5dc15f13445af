package ellwand.draw.marker;

import ellwand.cloth.Fold;
import ellwand.cloth.Zone;
import ellwand.geometry.Box;
import ellwand.lay.Marker;
import java.util.List;

/**
 * As much of a marker's cloth as is drawn: its zones, and where its edges are.
 *
 * @param end how far the cloth is shown, mm
 */
record ShownCloth(Marker marker, double end) {

  ShownCloth(Marker marker) {
    this(marker, end(marker));
  }

  /** What may not be used along each edge of the cloth, mm. */
  double selvedge() {
    return marker.lay().cloth().selvedgeMm();
  }

  /** A remnant without selvedges. */
  boolean cutAllRound() {
    return ClothWords.cutAllRound(marker);
  }

  /** The cloth that is seen, selvedges included. */
  Box box() {
    Box box = marker.zones().get(0).box();
    for (Zone zone : marker.zones()) {
      Box b = zone.box();
      box =
          box.union(
              new Box(
                  b.minX(),
                  isSelvedge(zone, Zone.Side.LOW_Y) ? b.minY() - selvedge() : b.minY(),
                  Math.max(b.minX(), Math.min(b.maxX(), end)),
                  isSelvedge(zone, Zone.Side.HIGH_Y) ? b.maxY() + selvedge() : b.maxY()));
    }
    return new Box(box.minX(), box.minY(), Math.min(box.maxX(), end), box.maxY());
  }

  /** To the marker's end, some of it even when nothing lies on it, and all of a remnant. */
  private static double end(Marker marker) {
    double length = marker.lay().cloth().lengthMm() - marker.acrossMm();
    return length < Double.POSITIVE_INFINITY ? length : Math.max(marker.lengthMm(), 100);
  }

  List<Zone> zones() {
    return marker.zones().stream().filter(z -> z.box().minX() < end - 1e-6).toList();
  }

  Box seen(Zone zone) {
    Box b = zone.box();
    return new Box(b.minX(), b.minY(), Math.min(b.maxX(), end), b.maxY());
  }

  /** A side is a selvedge unless it is folded, cut, or lies against an edge that is turned in. */
  boolean isSelvedge(Zone zone, Zone.Side side) {
    boolean besideTurnedIn =
        marker.fold() == Fold.PART
            && side == Zone.Side.LOW_Y
            && zone.plies() == 1
            && zone.box().minY() > 0;
    return side != Zone.Side.LOW_X
        && !zone.foldEdges().contains(side)
        && !marker.lay().cloth().tubular()
        && !besideTurnedIn;
  }

  /** Whether no other zone lies between this one and the near edge of the cloth. */
  boolean isNear(Zone zone) {
    return zones().stream()
        .noneMatch(
            z ->
                z.box().minY() < zone.box().minY()
                    && z.box().minX() < zone.box().maxX()
                    && zone.box().minX() < z.box().maxX());
  }

  double low(Zone zone) {
    return zone.box().minY() - (isSelvedge(zone, Zone.Side.LOW_Y) ? selvedge() : 0);
  }

  double high(Zone zone) {
    return zone.box().maxY() + (isSelvedge(zone, Zone.Side.HIGH_Y) ? selvedge() : 0);
  }

  /** Whether no other zone lies beyond this one across the cloth. */
  boolean isFar(Zone zone) {
    return zones().stream()
        .noneMatch(
            z ->
                z.box().minY() > zone.box().minY()
                    && z.box().minX() < zone.box().maxX()
                    && zone.box().minX() < z.box().maxX());
  }

  /** Whether some zone does not reach the far edge. */
  boolean sideBySide() {
    return !zones().stream().allMatch(this::isFar);
  }

  /**
   * The lowest and highest place that the cloth has beside a place along it, selvedges included.
   */
  Box at(double x) {
    return zones().stream()
        .filter(z -> z.box().minX() <= x + 0.5 && x - 0.5 <= seen(z).maxX())
        .map(z -> new Box(x, low(z), x, high(z)))
        .reduce(Box::union)
        .orElseGet(this::box);
  }
}
