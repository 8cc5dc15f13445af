package ellwand.file;

import ellwand.pattern.Piece;
import ellwand.pattern.Style;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads {@code style:}. */
final class StyleReader {

  private static final String ONLY_SIZE = "one size";

  private final Shape shape;

  StyleReader(Shape shape) {
    this.shape = shape;
  }

  /**
   * The style, or nothing if any piece of it is wrong.
   *
   * @param cloths names that pieces may be cut from
   */
  Optional<Style> read(Spot style, Set<String> cloths) {
    if (!style.present()) {
      return Optional.empty();
    }
    int before = style.problems().size();
    Optional<Double> allowance =
        shape.holds(style.get("allowance"))
            ? style.get("allowance").lengthFrom0()
            : Optional.of(0.0);
    PieceReader reader = new PieceReader(shape, allowance, cloths);
    List<Piece> pieces = new ArrayList<>();
    style
        .get("pieces")
        .entries()
        .forEach((name, spot) -> reader.read(name, spot).ifPresent(pieces::add));
    if (style.problems().size() > before || !shape.holds(style)) {
      return Optional.empty();
    }
    String size = style.get("size").text().orElse(ONLY_SIZE);
    return style.attempt(
        () -> new Style(style.get("name").text().orElseThrow(), Map.of(size, pieces)));
  }
}
