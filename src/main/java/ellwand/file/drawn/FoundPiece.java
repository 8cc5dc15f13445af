package ellwand.file.drawn;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.pattern.Draft;
import java.util.List;

/**
 * A piece found in a drawing.
 *
 * @param calledInDrawing its name there
 * @param words entries of a piece that go before what its lines say
 * @param said what was found and what was guessed, one clause each
 * @param line of the file, 0 if unknown
 */
public record FoundPiece(
    String calledInDrawing, Draft draft, ObjectNode words, List<String> said, int line) {

  public FoundPiece {
    said = List.copyOf(said);
  }
}
