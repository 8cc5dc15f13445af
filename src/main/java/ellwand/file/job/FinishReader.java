package ellwand.file.job;

import ellwand.file.source.Names;
import ellwand.file.source.Spot;
import ellwand.pattern.Finish;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads what is said of a piece once it is altered. */
final class FinishReader {

  private static final List<String> GRAIN = List.of("grain", "grain-tolerance", "direction");

  private FinishReader() {}

  /**
   * What is said, or nothing if it is wrong.
   *
   * @param drawn whether the piece has an outline, which most of it belongs to then
   */
  static Optional<Finish> read(Spot piece, PieceHead head, boolean drawn) {
    int before = piece.problems().size();
    Map<String, Finish.EdgeFinish> edges = edges(piece.get("edges"), head, drawn);
    if (drawn) {
      return Optional.of(
          new Finish(
              Optional.empty(),
              edges,
              Optional.empty(),
              Optional.empty(),
              List.of(),
              List.of(),
              head.cuts()));
    }
    boolean fromFile = piece.get("from").get("file").present();
    boolean said = piece.get("allowance").present() || fromFile || piece.get("block").present();
    Finish finish =
        new Finish(
            said ? head.allowance() : Optional.empty(),
            edges,
            piece.get("fold").text(),
            GRAIN.stream().anyMatch(key -> piece.get(key).present())
                ? Optional.of(head.grain())
                : Optional.empty(),
            PieceReader.notches(piece.get("notches")),
            PieceReader.innerLines(piece.get("lines")),
            head.cuts());
    return piece.problems().size() > before ? Optional.empty() : Optional.of(finish);
  }

  private static Map<String, Finish.EdgeFinish> edges(Spot edges, PieceHead head, boolean drawn) {
    Map<String, Finish.EdgeFinish> said = new LinkedHashMap<>();
    edges
        .entries()
        .forEach(
            (name, edge) -> {
              boolean ends = edge.get("from").present() || edge.get("to").present();
              if (drawn && ends) {
                return;
              }
              Names.check(edge, name);
              edge.holds(
                  !ends,
                  "the edges of a copy or a block run where they do",
                  "Take from: and to: out, or alter the piece");
              said.put(
                  name,
                  new Finish.EdgeFinish(
                      head.own(edge.get("allowance")),
                      edge.get("turned-back").present()
                          ? Optional.of(edge.get("turned-back").isTrue())
                          : Optional.empty()));
            });
    return said;
  }
}
