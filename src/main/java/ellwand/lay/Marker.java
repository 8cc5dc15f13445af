package ellwand.lay;

import ellwand.cloth.Fold;
import ellwand.cloth.KeepOut;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Zone;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A lay with a place for every copy.
 *
 * @param fold how the cloth lies
 * @param zones without gaps or overlaps between them
 * @param search how it was found; empty if it was laid or altered by hand
 */
public record Marker(
    Lay lay, Fold fold, List<Zone> zones, List<Copy> copies, Optional<Search> search) {

  /**
   * How a marker was found.
   *
   * @param effort as given by the user
   * @param stoppedEarly stopped by the user before the effort was spent
   */
  public record Search(long seed, int threads, String effort, boolean stoppedEarly) {}

  public Marker {
    zones = List.copyOf(zones);
    copies = List.copyOf(copies);
  }

  /** Laid by hand. */
  public Marker(Lay lay, Fold fold, List<Zone> zones, List<Copy> copies) {
    this(lay, fold, zones, copies, Optional.empty());
  }

  /** The same copies as the marker of another lay. */
  public Marker of(Lay other) {
    return new Marker(other, fold, zones, copies, search);
  }

  public Marker with(List<Copy> others) {
    return new Marker(lay, fold, zones, others, search);
  }

  /**
   * @param index from 0
   */
  public Marker with(int index, Copy other) {
    List<Copy> others = new ArrayList<>(copies);
    others.set(index, other);
    return with(others);
  }

  public Marker withZones(List<Zone> others) {
    return new Marker(lay, fold, others, copies, search);
  }

  public Marker foundBy(Search how) {
    return new Marker(lay, fold, zones, copies, Optional.of(how));
  }

  /** The same as no search's. */
  public Marker byHand() {
    return new Marker(lay, fold, zones, copies);
  }

  /** Whether a search for it was stopped before its effort was spent. */
  public boolean stoppedEarly() {
    return search.filter(Search::stoppedEarly).isPresent();
  }

  /** From the cut end to the farthest cutting line, mm. */
  public double lengthMm() {
    return copies.stream().mapToDouble(c -> c.outline().box().maxX()).max().orElse(0);
  }

  /** The same in cloth, mm: what lies double end over end counts twice. */
  public double clothLengthMm() {
    return acrossMm() + lengthMm();
  }

  /** How far from its cut end the cloth is folded or cut across, mm; 0 if it is not. */
  public double acrossMm() {
    return LaidCloth.acrossMm(fold, zones);
  }

  /** What may be cut across, as laid, mm. */
  public double markerWidthMm() {
    return zones.stream().mapToDouble(z -> z.box().maxY()).max().orElse(0);
  }

  /** Wanted area as cut over open usable width times cloth length, 0 to 1. */
  public double utilisation() {
    return lay.wantedAreaMm2() / (lay.cloth().usableWidthMm() * clothLengthMm());
  }

  /** Where flaws of the cloth bar it as it is laid. */
  public List<KeepOut> keepOuts() {
    return lay.cloth().flaws().isEmpty()
        ? List.of()
        : LaidCloth.like(lay.cloth(), fold, zones)
            .map(laid -> zones.stream().flatMap(zone -> keepOuts(laid, zone)).toList())
            .orElse(List.of());
  }

  /** What lies on the cloth or may not be laid on. */
  public List<Outline> covered() {
    return Stream.concat(
            copies.stream().map(Copy::outline), keepOuts().stream().map(KeepOut::outline))
        .toList();
  }

  private Stream<KeepOut> keepOuts(LaidCloth laid, Zone zone) {
    Box box = zone.box();
    return laid.band(zone.id()).stream()
        .flatMap(
            band -> KeepOut.of(lay.cloth(), band, acrossMm(), box.minX(), box.maxX()).stream());
  }

  public Zone zone(String id) {
    return zones.stream()
        .filter(z -> z.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no zone " + id));
  }
}
