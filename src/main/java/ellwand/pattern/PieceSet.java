package ellwand.pattern;

import java.util.ArrayList;
import java.util.List;

/** The finished pieces of one size. */
public record PieceSet(List<Piece> drawn, List<Binding> bindings, List<Gathered> gathered) {

  /** None at all. */
  public static final PieceSet NONE = new PieceSet(List.of(), List.of(), List.of());

  public PieceSet {
    drawn = List.copyOf(drawn);
    bindings = List.copyOf(bindings);
    gathered = List.copyOf(gathered);
  }

  /** All of them, gathered rectangles whole, however wide. */
  public List<Piece> all() {
    List<Piece> all = new ArrayList<>(drawn);
    bindings.forEach(b -> all.add(b.piece()));
    gathered.forEach(g -> all.add(g.piece()));
    return all;
  }

  /** These and a binding. */
  PieceSet with(Binding binding) {
    List<Binding> more = new ArrayList<>(bindings);
    more.add(binding);
    return new PieceSet(drawn, more, gathered);
  }

  /** These and a gathered rectangle. */
  PieceSet with(Gathered rectangle) {
    List<Gathered> more = new ArrayList<>(gathered);
    more.add(rectangle);
    return new PieceSet(drawn, bindings, more);
  }
}
