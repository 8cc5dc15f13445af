package ellwand.pattern;

import ellwand.problem.InputException;
import java.util.List;

/**
 * A binding before the edges that it binds are measured.
 *
 * @param length of all the strip of one
 * @see Binding
 */
public record BindingPlan(
    String name,
    Extent length,
    double widthMm,
    Binding.CutAs cutAs,
    double longestMm,
    double joinMm,
    double wholeMm,
    List<Cut> cuts)
    implements Computed {

  /**
   * Plans a binding.
   *
   * @throws InputException if it could not be cut, however long the edges are
   */
  public BindingPlan {
    cuts = List.copyOf(cuts);
    new Binding(name, ANY_MM, widthMm, cutAs, longestMm, joinMm, wholeMm, cuts);
  }

  @Override
  public PieceSet addedTo(PieceSet pieces, String size) {
    return pieces.with(
        new Binding(
            name,
            length.span(size, pieces, cuts),
            widthMm,
            cutAs,
            longestMm,
            joinMm,
            wholeMm,
            cuts));
  }
}
