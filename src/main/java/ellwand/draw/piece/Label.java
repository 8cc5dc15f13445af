package ellwand.draw.piece;

import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Lettering;
import ellwand.draw.sheet.Reading;
import ellwand.draw.sheet.TurnedNumber;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Words in their place.
 *
 * @param box that they fill
 * @param upended whether they read upwards instead of from left to right
 */
public record Label(Wording wording, Box box, boolean upended) {

  /** An area in the piece's colour, so that no line runs through the words. */
  public Item ground(Colour colour, Reading reading) {
    return Item.Lines.closed(
        "label-ground", Ink.area(colour), Outline.of(box.grown(reading.mm(0.4))).points());
  }

  public List<Item> items(Reading reading) {
    List<Item> items = new ArrayList<>();
    double down = 0;
    for (int i = 0; i < wording.lines().size(); i++) {
      double size = wording.size(i, reading);
      down += size * (i == 0 ? Lettering.CAPITALS : Lettering.LINE);
      Point at =
          upended
              ? new Point(box.minX() + down, box.centre().y())
              : new Point(box.centre().x(), box.maxY() - down);
      Item.Text text =
          Item.Text.of("label", wording.lines().get(i), at, size, Item.Anchor.MIDDLE)
              .turned(upended ? 90 : 0);
      if (wording.named()) {
        items.add(i == 0 ? text.strongly() : text);
      } else {
        items.addAll(TurnedNumber.items(text.strongly()));
      }
    }
    return items;
  }
}
