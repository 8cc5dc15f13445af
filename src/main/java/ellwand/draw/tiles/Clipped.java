package ellwand.draw.tiles;

import ellwand.draw.sheet.Drawing;
import ellwand.draw.sheet.Item;
import ellwand.geometry.Box;
import java.util.ArrayList;
import java.util.List;

/**
 * What of a drawing lies near a box, and nothing else, so that a page holds only what it shows. All
 * of a line stays, so that its dashes fall alike on both sides of a join.
 */
final class Clipped {

  /** Lines are at most twice as wide. */
  private static final double NEAR_MM = 5;

  private Clipped() {}

  static Drawing to(Box box, Drawing drawing) {
    return new Drawing(drawing.title(), box, kept(box.grown(NEAR_MM), drawing.items()));
  }

  private static List<Item> kept(Box box, List<Item> items) {
    List<Item> kept = new ArrayList<>();
    for (Item item : items) {
      if (item instanceof Item.Group group) {
        List<Item> inner = kept(box, group.items());
        if (!inner.isEmpty()) {
          kept.add(group.with(inner));
        }
      } else if (item instanceof Item.Lines lines) {
        var near = lines.lines().stream().filter(l -> Box.around(l).touches(box)).toList();
        if (!near.isEmpty()) {
          kept.add(new Item.Lines(lines.kind(), near, lines.closed(), lines.ink()));
        }
      } else if (item instanceof Item.Text text && text.box().touches(box)) {
        kept.add(text);
      }
    }
    return kept;
  }
}
