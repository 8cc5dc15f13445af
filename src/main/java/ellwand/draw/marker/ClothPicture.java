package ellwand.draw.marker;

import ellwand.cloth.Zone;
import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Reading;
import ellwand.draw.sheet.Shown;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** The cloth under the pieces, its selvedges hatched. */
record ClothPicture(ShownCloth cloth, Reading reading, Shown shown) {

  private static final double HATCH = 1.6;
  private static final Colour CLOTH = new Colour(0xFBFAF6);

  /** Zone by zone. */
  Item item() {
    List<Item> items = new ArrayList<>();
    for (Zone zone : cloth.zones()) {
      List<Item> parts = new ArrayList<>();
      Box box = cloth.seen(zone);
      parts.add(
          Item.Lines.closed(
              "cloth",
              Ink.line(Colour.GREY, reading.mm(0.25)).filled(CLOTH),
              Outline.of(box).points()));
      for (Zone.Side side : Zone.Side.values()) {
        if (cloth.isSelvedge(zone, side) && cloth.selvedge() > 0) {
          parts.addAll(hatched(strip(box, side)));
        }
      }
      items.add(
          Item.Group.titled(
              "zone-" + (items.size() + 1), "zone", ClothWords.of(zone, shown), parts));
    }
    return Item.Group.of("cloth", items);
  }

  private Box strip(Box box, Zone.Side side) {
    return side == Zone.Side.LOW_Y
        ? new Box(box.minX(), box.minY() - cloth.selvedge(), box.maxX(), box.minY())
        : new Box(box.minX(), box.maxY(), box.maxX(), box.maxY() + cloth.selvedge());
  }

  private List<Item> hatched(Box strip) {
    List<List<Point>> lines = new ArrayList<>();
    double step = reading.mm(HATCH);
    for (double x = strip.minX(); x + strip.width() <= strip.maxX(); x += step) {
      lines.add(List.of(new Point(x, strip.minY()), new Point(x + strip.width(), strip.maxY())));
    }
    return List.of(
        Item.Lines.closed(
            "selvedge",
            Ink.line(Colour.GREY, reading.mm(0.25)).filled(Colour.WHITE),
            Outline.of(strip).points()),
        new Item.Lines("selvedge-hatching", lines, false, Ink.line(Colour.GREY, reading.mm(0.12))));
  }
}
