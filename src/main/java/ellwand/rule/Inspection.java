package ellwand.rule;

import ellwand.cloth.Zone;
import ellwand.cutting.CutPiece;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Marker;
import ellwand.pattern.Sizes;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A marker to be looked at: each copy beside what it claims to be, worked out when asked for. For
 * one thread.
 */
public final class Inspection {

  private final Marker marker;
  private final Optional<Stated> stated;
  private final Optional<Inspection> before;
  private final Set<Integer> changed;
  private final Map<CutPiece, Boolean> handed;
  private List<Placed> placed;
  private Meetings meetings;

  private Inspection(
      Marker marker, Optional<Stated> stated, Optional<Inspection> before, Set<Integer> changed) {
    this.marker = marker;
    this.stated = stated;
    this.before = before;
    this.changed = Set.copyOf(changed);
    handed = before.map(b -> b.handed).orElseGet(IdentityHashMap::new);
  }

  /** With what its file says of it. */
  Inspection(Marker marker, Optional<Stated> stated) {
    this(marker, stated, Optional.empty(), Set.of());
  }

  public static Inspection of(Marker marker) {
    return new Inspection(marker, Optional.empty());
  }

  /**
   * A look at the marker after some of its copies have been laid elsewhere. What is known of the
   * others and of pairs of them is kept.
   *
   * @param next of the same lay and fold, with as many copies
   * @param moved all copies in which it differs, by index
   */
  public Inspection after(Marker next, Set<Integer> moved) {
    Inspection kept = new Inspection(marker, stated);
    kept.placed = placed();
    kept.meetings = meetings();
    kept.handed.putAll(handed);
    return new Inspection(next, stated, Optional.of(kept), moved);
  }

  private record PieceAndForm(String piece, String size, Form form) {}

  /** What a piece is called before people: with its garment only where there are several. */
  String name(String piece, String size, int garment) {
    boolean several =
        marker.lay().wanted().stream()
            .anyMatch(w -> w.garment() != garment || !w.size().equals(size));
    return several ? piece + " (" + Sizes.words(size) + ", garment " + garment + ")" : piece;
  }

  public Marker marker() {
    return marker;
  }

  /** What the marker's file says of it, if it was read from one. */
  Optional<Stated> stated() {
    return stated;
  }

  List<Placed> placed() {
    placed = placed == null ? place() : placed;
    return placed;
  }

  private List<Placed> place() {
    List<Placed> found = new ArrayList<>();
    Map<String, Zone> zones = new HashMap<>();
    marker.zones().forEach(z -> zones.putIfAbsent(z.id(), z));
    Map<PieceAndForm, Optional<CutPiece>> cuts = new HashMap<>();
    for (int i = 0; i < marker.copies().size(); i++) {
      Copy copy = marker.copies().get(i);
      Optional<Zone> zone = Optional.ofNullable(zones.get(copy.zone()));
      if (before.isPresent() && !changed.contains(i)) {
        found.add(before.get().placed().get(i).in(zone));
        continue;
      }
      Optional<CutPiece> cut =
          cuts.computeIfAbsent(
              new PieceAndForm(copy.piece(), copy.size(), copy.form()),
              key -> marker.lay().wantedBy(copy).map(w -> key.form.drawn(w.cut())));
      found.add(Placed.of(i, copy, name(copy.piece(), copy.size(), copy.garment()), cut, zone));
    }
    return found;
  }

  /** Whether a piece differs from its mirror image. */
  boolean handed(CutPiece cut) {
    return handed.computeIfAbsent(cut, Handedness::of);
  }

  /** Copies that overlap or are nearer each other than the cloth's gap. */
  Meetings meetings() {
    meetings = meetings == null ? meet() : meetings;
    return meetings;
  }

  private Meetings meet() {
    return Meetings.within(
        marker.lay().cloth().gapMm(), placed(), before.map(Inspection::meetings), changed);
  }
}
