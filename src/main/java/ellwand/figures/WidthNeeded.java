package ellwand.figures;

import ellwand.cloth.Cloth;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Repeat;
import ellwand.cloth.Zone;
import ellwand.cloth.Zone.Side;
import ellwand.geometry.Box;
import ellwand.lay.Marker;
import java.util.Optional;
import java.util.stream.Stream;

/** How narrow the cloth could be for a marker as it is. */
final class WidthNeeded {

  /** Beyond a line by no more than rounding. */
  private static final double HAIR_MM = 0.01;

  private WidthNeeded() {}

  /** The narrowest cloth, as bought, that the marker can be cut from, mm. */
  static double mm(Marker marker) {
    Cloth cloth = marker.lay().cloth();
    double usable =
        switch (marker.fold()) {
          case OPEN, CROSSWISE, TURNED, FACE_TO_FACE -> widestOpen(marker);
          case LENGTHWISE, STACKED -> Math.max(lengthwise(marker), widestOpen(marker));
          case PART -> Math.max(part(marker), widestOpen(marker));
          case DOUBLE ->
              Math.max(
                  2
                      * (fromFold(marker, Side.LOW_Y)
                          + fromFold(marker, Side.HIGH_Y)
                          + cloth.selvedgeMm()),
                  widestOpen(marker));
          // A tube is as wide as it is.
          case TUBULAR -> cloth.usableWidthMm();
        };
    return cloth.tubular()
        ? usable / 2 / cloth.shrinkage().laidWidth(1)
        : Buying.widthMm(cloth, usable);
  }

  /**
   * The fold, and as much beyond it as lies before it. On cloth with a repeat it can only move from
   * bar to bar, so that what lies on it keeps its place in the repeat.
   */
  private static double lengthwise(Marker marker) {
    Cloth cloth = marker.lay().cloth();
    double deep = fromFold(marker, Side.LOW_Y);
    double step = cloth.repeat().map(Repeat::acrossMm).orElse(0.0);
    if (deep == 0 || step == 0) {
      return 2 * deep;
    }
    double fold =
        LaidCloth.like(cloth, marker.fold(), marker.zones()).stream()
            .flatMap(laid -> laid.bands().stream())
            .filter(band -> band.foldEdges().contains(Side.LOW_Y))
            .mapToDouble(band -> band.layers().get(0).open(band.lowY()))
            .findFirst()
            .orElseThrow();
    return deep + fold - step * Math.floor((fold - deep + HAIR_MM) / step);
  }

  /** The fold must be as deep as what lies on it; what lies single shifts with the far edge. */
  private static double part(Marker marker) {
    double deep = fromFold(marker, Side.LOW_Y);
    double single =
        Stream.of(marker)
            .flatMap(m -> m.zones().stream())
            .filter(z -> z.plies() == 1 && z.box().minY() > 0)
            .flatMap(z -> taken(marker, z).stream().map(t -> t.maxY() - z.box().minY()))
            .reduce(0.0, Math::max);
    return 2 * deep + marker.lay().cloth().selvedgeMm() + single;
  }

  /** How far copies reach from a fold edge. */
  private static double fromFold(Marker marker, Side side) {
    return marker.zones().stream()
        .filter(z -> z.foldEdges().contains(side))
        .flatMap(
            z ->
                taken(marker, z).stream()
                    .map(
                        t ->
                            side == Side.LOW_Y
                                ? t.maxY() - z.box().minY()
                                : z.box().maxY() - t.minY()))
        .reduce(0.0, Math::max);
  }

  private static double widestOpen(Marker marker) {
    double all = marker.lay().cloth().usableWidthMm();
    return marker.zones().stream()
        .filter(z -> Math.abs(z.box().width() - all) < 1)
        .flatMap(z -> taken(marker, z).stream().map(Box::width))
        .reduce(0.0, Math::max);
  }

  private static Optional<Box> taken(Marker marker, Zone zone) {
    return marker.copies().stream()
        .filter(c -> c.zone().equals(zone.id()))
        .map(c -> c.outline().box())
        .reduce(Box::union);
  }
}
