package ellwand.draw.tiles;

import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Lettering;
import ellwand.draw.sheet.Reading;
import ellwand.geometry.Box;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which page lies where, drawn small.
 *
 * @param outlines of what is on the pages
 */
record PageMap(PagePlan plan, List<List<Point>> outlines, Reading reading) {

  private static final double LARGEST_NAME = 11;
  private static final double SMALLEST_NAME = 4.5;

  private static final Ink FRAME = Ink.line(Colour.GREY, 0.2);
  private static final Ink OUTLINE = Ink.line(Colour.PALE, 0.25).filled(Colour.WHITE);

  /**
   * As large as fits.
   *
   * @param room that it stands in, in its upper left corner
   */
  List<Item> items(Box room) {
    Tiling tiling = plan.tiling();
    Box all = plan.tiles().stream().map(tiling::shown).reduce(Box::union).orElseThrow();
    double share = Math.min(room.length() / all.length(), room.width() / all.width());
    List<Item> items = new ArrayList<>();
    items.add(
        new Item.Lines(
            "map-piece",
            outlines.stream()
                .map(l -> l.stream().map(p -> small(p, all, room, share)).toList())
                .toList(),
            true,
            OUTLINE));
    for (Tile tile : plan.tiles()) {
      Box shown = tiling.shown(tile);
      Box seen = tiling.seen(tile);
      Point upperLeft = small(new Point(shown.minX(), shown.maxY()), all, room, share);
      Point lowerRight = small(new Point(seen.maxX(), seen.minY()), all, room, share);
      Box cell = new Box(upperLeft.x(), lowerRight.y(), lowerRight.x(), upperLeft.y());
      items.add(Item.Lines.closed("map-page", FRAME, corners(cell)));
      name(tile, cell).ifPresent(items::add);
    }
    return List.of(Item.Group.of("page-map", items));
  }

  private static Point small(Point p, Box all, Box room, double share) {
    return new Point(
        room.minX() + (p.x() - all.minX()) * share, room.maxY() - (all.maxY() - p.y()) * share);
  }

  private static List<Point> corners(Box box) {
    return List.of(
        new Point(box.minX(), box.minY()),
        new Point(box.maxX(), box.minY()),
        new Point(box.maxX(), box.maxY()),
        new Point(box.minX(), box.maxY()));
  }

  private Optional<Item> name(Tile tile, Box cell) {
    double widest = cell.length() * 0.85 / Lettering.width(tile.name(), 1);
    double size =
        Math.min(
            reading.points(LARGEST_NAME),
            Math.min(widest, cell.width() * 0.8 / Lettering.CAPITALS));
    if (size < reading.points(SMALLEST_NAME)) {
      return Optional.empty();
    }
    Point at = new Point(cell.centre().x(), cell.centre().y() - size * Lettering.CAPITALS / 2);
    return Optional.of(Item.Text.of("map-name", tile.name(), at, size, Item.Anchor.MIDDLE));
  }
}
