package ellwand.draw.sheet;

import ellwand.geometry.Point;
import java.util.List;

/** Moves what is drawn. */
public final class Shift {

  private Shift() {}

  public static List<Item> by(Point way, List<Item> items) {
    return items.stream().map(i -> by(way, i)).toList();
  }

  private static Item by(Point way, Item item) {
    if (item instanceof Item.Group group) {
      return group.with(by(way, group.items()));
    }
    if (item instanceof Item.Lines lines) {
      List<List<Point>> moved =
          lines.lines().stream().map(l -> l.stream().map(p -> p.plus(way)).toList()).toList();
      return new Item.Lines(lines.kind(), moved, lines.closed(), lines.ink());
    }
    Item.Text text = (Item.Text) item;
    return new Item.Text(
        text.kind(),
        text.words(),
        text.at().plus(way),
        text.sizeMm(),
        text.anchor(),
        text.turnDegrees(),
        text.strong(),
        text.colour());
  }
}
