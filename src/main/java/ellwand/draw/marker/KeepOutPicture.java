package ellwand.draw.marker;

import ellwand.cloth.KeepOut;
import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Hatching;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Lettering;
import ellwand.draw.sheet.Reading;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.geometry.Region;
import ellwand.lay.Marker;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What of the cloth cannot be used: cross-hatched, with its name. */
final class KeepOutPicture {

  private static final double HATCH = 2;
  private static final double LETTERS = 7;

  private final Marker marker;
  private final Reading reading;

  KeepOutPicture(Marker marker, Reading reading) {
    this.marker = marker;
    this.reading = reading;
  }

  Optional<Item> items() {
    double end = new ShownCloth(marker).end();
    List<Item> items = new ArrayList<>();
    for (KeepOut keepOut : marker.keepOuts()) {
      Box box = keepOut.outline().box();
      Region shown =
          Region.of(keepOut.outline())
              .intersect(Region.of(new Box(0, box.minY(), end, box.maxY())));
      for (Outline part : shown.shells()) {
        items.add(picture("keep-out-" + (items.size() + 1), keepOut.flaw(), part));
      }
    }
    return items.isEmpty() ? Optional.empty() : Optional.of(Item.Group.of("keep-outs", items));
  }

  private Item picture(String id, String name, Outline part) {
    List<Item> items = new ArrayList<>();
    items.add(
        Item.Lines.closed(
            "keep-out", Ink.line(Colour.INK, reading.mm(0.3)).filled(Colour.WHITE), part.points()));
    items.add(
        new Item.Lines(
            "keep-out-hatching", hatching(part), false, Ink.line(Colour.GREY, reading.mm(0.15))));
    Box box = part.box();
    double size = reading.points(LETTERS);
    if (Lettering.width(name, size) <= box.length() && size <= box.width()) {
      Point at = Region.of(part).middle();
      items.add(
          Item.Text.of(
              "keep-out-word",
              name,
              new Point(at.x(), at.y() - size * Lettering.CAPITALS / 2),
              size,
              Item.Anchor.MIDDLE));
    }
    return Item.Group.titled(id, "keep-out", "not to be used: " + name, items);
  }

  /** Lines up and down the slope, cut where they cross the outline. */
  private List<List<Point>> hatching(Outline part) {
    List<List<Point>> lines = new ArrayList<>(Hatching.of(part.points(), reading.mm(HATCH), 45));
    lines.addAll(Hatching.of(part.points(), reading.mm(HATCH), 135));
    return lines;
  }
}
