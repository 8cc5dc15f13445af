package ellwand.file.source;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Says of an entry which line, piece and edge it belongs to. */
final class JobWords {

  private JobWords() {}

  /**
   * The problem with the line of an entry and the piece and edge round it.
   *
   * <p>A problem that names an edge of its own points at that edge's line.
   */
  static Problem named(Problem problem, Sheet sheet, JsonPointer at) {
    List<String> keys = keys(at);
    Optional<String> piece =
        keys.size() > 2 && inPieces(keys) ? Optional.of(keys.get(2)) : problem.piece();
    Optional<String> edge = problem.edge();
    JsonPointer line = at;
    if (edge.isPresent() && keys.size() == 3 && inPieces(keys)) {
      line = naming(edge.get(), sheet, at);
    } else if (edge.isEmpty() && keys.size() > 4 && keys.get(3).equals("edges")) {
      edge = Optional.of(keys.get(4));
    }
    FileLine place = sheet.place(line);
    return new Problem(
        Optional.of(place.file()), place.line(), piece, edge, problem.what(), problem.remedy());
  }

  /** The entry of a piece that makes an edge or, failing that, speaks of it. */
  private static JsonPointer naming(String edge, Sheet sheet, JsonPointer piece) {
    JsonPointer made = piece.appendProperty("edges").appendProperty(edge);
    if (sheet.places().containsKey(made)) {
      return made;
    }
    JsonNode notches = sheet.root().at(piece).path("notches");
    for (int i = 0; i < notches.size(); i++) {
      if (notches.get(i).path("edge").asText().equals(edge)) {
        return piece.appendProperty("notches").appendIndex(i);
      }
    }
    JsonPointer fold = piece.appendProperty("fold");
    return sheet.root().at(fold).asText().equals(edge) ? fold : piece;
  }

  private static boolean inPieces(List<String> keys) {
    return keys.get(0).equals("style") && keys.get(1).equals("pieces")
        || keys.get(0).equals("sizes") && keys.get(1).equals("grade");
  }

  static List<String> keys(JsonPointer at) {
    List<String> keys = new ArrayList<>();
    for (JsonPointer p = at; !p.matches(); p = p.tail()) {
      keys.add(p.getMatchingProperty());
    }
    return keys;
  }
}
