package ellwand.pattern;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A garment design.
 *
 * @param piecesBySize every size's pieces, sizes in the user's order, the same pieces in each
 */
public record Style(String name, Map<String, List<Piece>> piecesBySize) {

  public Style {
    Map<String, List<Piece>> copy = new LinkedHashMap<>();
    piecesBySize.forEach((size, pieces) -> copy.put(size, List.copyOf(pieces)));
    piecesBySize = java.util.Collections.unmodifiableMap(copy);
    if (piecesBySize.isEmpty()) {
      throw new InputException(
          Problem.of("style " + name + " has no size", "Give it at least one"));
    }
  }

  public List<Piece> pieces(String size) {
    List<Piece> pieces = piecesBySize.get(size);
    if (pieces == null) {
      throw new InputException(
          Problem.of(
              "style " + name + " has no size " + size,
              "Use one of " + String.join(", ", piecesBySize.keySet())));
    }
    return pieces;
  }
}
