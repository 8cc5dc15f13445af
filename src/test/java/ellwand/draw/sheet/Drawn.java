package ellwand.draw.sheet;

import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** Finds in a drawing what a test asks after. */
public final class Drawn {

  private Drawn() {}

  public static List<Item.Text> texts(List<Item> items) {
    List<Item.Text> texts = new ArrayList<>();
    for (Item item : items) {
      if (item instanceof Item.Text text && !text.words().isBlank()) {
        texts.add(text);
      } else if (item instanceof Item.Group group) {
        texts.addAll(texts(group.items()));
      }
    }
    return texts;
  }

  public static List<Item.Group> groups(List<Item> items) {
    List<Item.Group> groups = new ArrayList<>();
    for (Item item : items) {
      if (item instanceof Item.Group group) {
        groups.add(group);
        groups.addAll(groups(group.items()));
      }
    }
    return groups;
  }

  /** What the letters cover, capitals above the base line. */
  public static Outline area(Item.Text text) {
    double before = -text.widthMm() * text.anchor().share();
    Box box = new Box(before, 0, before + text.widthMm(), text.sizeMm() * Lettering.CAPITALS);
    Point at = text.at();
    return Outline.of(box).moved(new Motion(false, text.turnDegrees(), at.x(), at.y()));
  }
}
