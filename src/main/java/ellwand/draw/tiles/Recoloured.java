package ellwand.draw.tiles;

import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import java.util.List;

/** Light on dark instead of dark on light. */
final class Recoloured {

  private Recoloured() {}

  static List<Item> dark(List<Item> items) {
    return items.stream().map(Recoloured::dark).toList();
  }

  private static Item dark(Item item) {
    if (item instanceof Item.Group group) {
      return group.with(dark(group.items()));
    }
    if (item instanceof Item.Lines lines) {
      Ink ink = lines.ink();
      Ink other =
          new Ink(
              ink.fill().map(Recoloured::other),
              ink.line().map(Recoloured::other),
              ink.widthMm(),
              ink.dashesMm());
      return new Item.Lines(lines.kind(), lines.lines(), lines.closed(), other);
    }
    Item.Text text = (Item.Text) item;
    return text.in(other(text.colour()));
  }

  private static Colour other(Colour colour) {
    return new Colour(0xFFFFFF - colour.rgb());
  }
}
