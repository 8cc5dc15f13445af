package ellwand.rule;

import ellwand.cloth.Zone;
import ellwand.cutting.CutPiece;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Marker;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A marker to be looked at: each copy beside what it claims to be, worked out when asked for. */
public final class Inspection {

  private final Marker marker;
  private final Optional<Stated> stated;
  private List<Placed> placed;
  private List<Meeting> meetings;

  Inspection(Marker marker, Optional<Stated> stated) {
    this.marker = marker;
    this.stated = stated;
  }

  private record PieceAndForm(String piece, String size, Form form) {}

  /** What a piece is called before people: with its garment only where there are several. */
  String name(String piece, String size, int garment) {
    boolean several =
        marker.lay().wanted().stream()
            .anyMatch(w -> w.garment() != garment || !w.size().equals(size));
    return several ? piece + " (size " + size + ", garment " + garment + ")" : piece;
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
      Optional<CutPiece> cut =
          cuts.computeIfAbsent(
              new PieceAndForm(copy.piece(), copy.size(), copy.form()),
              key -> marker.lay().wantedBy(copy).map(w -> key.form.drawn(w.cut())));
      found.add(
          Placed.of(
              i,
              copy,
              name(copy.piece(), copy.size(), copy.garment()),
              cut,
              Optional.ofNullable(zones.get(copy.zone()))));
    }
    return found;
  }

  /** Copies that overlap or are nearer each other than the cloth's gap. */
  List<Meeting> meetings() {
    meetings = meetings == null ? Meeting.within(marker.lay().cloth().gapMm(), placed()) : meetings;
    return meetings;
  }
}
