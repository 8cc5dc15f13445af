package ellwand.file;

import com.fasterxml.jackson.core.JsonPointer;
import ellwand.pattern.Problem;
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
      JsonPointer edges = at.appendProperty("edges").appendProperty(edge.get());
      line = sheet.places().containsKey(edges) ? edges : at;
    } else if (edge.isEmpty() && keys.size() > 4 && keys.get(3).equals("edges")) {
      edge = Optional.of(keys.get(4));
    }
    Place place = sheet.place(line);
    return new Problem(
        Optional.of(place.file()), place.line(), piece, edge, problem.what(), problem.remedy());
  }

  private static boolean inPieces(List<String> keys) {
    return keys.get(0).equals("style") && keys.get(1).equals("pieces");
  }

  static List<String> keys(JsonPointer at) {
    List<String> keys = new ArrayList<>();
    for (JsonPointer p = at; !p.matches(); p = p.tail()) {
      keys.add(p.getMatchingProperty());
    }
    return keys;
  }
}
