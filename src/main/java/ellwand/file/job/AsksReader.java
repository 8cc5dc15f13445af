package ellwand.file.job;

import ellwand.file.source.Spot;
import ellwand.pattern.Asks;
import ellwand.pattern.Draft;
import ellwand.pattern.Mark;
import ellwand.pattern.Match;
import ellwand.pattern.Piece;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads what a piece asks of its cloth besides its grain. */
final class AsksReader {

  private AsksReader() {}

  /**
   * What the piece asks.
   *
   * @param matches of the style, which speak of its marks
   * @throws ellwand.problem.InputException if a mark is not there
   */
  static Asks read(Spot spot, Draft draft, Piece piece, List<Match> matches) {
    Unit bare = spot.sheet().units().get("style");
    Spot value = spot.get("value");
    Spot place = spot.get("place");
    List<String> words = new ArrayList<>();
    place.get("at").text().ifPresent(words::add);
    for (Match match : matches) {
      if (match.piece().equals(piece.name())) {
        words.add(match.mark());
      }
      if (match.otherPiece().equals(piece.name())) {
        words.add(match.otherMark());
      }
    }
    List<Mark> marks =
        words.stream().distinct().map(w -> MarksReader.mark(w, bare, draft, piece)).toList();
    return new Asks(
        value.present() ? Optional.of(value.node().asDouble()) : Optional.empty(),
        place(place),
        marks);
  }

  private static Optional<Asks.Place> place(Spot spot) {
    return spot.get("at")
        .text()
        .map(
            at ->
                new Asks.Place(
                    at,
                    spot.get("along").length(),
                    spot.get("across").length(),
                    spot.get("on-border").isTrue()));
  }
}
