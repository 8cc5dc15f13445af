package ellwand.pattern;

import java.util.ArrayList;
import java.util.List;

/** The finished pieces of one size. */
public record PieceSet(List<Piece> drawn, List<Binding> bindings, List<Rectangle> rectangles) {

  /** None at all. */
  public static final PieceSet NONE = new PieceSet(List.of(), List.of(), List.of());

  public PieceSet {
    drawn = List.copyOf(drawn);
    bindings = List.copyOf(bindings);
    rectangles = List.copyOf(rectangles);
  }

  /** All of them, rectangles whole, however wide. */
  public List<Piece> all() {
    List<Piece> all = new ArrayList<>(drawn);
    bindings.forEach(b -> all.add(b.piece()));
    rectangles.forEach(r -> all.add(r.piece()));
    return all;
  }

  /** These and a binding. */
  PieceSet with(Binding binding) {
    List<Binding> more = new ArrayList<>(bindings);
    more.add(binding);
    return new PieceSet(drawn, more, rectangles);
  }

  /**
   * These and a rectangle.
   *
   * @throws ellwand.problem.InputException if a notch of it stands beyond its edge or is too deep
   *     in a cloth
   */
  PieceSet with(Rectangle rectangle) {
    rectangle.piece().inCloths();
    List<Rectangle> more = new ArrayList<>(rectangles);
    more.add(rectangle);
    return new PieceSet(drawn, bindings, more);
  }
}
