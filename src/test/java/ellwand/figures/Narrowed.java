package ellwand.figures;

import ellwand.cloth.Band;
import ellwand.cloth.Cloth;
import ellwand.cloth.Fold;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Repeat;
import ellwand.cloth.Zone;
import ellwand.geometry.Box;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.rule.Check;
import ellwand.rule.Trial;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** The same marker on narrower cloth with bars across, by trying every fold and every shift. */
final class Narrowed {

  private final Marker marker;
  private final Cloth cloth;
  private final double period;

  private Narrowed(Marker marker, double widthMm) {
    this.marker = marker;
    cloth = marker.lay().cloth().wide(widthMm);
    Repeat repeat = cloth.repeat().orElseThrow();
    period = repeat.acrossMm() * (repeat.halfDrop() ? 2 : 1);
  }

  /** Whether the marker can be had, each zone moved as a whole by whole repeats. */
  static boolean possible(Marker marker, double widthMm) {
    Narrowed narrowed = new Narrowed(marker, widthMm);
    return narrowed.ways().stream()
        .anyMatch(way -> narrowed.on(way).filter(m -> Check.of(m).isEmpty()).isPresent());
  }

  private List<LaidCloth> ways() {
    Fold fold = marker.fold();
    if (!fold.hasBorder() && fold != Fold.LENGTHWISE) {
      return List.of(LaidCloth.of(cloth, fold));
    }
    double step = cloth.repeat().orElseThrow().mirrorStepAcrossMm();
    return DoubleStream.iterate(
            cloth.mirrorFromMm(0), mm -> mm < cloth.usableWidthMm(), mm -> mm + step)
        .filter(line -> LaidCloth.canFold(cloth, fold, line))
        .mapToObj(line -> LaidCloth.of(cloth, fold, line))
        .toList();
  }

  private Optional<Marker> on(LaidCloth way) {
    LaidCloth before =
        LaidCloth.like(marker.lay().cloth(), marker.fold(), marker.zones()).orElseThrow();
    List<Zone> zones = new ArrayList<>();
    List<Copy> copies = new ArrayList<>();
    for (Zone zone : marker.zones()) {
      Band from = before.band(zone.id()).orElseThrow();
      Band to = way.band(zone.id()).orElseThrow();
      List<Copy> there = marker.copies().stream().filter(c -> c.zone().equals(zone.id())).toList();
      Optional<List<Copy>> moved = moved(there, from, to);
      if (moved.isEmpty()) {
        return Optional.empty();
      }
      copies.addAll(moved.get());
      zones.add(to.zone(zone.box().minX(), zone.box().maxX()));
    }
    Lay lay = marker.lay().on(cloth);
    return Optional.of(marker.of(lay).withZones(zones).with(copies));
  }

  private Optional<List<Copy>> moved(List<Copy> copies, Band from, Band to) {
    double last = place(from) - place(to);
    int most = (int) (marker.lay().cloth().widthMm() / period) + 3;
    return IntStream.rangeClosed(-2 * most, 2 * most)
        .mapToObj(n -> copies.stream().map(Trial.shifted(0, last + n * period)).toList())
        .filter(all -> all.stream().allMatch(c -> lies(c, to)))
        .findFirst();
  }

  /** Where on the open cloth the lower ply's y = 0 lies. */
  private static double place(Band band) {
    return band.layers().get(band.layers().size() - 1).open(0);
  }

  private static boolean lies(Copy copy, Band band) {
    Box box = copy.outline().box();
    boolean inside = box.minY() >= band.lowY() - 1e-3 && box.maxY() <= band.highY() + 1e-3;
    boolean onFold =
        band.foldEdges().contains(Zone.Side.LOW_Y) && Math.abs(box.minY() - band.lowY()) < 1e-3
            || band.foldEdges().contains(Zone.Side.HIGH_Y)
                && Math.abs(box.maxY() - band.highY()) < 1e-3;
    return inside && (copy.form() != Form.HALF || onFold);
  }
}
