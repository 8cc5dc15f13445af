package ellwand.problem;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Something wrong with what was read: where, what, and what to do about it.
 *
 * @param file path as the user gave it, if known
 * @param line 1 or more, 0 if unknown
 * @param piece name of the piece, if one is concerned
 * @param edge name of the edge, if one is concerned
 * @param what a sentence without full stop
 * @param remedy a sentence without full stop, in the imperative
 */
public record Problem(
    Optional<String> file,
    int line,
    Optional<String> piece,
    Optional<String> edge,
    String what,
    String remedy) {

  public static Problem of(String what, String remedy) {
    return new Problem(Optional.empty(), 0, Optional.empty(), Optional.empty(), what, remedy);
  }

  public static Problem inPiece(String piece, String what, String remedy) {
    return of(what, remedy).piece(piece);
  }

  public static Problem onEdge(String piece, String edge, String what, String remedy) {
    return new Problem(Optional.empty(), 0, Optional.of(piece), Optional.of(edge), what, remedy);
  }

  public Problem piece(String name) {
    return new Problem(file, line, Optional.of(name), edge, what, remedy);
  }

  public Problem at(String inFile, int onLine) {
    return new Problem(Optional.of(inFile), onLine, piece, edge, what, remedy);
  }

  /** As part of a sentence, without its place: {@code what: remedy}. */
  public String clause() {
    return what + ": " + Character.toLowerCase(remedy.charAt(0)) + remedy.substring(1);
  }

  /** With its full stop, which takes the place of the colon of an entry: no {@code width:.} */
  private static String sentence(String text) {
    return (text.endsWith(":") ? text.substring(0, text.length() - 1) : text) + ".";
  }

  /** {@code job.yaml:12: front, edge hem: what. Remedy.} */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    file.ifPresent(f -> text.append(f).append(line > 0 ? ":" + line : "").append(": "));
    List<String> where = new ArrayList<>();
    piece.ifPresent(p -> where.add("piece " + p));
    edge.ifPresent(e -> where.add("edge " + e));
    if (!where.isEmpty()) {
      text.append(String.join(", ", where)).append(": ");
    }
    text.append(sentence(what)).append(' ').append(sentence(remedy));
    // What stands in a file may hold a line's end or signs that a terminal obeys.
    return text.toString().replaceAll("\\p{Cc}", "?");
  }
}
