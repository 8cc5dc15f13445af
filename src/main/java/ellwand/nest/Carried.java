package ellwand.nest;

import ellwand.cloth.Band;
import ellwand.cloth.Cloth;
import ellwand.cloth.Fold;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Ply;
import ellwand.cloth.Stock;
import ellwand.cloth.Zone;
import ellwand.cutting.CutPiece;
import ellwand.geometry.Motion;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Heading;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.rule.Check;
import ellwand.rule.Finding;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Markers carried over to cloth that lies otherwise: what could be cut there without any search.
 */
public final class Carried {

  /** Less than this is rounding, mm. */
  static final double SAME_MM = 1e-6;

  private Carried() {}

  /**
   * The marker with its cloth laid open, no longer in cloth: each piece lies on the ply that it is
   * cut from, both of a pair beside each other, and a half is opened out. Where a gap between
   * pieces is asked for, what reached the fold is moved off it by that. Empty if it breaks a hard
   * rule there, as where the width has no room for the gap.
   */
  public static Optional<Marker> opened(Marker folded) {
    return unfolded(folded)
        .flatMap(
            flat ->
                Stream.of(flat, apart(folded, flat))
                    .filter(marker -> Check.of(marker).isEmpty())
                    .findFirst());
  }

  /**
   * What keeps a marker from lying open in as little cloth, a clause; empty if nothing does.
   *
   * @param unit that lengths are told in
   */
  public static Optional<String> inTheWay(Marker folded, Unit unit) {
    Optional<Marker> opened = opened(folded);
    String gap = new Length(folded.lay().cloth().gapMm()).show(unit);
    if (opened.isPresent()) {
      return opened
          .filter(m -> m.clothLengthMm() > folded.clothLengthMm() + SAME_MM)
          .map(m -> "opened flat, the shorter way needs the gap of " + gap + " where the fold was");
    }
    Optional<Finding> finding =
        unfolded(folded).flatMap(flat -> Check.of(flat).stream().findFirst());
    if (finding.filter(f -> f.rule().id().equals("gap")).isPresent()) {
      return Optional.of(
          "opened flat, the shorter way has no room for the gap of " + gap + " where the fold was");
    }
    return Optional.of(
        "the shorter way cannot be opened flat as it lies"
            + finding.map(f -> ": " + f.sentence(unit).replaceAll("\\.$", "")).orElse(""));
  }

  /** What can lie folded can be opened flat, so that open cloth takes no more. */
  static List<Tried> flat(List<Tried> tried) {
    List<Marker> byLength = byLength(tried);
    return tried.stream().map(t -> t.fold() == Fold.OPEN ? openNoLonger(t, byLength) : t).toList();
  }

  private static List<Marker> byLength(List<Tried> tried) {
    return tried.stream()
        .flatMap(t -> t.marker().stream())
        .sorted(Comparator.comparingDouble(Marker::clothLengthMm))
        .toList();
  }

  private static Tried openNoLonger(Tried open, List<Marker> byLength) {
    return byLength.stream()
        .takeWhile(open::isLongerThan)
        .flatMap(marker -> opened(marker).stream())
        .filter(open::isLongerThan)
        .min(Comparator.comparingDouble(Marker::clothLengthMm))
        .map(open::with)
        .orElse(open);
  }

  /**
   * What was found for a lay, but nothing longer than what was found for it on other cloth, where
   * that may lie on its own, folded as it was or opened flat.
   *
   * @param others in whatever ways their cloth may lie
   */
  public static List<Tried> onto(Lay lay, List<Tried> tried, List<Tried> others) {
    List<Marker> byLength = byLength(others);
    return tried.stream()
        .map(
            one ->
                byLength.stream()
                    .takeWhile(one::isLongerThan)
                    .flatMap(marker -> onto(lay, marker, one.fold()).stream())
                    .filter(one::isLongerThan)
                    .min(Comparator.comparingDouble(Marker::clothLengthMm))
                    .map(one::with)
                    .orElse(one))
        .toList();
  }

  private static Optional<Marker> onto(Lay lay, Marker marker, Fold fold) {
    if (marker.fold() == fold) {
      return onto(lay, marker);
    }
    return fold == Fold.OPEN ? moved(lay, marker).flatMap(Carried::opened) : Optional.empty();
  }

  static Optional<Marker> unfolded(Marker folded) {
    Cloth cloth = folded.lay().cloth();
    boolean wanted = folded.copies().stream().allMatch(c -> folded.lay().wantedBy(c).isPresent());
    return LaidCloth.like(cloth, folded.fold(), folded.zones())
        .filter(laid -> wanted)
        .map(laid -> unfolded(folded, laid));
  }

