package ellwand.file.job;

import ellwand.file.source.FileLine;
import ellwand.file.source.Names;
import ellwand.file.source.Spot;
import ellwand.pattern.Bars;
import ellwand.pattern.Match;
import ellwand.pattern.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Reads {@code match:}: {@code [front.side seam @ 12 cm, back.side seam @ 12 cm]}, or the same as
 * {@code points:} with {@code bars:}.
 */
final class MatchesReader {

  private MatchesReader() {}

  /**
   * Those whose pieces are there; the others are reported.
   *
   * @param drawn names of pieces with an outline
   */
  static List<Match> read(Spot matches, Set<String> drawn) {
    List<Match> read = new ArrayList<>();
    for (Spot spot : matches.items()) {
      boolean plain = spot.node().isArray();
      List<Spot> points = (plain ? spot : spot.get("points")).items();
      Bars bars =
          plain
              ? Bars.ACROSS
              : spot.get("bars")
                  .text()
                  .map(w -> Bars.valueOf(w.toUpperCase(Locale.ROOT)))
                  .orElse(Bars.ACROSS);
      Optional<String[]> one = pieceAndMark(points.get(0), drawn);
      Optional<String[]> other = pieceAndMark(points.get(1), drawn);
      if (one.isPresent() && other.isPresent()) {
        FileLine place = spot.sheet().place(spot.at());
        read.add(
            new Match(
                one.get()[0],
                one.get()[1],
                other.get()[0],
                other.get()[1],
                bars,
                Optional.of(new Written(place.file(), place.line()))));
      }
    }
    return read;
  }

  private static Optional<String[]> pieceAndMark(Spot spot, Set<String> drawn) {
    String text = spot.node().asText();
    int dot = text.indexOf('.');
    String piece = dot < 0 ? text : text.substring(0, dot);
    return spot.holds(
            dot > 0 && drawn.contains(piece),
            "no piece called " + Names.shown(piece) + " is drawn",
            "Write piece.edge @ distance, for example front.side seam @ 12 cm")
        ? Optional.of(new String[] {piece, text.substring(dot + 1).strip()})
        : Optional.empty();
  }
}
