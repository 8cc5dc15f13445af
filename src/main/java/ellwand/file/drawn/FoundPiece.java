package ellwand.file.drawn;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.geometry.Motion;
import ellwand.pattern.Draft;
import ellwand.pattern.GradeRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A piece found in a drawing.
 *
 * @param calledInDrawing its name there
 * @param words entries of a piece that go before what its lines say
 * @param placing from the page to the piece's own frame
 * @param turns numbers of its points that are there in every size
 * @param grade how its points move from size to size
 * @param said what was found and what was guessed, one clause each
 * @param line of the file, 0 if unknown
 */
public record FoundPiece(
    String calledInDrawing,
    Draft draft,
    ObjectNode words,
    Motion placing,
    List<Integer> turns,
    Map<String, GradeRule> grade,
    List<String> said,
    int line) {

  public FoundPiece {
    turns = List.copyOf(turns);
    said = List.copyOf(said);
  }

  /** The same in several sizes. */
  FoundPiece graded(Draft other, Map<String, GradeRule> rules, List<String> more) {
    List<String> all = new ArrayList<>(said);
    all.addAll(more);
    return new FoundPiece(calledInDrawing, other, words, placing, turns, rules, all, line);
  }
}