  private static Marker apart(Marker folded, Marker flat) {
    Cloth cloth = folded.lay().cloth();
    LaidCloth laid = LaidCloth.like(cloth, folded.fold(), folded.zones()).orElseThrow();
    return flat(
        folded,
        ApartAtFolds.of(folded, laid).moved(flat.copies(), cloth.gapMm(), cloth.usableWidthMm()));
  }

  private static Marker unfolded(Marker folded, LaidCloth laid) {
    Band band = LaidCloth.of(folded.lay().cloth(), Fold.OPEN).bands().get(0);
    List<Copy> copies =
        folded.copies().stream()
            .flatMap(copy -> opened(folded, laid, copy))
            .map(copy -> copy.in(band.id()))
            .toList();
    return flat(folded, copies);
  }

  private static Marker flat(Marker folded, List<Copy> copies) {
    Band band = LaidCloth.of(folded.lay().cloth(), Fold.OPEN).bands().get(0);
    double taken = copies.stream().mapToDouble(c -> c.outline().box().maxX()).max().orElse(0);
    double stock = folded.lay().cloth().stock().map(Stock::lengthMm).orElse(0.0);
    return new Marker(
        folded.lay(),
        Fold.OPEN,
        List.of(band.zone(0, Math.max(taken, stock))),
        copies,
        folded.search());
  }

  private static Stream<Copy> opened(Marker folded, LaidCloth laid, Copy copy) {
    CutPiece cut = folded.lay().wantedBy(copy).map(Wanted::cut).orElseThrow();
    boolean half = cut.piece().fold().isPresent();
    Form form = half ? Form.OPENED : Form.WHOLE;
    List<Motion> motions =
        laid.band(copy.zone()).orElseThrow().layers().stream()
            .map(ply -> motion(ply, folded, copy))
            .toList();
    if (copy.form() == Form.PAIR) {
      List<Integer> garments = copy.garments();
      List<Copy> both = new ArrayList<>();
      for (int i = 0; i < motions.size(); i++) {
        int garment = garments.get(Math.min(i, garments.size() - 1));
        both.add(copy(copy, garment, form, cut, motions.get(i)));
      }
      return both.stream();
    }
    // Where a twin was spare it is cut from the ply on which it lies as drawn.
    Motion asDrawn = motions.stream().filter(m -> !m.flipped()).findFirst().orElse(motions.get(0));
    return Stream.of(copy(copy, copy.garment(), form, cut, asDrawn));
  }

  private static Motion motion(Ply ply, Marker folded, Copy copy) {
    return ply.opening(folded.acrossMm()).after(copy.motion());
  }

  private static Copy copy(Copy from, int garment, Form form, CutPiece cut, Motion motion) {
    return new Copy(
        from.piece(),
        from.size(),
        garment,
        form,
        from.zone(),
        Heading.ofTurn(motion.turnDegrees(), motion.flipped()),
        motion,
        form.drawn(cut).cutting().moved(motion));
  }

  /**
   * The marker as one of a lay on other cloth that lies in the same way: on wider cloth everything
   * keeps its distance from the fold or edge that its zone is laid from. Empty if it breaks a hard
   * rule there, or if the lay wants other pieces.
   */
  public static Optional<Marker> onto(Lay lay, Marker marker) {
    return moved(lay, marker).filter(carried -> Check.of(carried).isEmpty());
  }

  private static Optional<Marker> moved(Lay lay, Marker marker) {
    return like(lay.cloth(), marker).map(laid -> moved(lay, laid, marker));
  }

  private static Optional<LaidCloth> like(Cloth other, Marker marker) {
    Fold fold = marker.fold();
    if (!fold.hasBorder()) {
      return Optional.of(LaidCloth.of(other, fold));
    }
    return LaidCloth.like(marker.lay().cloth(), fold, marker.zones())
        .map(laid -> laid.bands().get(0).highY())
        .filter(border -> LaidCloth.canFold(other, fold, border))
        .map(border -> LaidCloth.of(other, fold, border));
  }

  private static Marker moved(Lay lay, LaidCloth laid, Marker marker) {
    List<Zone> zones = new ArrayList<>();
    Map<String, Double> shifts = new HashMap<>();
    for (Zone zone : marker.zones()) {
      Band band = laid.band(zone.id()).orElseThrow();
      zones.add(band.zone(zone.box().minX(), zone.box().maxX()));
      boolean fromHigh = zone.foldEdges().equals(Set.of(Zone.Side.HIGH_Y));
      shifts.put(
          zone.id(), fromHigh ? band.highY() - zone.box().maxY() : band.lowY() - zone.box().minY());
    }
    List<Copy> copies =
        marker.copies().stream().map(copy -> across(copy, shifts.get(copy.zone()))).toList();
    return new Marker(lay, marker.fold(), zones, copies, marker.search());
  }

  private static Copy across(Copy copy, double mm) {
    return Math.abs(mm) < SAME_MM ? copy : copy.shifted(0, mm);
  }
}
