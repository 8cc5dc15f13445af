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
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.rule.Check;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
   * cut from, both of a pair beside each other, and a half is opened out. Empty if it breaks a hard
   * rule there, as where a gap between pieces is asked for and both of a pair reach the fold.
   */
  public static Optional<Marker> opened(Marker folded) {
    return unfolded(folded).filter(marker -> Check.of(marker).isEmpty());
  }

  /** The same, whether or not it is legal; empty if its zones are not those of its cloth. */
  static Optional<Marker> unfolded(Marker folded) {
    Cloth cloth = folded.lay().cloth();
    return LaidCloth.like(cloth, folded.fold(), folded.zones())
        .map(
            laid -> {
              List<Copy> copies =
                  folded.copies().stream().flatMap(copy -> opened(folded, laid, copy)).toList();
              Band band = LaidCloth.of(cloth, Fold.OPEN).bands().get(0);
              double length =
                  Math.max(
                      copies.stream().mapToDouble(c -> c.outline().box().maxX()).max().orElse(0),
                      cloth.stock().map(Stock::lengthMm).orElse(0.0));
              return new Marker(
                  folded.lay(),
                  Fold.OPEN,
                  List.of(band.zone(0, length)),
                  copies.stream().map(copy -> copy.in(band.id())).toList(),
                  folded.search());
            });
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
   * The marker on other cloth that lies in the same way: on wider cloth everything keeps its
   * distance from the fold or edge that its zone is laid from. Empty if it breaks a hard rule
   * there.
   */
  public static Optional<Marker> onto(Cloth other, Marker marker) {
    return like(other, marker)
        .map(laid -> onto(other, laid, marker))
        .filter(carried -> Check.of(carried).isEmpty());
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

  private static Marker onto(Cloth other, LaidCloth laid, Marker marker) {
    List<Zone> zones = new ArrayList<>();
    Map<String, Double> shifts = new HashMap<>();
    for (Zone zone : marker.zones()) {
      Band band = laid.band(zone.id()).orElseThrow();
      zones.add(band.zone(zone.box().minX(), zone.box().maxX()));
      boolean fromHigh = zone.foldEdges().contains(Zone.Side.HIGH_Y);
      shifts.put(
          zone.id(), fromHigh ? band.highY() - zone.box().maxY() : band.lowY() - zone.box().minY());
    }
    List<Copy> copies =
        marker.copies().stream().map(copy -> across(copy, shifts.get(copy.zone()))).toList();
    return new Marker(marker.lay().on(other), marker.fold(), zones, copies, marker.search());
  }

  private static Copy across(Copy copy, double mm) {
    return Math.abs(mm) < SAME_MM ? copy : copy.shifted(0, mm);
  }
}
