package ellwand.figures;

import ellwand.cloth.Cloth;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Ply;
import ellwand.cloth.Repeat;
import ellwand.cloth.Zone;
import ellwand.cloth.Zone.Side;
import ellwand.geometry.Box;
import ellwand.lay.Form;
import ellwand.lay.Marker;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;

/**
 * How narrow the cloth could be for a marker as it is. What lies in one zone may move across the
 * cloth together, and folds with what lies on them. On cloth with a repeat both move by whole
 * repeats, so that everything keeps its place in it; off flaws or on a border nothing moves.
 */
final class WidthNeeded {

  private final Marker marker;
  private final Cloth cloth;
  private final Optional<Repeat> repeat;

  private final Optional<LaidCloth> laid;

  /** From one bar to the next that is like it, across; 0 if all places are alike, mm. */
  private final double period;

  private WidthNeeded(Marker marker) {
    this.marker = marker;
    cloth = marker.lay().cloth();
    repeat = cloth.repeat();
    laid = LaidCloth.like(cloth, marker.fold(), marker.zones());
    period = repeat.map(r -> r.halfDrop() ? 2 * r.acrossMm() : r.acrossMm()).orElse(0.0);
  }

  /** The narrowest cloth, as bought, that the marker can be cut from, mm. */
  static double mm(Marker marker) {
    Cloth cloth = marker.lay().cloth();
    double usable = new WidthNeeded(marker).usable();
    return cloth.tubular()
        ? usable / 2 / cloth.shrinkage().laidWidth(1)
        : Buying.widthMm(cloth, usable);
  }

  private double usable() {
    return switch (marker.fold()) {
      case OPEN, CROSSWISE, FACE_TO_FACE -> reach(z -> true);
      // A tube is as wide as it is.
      case TUBULAR -> cloth.usableWidthMm();
      case LENGTHWISE, STACKED, PART, DOUBLE, TURNED ->
          fixed() ? cloth.usableWidthMm() : folded(reach(z -> z.plies() == 1 && wholeWidth(z)));
    };
  }

  /**
   * @param opened what the stretch behind the fold needs
   */
  private double folded(double opened) {
    if (laid.isEmpty() || marker.zones().stream().allMatch(z -> z.plies() == 1)) {
      return opened;
    }
    return switch (marker.fold()) {
      case PART -> part(opened);
      case DOUBLE -> doubled(opened);
      case TURNED -> turned(opened);
      default -> lengthwise(opened);
    };
  }

  private boolean fixed() {
    return !cloth.flaws().isEmpty() || repeat.flatMap(Repeat::borderMm).isPresent();
  }

  private boolean wholeWidth(Zone zone) {
    return Math.abs(zone.box().width() - cloth.usableWidthMm()) < 1;
  }

  /** How far copies reach in zones that begin at the edge, when they are moved as near to it. */
  private double reach(Predicate<Zone> which) {
    return marker.zones().stream()
        .filter(which)
        .flatMap(z -> taken(z).stream())
        .map(t -> t.maxY() - slide(t.minY()))
        .reduce(0.0, Math::max);
  }

  /** How far things may move that have so much room to, mm. */
  private double slide(double room) {
    if (fixed()) {
      return 0;
    }
    return period == 0 ? room : period * Math.floor((room + ZoneLoad.HAIR_MM) / period);
  }

  /** The fold, and as much beyond it as lies before it. */
  private double lengthwise(double opened) {
    ZoneLoad first = load(Side.LOW_Y);
    return lines(first)
        .filter(line -> first.deepMm(line) <= line + ZoneLoad.HAIR_MM)
        .map(line -> foldedAt(line, Math.max(opened, line + first.deepMm(line))))
        .reduce(cloth.usableWidthMm(), Math::min);
  }

  /** By a hair wider where the cloth beyond the fold might as well lie before it. */
  private double foldedAt(double line, double width) {
    double beyond = width - line;
    boolean either = Math.abs(cloth.nearestMirrorMm(beyond) - beyond) <= ZoneLoad.HAIR_MM;
    return period > 0 && beyond < line && either ? width + 3 * ZoneLoad.HAIR_MM : width;
  }

