package ellwand.figures;

import ellwand.geometry.Box;
import ellwand.lay.Copy;
import ellwand.lay.Marker;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A piece that keeps a marker from being shorter: alone, or since no two like it lie side by side.
 *
 * @param copies how many of them lie one behind the other
 * @param lengthMm of them all
 */
public record Binding(String piece, int copies, double lengthMm) {

  /** A marker that is longer by more than this share is not bound by its pieces. */
  private static final double SLACK = 0.06;

  /** What binds the marker, if its length is nearly that of the pieces in question. */
  public static Optional<Binding> of(Marker marker) {
    List<Copy> wide =
        marker.copies().stream()
            .filter(c -> 2 * c.outline().box().width() > marker.zone(c.zone()).box().width())
            .toList();
    double behind = wide.stream().mapToDouble(c -> c.outline().box().length()).sum();
    Copy longest =
        marker.copies().stream()
            .max(Comparator.comparingDouble(c -> c.outline().box().length()))
            .orElseThrow();
    double alone = longest.outline().box().length();
    if (Math.max(behind, alone) < marker.lengthMm() * (1 - SLACK)) {
      return Optional.empty();
    }
    if (alone >= behind) {
      return Optional.of(new Binding(longest.piece(), 1, alone));
    }
    Copy widest =
        wide.stream()
            .max(Comparator.comparingDouble(c -> box(c).width() * box(c).length()))
            .orElseThrow();
    return Optional.of(new Binding(widest.piece(), wide.size(), behind));
  }

  private static Box box(Copy copy) {
    return copy.outline().box();
  }
}
