package ellwand.pattern;

import java.util.List;
import java.util.Optional;

/**
 * What a piece asks of its cloth besides its grain.
 *
 * @param value what it is worth where not all can be cut, 0 or more, in any measure; pieces without
 *     one come after those with one, the larger first
 * @param place where in the repeat it wants to lie
 * @param marks its places that {@code place} and matches speak of
 */
public record Asks(Optional<Double> value, Optional<Place> place, List<Mark> marks) {

  public static final Asks NOTHING = new Asks(Optional.empty(), Optional.empty(), List.of());

  public Asks {
    marks = List.copyOf(marks);
  }

  /**
   * Where in the repeat a mark wants to lie, counted from the middle of a bar in the piece's own
   * directions: towards its top, and to the left of that as drawn. Mm.
   *
   * @param mark by its words
   * @param alongMm from the middle of a bar that lies across the cloth; empty for anywhere
   * @param acrossMm from the middle of a bar that lies along the cloth; empty for anywhere
   * @param onBorder on the line of the cloth's border, the rest of the piece on the far side
   */
  public record Place(
      String mark, Optional<Double> alongMm, Optional<Double> acrossMm, boolean onBorder) {}
}
