package ellwand.draw.piece;

import ellwand.draw.sheet.Item;
import ellwand.geometry.Box;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * A piece, or all sizes of it, before it has its place on a page.
 *
 * @param title said to those who point at it
 * @param untold piece and how it is cut, where it has no room for that
 * @param box what it covers with the words round it
 */
record Standing(
    String id, String title, Optional<Untold> untold, Box box, Supplier<List<Item>> items) {

  /** What stands in a table under the pieces. */
  record Untold(String piece, List<String> cuts) {}
}
