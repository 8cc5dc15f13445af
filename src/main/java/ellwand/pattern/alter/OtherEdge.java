package ellwand.pattern.alter;

import ellwand.pattern.Others;
import ellwand.pattern.WorkEdge;
import ellwand.pattern.Workpiece;
import java.util.Optional;
import java.util.Set;

/**
 * An edge of another piece, or of the same.
 *
 * @param piece empty for the same
 */
public record OtherEdge(Optional<String> piece, String edge) {

  /** Reads {@code back.shoulder}, or {@code shoulder} for one of the same piece. */
  public static OtherEdge of(String words) {
    int dot = words.indexOf('.');
    return dot < 0
        ? new OtherEdge(Optional.empty(), words.strip())
        : new OtherEdge(
            Optional.of(words.substring(0, dot).strip()), words.substring(dot + 1).strip());
  }

  Set<String> needs() {
    return piece.map(Set::of).orElse(Set.of());
  }

  Workpiece owner(Workpiece own, Others others) {
    return piece.map(others::piece).orElse(own);
  }

  WorkEdge on(Workpiece own, Others others) {
    return owner(own, others).edge(edge);
  }

  /** As it is written. */
  @Override
  public String toString() {
    return piece.map(p -> p + ".").orElse("") + edge;
  }
}