  /** Beyond the edge that is turned in, what lies single moves up to it. */
  private double part(double opened) {
    ZoneLoad first = load(Side.LOW_Y);
    ZoneLoad single =
        marker.zones().stream()
            .filter(z -> z.plies() == 1 && z.box().minY() > 0)
            .findFirst()
            .map(this::load)
            .orElseThrow();
    return lines(first)
        .filter(line -> first.deepMm(line) <= line + ZoneLoad.HAIR_MM)
        .map(
            line -> {
              double turnedIn = 2 * line + cloth.selvedgeMm();
              double wide = Math.max(ZoneLoad.HAIR_MM, single.widthMm());
              return Math.max(opened, single.placeFrom(turnedIn) + wide);
            })
        .reduce(cloth.usableWidthMm(), Math::min);
  }

  /** The second fold is the first line beyond which the edges that are folded in do not overlap. */
  private double doubled(double opened) {
    ZoneLoad first = load(Side.LOW_Y);
    ZoneLoad second = load(Side.HIGH_Y);
    double selvedge = cloth.selvedgeMm();
    if (period == 0) {
      return Math.max(opened, 2 * (first.deepMm(0) + second.beyondMm(0) + selvedge));
    }
    double least = cloth.usableWidthMm();
    for (double one : lines(first).filter(l -> first.deepMm(l) <= l + ZoneLoad.HAIR_MM).toArray()) {
      for (double other : lines(second).filter(l -> l > one).toArray()) {
        // Half of the width lies between the folds, and what the second was moved on to its line.
        double most = 2 * (other - one - selvedge);
        double width =
            DoubleStream.of(
                    opened,
                    other + Math.max(ZoneLoad.HAIR_MM, second.beyondMm(other)),
                    2 * (one + selvedge) + ZoneLoad.HAIR_MM,
                    most - 2 * step() + 3 * ZoneLoad.HAIR_MM)
                .max()
                .orElseThrow();
        if (width <= most + ZoneLoad.HAIR_MM) {
          least = Math.min(least, width);
        }
      }
    }
    return least;
  }

  /** Where a fold may lie: anywhere, so as near as may be, or on the mirror lines of the repeat. */
  private DoubleStream lines(ZoneLoad near) {
    return period == 0
        ? DoubleStream.of(Math.max(ZoneLoad.HAIR_MM, near.deepMm(0)))
        : DoubleStream.iterate(
                cloth.mirrorFromMm(0), mm -> mm < cloth.usableWidthMm(), mm -> mm + step())
            // One on the edge itself is no fold.
            .filter(mm -> mm > ZoneLoad.HAIR_MM);
  }

  private double step() {
    return repeat.orElseThrow().mirrorStepAcrossMm();
  }

  /** Both lengths lie on each other about the line of the repeat that is nearest the middle. */
  private double turned(double opened) {
    Optional<Box> taken =
        marker.zones().stream().filter(z -> z.plies() == 2).findFirst().flatMap(this::taken);
    if (taken.isEmpty() || period == 0) {
      return Math.max(opened, taken.map(Box::width).orElse(0.0));
    }
    double step = step();
    double least = cloth.usableWidthMm();
    double wide = taken.get().width();
    double nearest = taken.get().minY() - slide(taken.get().minY());
    for (double low = nearest; low + wide < least + ZoneLoad.HAIR_MM; low += period) {
      double high = low + wide;
      for (double line = cloth.mirrorFromMm(high / 2); 2 * line < least + step; line += step) {
        double width =
            DoubleStream.of(opened, high, 2 * line - low, 2 * line - step + ZoneLoad.HAIR_MM)
                .max()
                .orElseThrow();
        if (width < 2 * line + step) {
          least = Math.min(least, width);
        }
      }
    }
    return least;
  }

  private ZoneLoad load(Side side) {
    return marker.zones().stream()
        .filter(z -> z.foldEdges().contains(side))
        .findFirst()
        .map(this::load)
        .orElseThrow();
  }

  private ZoneLoad load(Zone zone) {
    List<Ply> plies = laid.orElseThrow().band(zone.id()).orElseThrow().layers();
    Ply lower = plies.get(plies.size() - 1);
    Box box = zone.box();
    return taken(zone)
        .map(
            t ->
                new ZoneLoad(
                    period,
                    lower.open(t.minY()),
                    t.width(),
                    lower.open(zone.foldEdges().contains(Side.LOW_Y) ? box.minY() : box.maxY()),
                    marker.copies().stream()
                        .anyMatch(c -> c.zone().equals(zone.id()) && c.form() == Form.HALF)))
        .orElse(new ZoneLoad(period, 0, 0, 0, false));
  }

  private Optional<Box> taken(Zone zone) {
    return marker.copies().stream()
        .filter(c -> c.zone().equals(zone.id()))
        .map(c -> c.outline().box())
        .reduce(Box::union);
  }
}
