package ellwand.file.drawn;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.source.Folder;
import ellwand.file.source.Json;
import ellwand.file.source.Source;
import ellwand.file.source.Tree;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What the user says of the pieces in a drawing: by its name there, what a piece is called and
 * entries as in a job's piece; {@code leave-out} takes it out.
 *
 * @param file as the user gave it
 * @param unit of bare numbers in it, if it says
 */
public record PieceNames(String file, Optional<Unit> unit, ObjectNode pieces) {

  private static final int MOST_BYTES = 1_000_000;

  public static final PieceNames NONE = new PieceNames("", Optional.empty(), Json.object());

  /**
   * Reads a file of them.
   *
   * @throws InputException if it is none
   */
  public static PieceNames read(String file, Folder from) {
    Tree tree = Tree.ofYaml(Source.read(file, from, MOST_BYTES));
    if (!(tree.root().get("pieces") instanceof ObjectNode pieces)) {
      throw new InputException(
          Problem.of(
                  "it has no pieces:",
                  "Write for example  pieces: {left part: {called: front, cut: {main: pair}}}")
              .at(file, 1));
    }
    Optional<Unit> unit =
        Optional.ofNullable(tree.root().get("unit")).map(u -> Unit.parse(u.asText()));
    return new PieceNames(file, unit, pieces);
  }

  /** What is said of a piece; nothing if nothing is. */
  ObjectNode of(FoundPiece piece) {
    return pieces.get(piece.calledInDrawing()) instanceof ObjectNode said
        ? said.deepCopy()
        : Json.object();
  }

  /**
   * Refuses names that are not in the drawing.
   *
   * @param there what pieces are called in it
   * @throws InputException which says what is there
   */
  void checkAgainst(Set<String> there) {
    List<Problem> problems = new ArrayList<>();
    pieces
        .fieldNames()
        .forEachRemaining(
            name -> {
              if (!there.contains(name)) {
                problems.add(
                    Problem.of(
                            "no piece in the drawing is called " + name,
                            "Use one of " + String.join(", ", there))
                        .at(file, 0));
              }
            });
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
  }
}
