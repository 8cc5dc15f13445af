package ellwand.pattern;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A garment design.
 *
 * @param piecesBySize every size's drawn pieces, sizes in the user's order, the same pieces in each
 * @param bindingsBySize every size's bindings; sizes without any may be left out
 * @param gatheredBySize every size's gathered rectangles; sizes without any may be left out
 * @param seams which edges are sewn together, where that is to be checked
 * @param matches places that are to lie alike in a cloth's repeat
 */
public record Style(
    String name,
    Map<String, List<Piece>> piecesBySize,
    Map<String, List<Binding>> bindingsBySize,
    Map<String, List<Gathered>> gatheredBySize,
    List<Seam> seams,
    List<Match> matches) {

  public Style {
    piecesBySize = copy(piecesBySize);
    bindingsBySize = copy(bindingsBySize);
    gatheredBySize = copy(gatheredBySize);
    seams = List.copyOf(seams);
    matches = List.copyOf(matches);
    if (piecesBySize.isEmpty()) {
      throw new InputException(
          Problem.of("style " + name + " has no size", "Give it at least one"));
    }
  }

  private static <T> Map<String, List<T>> copy(Map<String, List<T>> bySize) {
    Map<String, List<T>> copy = new LinkedHashMap<>();
    bySize.forEach((size, of) -> copy.put(size, List.copyOf(of)));
    return Collections.unmodifiableMap(copy);
  }

  /** All pieces of a size, gathered rectangles whole, however wide. */
  public List<Piece> pieces(String size) {
    List<Piece> pieces = new ArrayList<>(drawn(size));
    bindings(size).forEach(b -> pieces.add(b.piece()));
    gathered(size).forEach(g -> pieces.add(g.piece()));
    return pieces;
  }

  /**
   * The pieces of a size that are cut from one cloth, gathered rectangles in panels where the cloth
   * is too narrow.
   *
   * @param usableMm as for {@link Gathered#panels}
   */
  public List<Piece> pieces(String size, String cloth, double usableMm) {
    List<Piece> pieces = new ArrayList<>();
    Stream.concat(drawn(size).stream(), bindings(size).stream().map(Binding::piece))
        .filter(p -> p.cutFrom(cloth).isPresent())
        .forEach(p -> pieces.add(p.inCloth(cloth)));
    panels(size, cloth, usableMm).forEach(p -> pieces.add(p.piece()));
    return pieces;
  }

  /** The gathered rectangles of a size as they are cut from one cloth. */
  public List<Panels> panels(String size, String cloth, double usableMm) {
    List<Panels> panels = new ArrayList<>();
    for (Gathered g : gathered(size)) {
      g.cuts().stream()
          .filter(c -> c.cloth().equals(cloth))
          .forEach(c -> panels.add(g.panels(c, usableMm)));
    }
    return panels;
  }

  /** The bindings of a size that are cut from one cloth. */
  public List<Binding> bindings(String size, String cloth) {
    return bindings(size).stream()
        .filter(b -> b.cuts().stream().anyMatch(c -> c.cloth().equals(cloth)))
        .toList();
  }

  private List<Binding> bindings(String size) {
    return bindingsBySize.getOrDefault(size, List.of());
  }

  private List<Gathered> gathered(String size) {
    return gatheredBySize.getOrDefault(size, List.of());
  }

  private List<Piece> drawn(String size) {
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
