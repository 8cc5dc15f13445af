package ellwand.draw.piece;

import ellwand.draw.sheet.Item;
import ellwand.geometry.Box;
import java.util.List;
import java.util.function.Supplier;

/**
 * A piece, or all sizes of it, before it has its place on a page.
 *
 * @param title said to those who point at it
 * @param box what it covers with the words round it
 */
record Standing(String id, String title, Box box, Supplier<List<Item>> items) {}
