package ellwand.nest;

import ellwand.cloth.Repeat;
import ellwand.cutting.CutPiece;
import ellwand.geometry.Point;
import ellwand.lay.Lay;
import ellwand.lay.Wanted;
import ellwand.nest.Free.Axis;
import ellwand.pattern.Asks;
import ellwand.pattern.Bars;
import ellwand.pattern.InputException;
import ellwand.pattern.Match;
import java.util.ArrayDeque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;

/**
 * Where in the cloth's repeat the pieces of one size want one of their marks: pieces that match
 * each other, directly or by way of others, hang together and leave one choice for all.
 */
final class MarkPlaces {

  /** Marks may miss each other by so much where pieces match at several, mm. */
  private static final double SAME_MM = 0.005;

  private final Repeat repeat;
  private final Axis axis;
  private final double period;
  private final Map<String, CutPiece> pieces = new LinkedHashMap<>();
  private final Map<String, Place> places = new HashMap<>();
  private int groups;

  /**
   * A mark and its distance from the middle of a bar in the piece's own direction.
   *
   * @param phaseMm the distance, or what is added to that of the group
   * @param group whose distance is chosen; empty if the distance is stated
   */
  record Place(Point mark, double phaseMm, Optional<Integer> group) {}

  /**
   * @throws InputException if pieces cannot match at all their marks
   */
  MarkPlaces(Lay lay, Repeat repeat, String size, Axis axis) {
    this.repeat = repeat;
    this.axis = axis;
    period = axis == Axis.ALONG ? repeat.alongMm() : repeat.acrossMm();
    for (Wanted w : lay.wanted()) {
      if (w.size().equals(size)) {
        pieces.put(w.cut().name(), w.cut());
      }
    }
    if (period > 0) {
      pieces.values().forEach(this::place);
      lay.matches().stream().filter(this::counts).forEach(this::requireMirrored);
      Queue<String> reached = new ArrayDeque<>(places.keySet());
      spread(lay, reached);
      for (Match match : lay.matches()) {
        if (counts(match) && !places.containsKey(match.piece())) {
          Point mark = pieces.get(match.piece()).marks().get(match.mark());
          places.put(match.piece(), new Place(mark, 0, Optional.of(groups++)));
          reached.add(match.piece());
          spread(lay, reached);
        }
      }
      lay.matches().stream().filter(this::counts).forEach(this::agree);
    }
  }

  private void place(CutPiece piece) {
    Optional<Asks.Place> place = piece.piece().asks().place().filter(p -> !p.onBorder());
    if (place.isEmpty()) {
      return;
    }
    Optional<Double> phase = axis == Axis.ALONG ? place.get().alongMm() : place.get().acrossMm();
    if (phase.isPresent() || repeat.halfDrop()) {
      Point mark = piece.marks().get(place.get().mark());
      places.put(piece.name(), new Place(mark, phase.orElse(0.0), Optional.empty()));
    }
  }

  /**
   * The left half of a garment mirrors the right one, so bars along the cloth meet at both its
   * seams only where the repeat mirrors too; a piece cut on the fold then has its fold on a bar.
   */
  private void requireMirrored(Match match) {
    if (axis == Axis.ALONG) {
      return;
    }
    if (!repeat.evenAcross()) {
      throw new InputException(
          match.problem(
              match.mark()
                  + " cannot match "
                  + match.otherPiece()
                  + "."
                  + match.otherMark()
                  + " on bars along the cloth: the repeat has no mirror line, so that one side of"
                  + " the garment would not match",
              "Ask for bars: across, or say that the repeat is even"));
    }
    List.of(match.piece(), match.otherPiece()).forEach(this::centre);
  }

  private void centre(String name) {
    pieces
        .get(name)
        .fold()
        .ifPresent(f -> places.putIfAbsent(name, new Place(f.from(), 0, Optional.empty())));
  }

  private boolean counts(Match match) {
    Bars bars = axis == Axis.ALONG ? Bars.ACROSS : Bars.ALONG;
    return (match.bars() == bars || match.bars() == Bars.BOTH || repeat.halfDrop())
        && pieces.containsKey(match.piece())
        && pieces.containsKey(match.otherPiece());
  }

  private void spread(Lay lay, Queue<String> reached) {
    while (!reached.isEmpty()) {
      String name = reached.remove();
      for (Match m : lay.matches()) {
        if (counts(m) && m.piece().equals(name)) {
          follow(name, m.mark(), m.otherPiece(), m.otherMark(), reached);
        }
        if (counts(m) && m.otherPiece().equals(name)) {
          follow(name, m.otherMark(), m.piece(), m.mark(), reached);
        }
      }
    }
  }

  private void follow(
      String from, String fromMark, String to, String toMark, Queue<String> reached) {
    if (!places.containsKey(to)) {
      Point mark = pieces.get(to).marks().get(toMark);
      places.put(to, new Place(mark, phaseMm(from, fromMark), places.get(from).group()));
      reached.add(to);
    }
  }

  private double phaseMm(String piece, String mark) {
    Place place = places.get(piece);
    return place.phaseMm() + along(pieces.get(piece).marks().get(mark)) - along(place.mark());
  }

  private double along(Point p) {
    return axis == Axis.ALONG ? p.x() : p.y();
  }

  private void agree(Match m) {
    boolean together = places.get(m.piece()).group().equals(places.get(m.otherPiece()).group());
    double off =
        Math.abs(
            Math.IEEEremainder(
                phaseMm(m.piece(), m.mark()) - phaseMm(m.otherPiece(), m.otherMark()), period));
    if (!together || off > SAME_MM) {
      throw new InputException(
          m.problem(
              String.format(
                  java.util.Locale.ROOT,
                  "%s cannot match %s.%s as well as all else that is asked: it would be %.1f mm off",
                  m.mark(),
                  m.otherPiece(),
                  m.otherMark(),
                  off),
              "Take out one of the matches or places of these pieces"));
    }
  }

  Optional<Place> of(String piece) {
    return Optional.ofNullable(places.get(piece));
  }

  int groups() {
    return groups;
  }

  double periodMm() {
    return period;
  }

  Map<String, CutPiece> pieces() {
    return pieces;
  }
}
