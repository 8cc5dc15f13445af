package ellwand.draw.marker;

import ellwand.cloth.KeepOut;
import ellwand.cloth.Remnant;
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

  private final OutsideNumbers outside;

  /**
   * @param outside finds places for names that have no room inside
   */
  KeepOutPicture(Marker marker, OutsideNumbers outside, Reading reading) {
    this.marker = marker;
    this.outside = outside;
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
        items.add(picture("keep-out-" + (items.size() + 1), keepOut, part));
      }
    }
    return items.isEmpty() ? Optional.empty() : Optional.of(Item.Group.of("keep-outs", items));
  }

  private Item picture(String id, KeepOut keepOut, Outline part) {
    String name = keepOut.flaw();
    if (name.equals(Remnant.NO_CLOTH)) {
      Ink ink = Ink.line(Colour.GREY, reading.mm(0.25)).filled(Colour.WHITE);
      return Item.Group.titled(
          id, "keep-out", name, List.of(Item.Lines.closed("no-cloth", ink, part.points())));
    }
    List<Item> items = new ArrayList<>();
    items.add(
        Item.Lines.closed(
            "keep-out", Ink.line(Colour.INK, reading.mm(0.3)).filled(Colour.WHITE), part.points()));
    items.add(
        new Item.Lines(
            "keep-out-hatching", hatching(part), false, Ink.line(Colour.GREY, reading.mm(0.15))));
    Box box = part.box();
    double size = reading.points(LETTERS);
    Point at = Region.of(part).middle();
    if (Lettering.width(name, size) <= 0.9 * box.length() && size <= box.width()) {
      Item.Text word =
          Item.Text.of(
              "keep-out-word",
              name,
              new Point(at.x(), at.y() - size * Lettering.CAPITALS / 2),
              size,
              Item.Anchor.MIDDLE);
      Box ground = word.box().grown(reading.mm(0.3));
      items.add(
          Item.Lines.closed("label-ground", Ink.area(Colour.WHITE), Outline.of(ground).points()));
      items.add(word);
    } else {
      items.addAll(outside.beside(name, part, at, marker.zone(keepOut.zone()).box()));
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
