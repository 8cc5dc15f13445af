package ellwand.file.job;

import ellwand.file.source.Names;
import ellwand.geometry.Point;
import ellwand.pattern.Draft;
import ellwand.pattern.Edge;
import ellwand.pattern.Mark;
import ellwand.pattern.Piece;
import ellwand.problem.InputException;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Reads places on sewing lines: {@code side seam @ 12 cm}, measured from the edge's first point.
 */
final class MarksReader {

  private MarksReader() {}

  /**
   * The mark on a piece.
   *
   * @param words edge @ distance, or an edge alone for its first point
   * @param bare unit of a distance that has none
   * @param draft as the piece was drawn
   * @throws InputException if there is no such place, saying what to write
   */
  static Mark mark(String words, Unit bare, Draft draft, Piece piece) {
    String[] parts = words.split("@", 2);
    String name = parts[0].strip();
    Edge edge =
        piece.edges().stream()
            .filter(e -> e.name().equals(name))
            .findFirst()
            .orElseThrow(
                () ->
                    InputException.of(
                        "piece " + piece.name() + " has no edge " + Names.shown(name),
                        "Use one of "
                            + piece.edges().stream()
                                .map(Edge::name)
                                .collect(Collectors.joining(", "))));
    double at = parts.length == 1 ? 0 : Length.parse(parts[1], bare).mm();
    double length = edge.line().length();
    if (!(at >= 0 && at <= length + 1e-6)) {
      throw InputException.of(
          "'"
              + Names.shown(words)
              + "' lies beyond the edge, which is "
              + new Length(length).show(bare)
              + " long",
          "Measure from its first point");
    }
    return new Mark(words, name, againstDrawn(draft, edge) ? Math.max(0, length - at) : at);
  }

  /** Whether the piece runs round the other way than it was drawn. */
  private static boolean againstDrawn(Draft draft, Edge edge) {
    Optional<Point> first =
        draft.stretches().stream()
            .filter(s -> s.name().equals(edge.name()))
            .flatMap(
                s ->
                    draft.nodes().stream()
                        .filter(n -> n.name().filter(s.from()::equals).isPresent()))
            .map(Draft.Node::at)
            .findFirst();
    return first
        .filter(p -> p.distance(edge.line().end()) < p.distance(edge.line().start()))
        .isPresent();
  }
}
