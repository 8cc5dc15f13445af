package ellwand.draw.tiles;

import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Lettering;
import ellwand.draw.sheet.Reading;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * What joins a page to its neighbours, in the frame of the drawing: where it is cut off, where its
 * neighbour comes to lie, and the halves of diamonds that meet then. All of it lies within what is
 * printed of the page.
 */
record JoinMarks(PagePlan plan, Tile tile, Reading reading) {

  /** Half of a diamond on paper, mm; at least as much as neighbours both show. */
  static final double HALF = 6;

  private static final double POINTS = 8;
  private static final Ink CUT = Ink.line(Colour.GREY, 0.2);
  private static final Ink LAID = Ink.line(Colour.GREY, 0.2, 2.0, 1.5);

  List<Item> items() {
    List<Item> items = new ArrayList<>();
    for (PagePlan.Join join : plan.joins()) {
      if (join.first().equals(tile)) {
        items.addAll(onFirst(join));
      } else if (join.second().equals(tile)) {
        items.addAll(onSecond(join));
      }
    }
    return items;
  }

  /** The neighbour is laid on this page, its edge on a dashed line. */
  private List<Item> onFirst(PagePlan.Join join) {
    return marks("join-line", LAID, join, -1);
  }

  /** This page is cut off along a full line. */
  private List<Item> onSecond(PagePlan.Join join) {
    return marks("cut-off-line", CUT, join, 1);
  }

  /**
   * @param side 1 where the half diamond lies to the right of the line or under it, else -1
   */
  private List<Item> marks(String kind, Ink ink, PagePlan.Join join, int side) {
    Tiling tiling = plan.tiling();
    // Both halves are measured out from the first page, so that they meet.
    Point corner = new Point(tiling.seen(join.first()).maxX(), tiling.seen(join.first()).minY());
    List<Item> items = new ArrayList<>();
    if (join.isSideBySide()) {
      double low = tiling.shown(tile).minY();
      double high = tiling.shown(tile).maxY();
      items.add(
          Item.Lines.open(kind, ink, new Point(corner.x(), low), new Point(corner.x(), high)));
      Point middle = new Point(corner.x(), tiling.shown(join.first()).centre().y());
      Point aside = new Point(side, 0);
      items.addAll(halfDiamond(join, middle, aside, new Point(0, 1)));
    } else {
      double left = tiling.shown(tile).minX();
      double right = tiling.shown(tile).maxX();
      items.add(
          Item.Lines.open(kind, ink, new Point(left, corner.y()), new Point(right, corner.y())));
      Point middle = new Point(tiling.shown(join.first()).centre().x(), corner.y());
      items.addAll(halfDiamond(join, middle, new Point(0, -side), new Point(1, 0)));
    }
    return items;
  }

  private List<Item> halfDiamond(PagePlan.Join join, Point middle, Point aside, Point along) {
    List<Point> half =
        List.of(
            middle.plus(along.times(HALF)),
            middle.plus(aside.times(HALF)),
            middle.minus(along.times(HALF)));
    double size = reading.points(POINTS);
    Point words =
        middle.plus(aside.times(HALF * 0.4)).minus(new Point(0, size * Lettering.CAPITALS / 2));
    return List.of(
        Item.Lines.closed("join-mark", Ink.line(Colour.GREY, 0.25), half),
        Item.Text.of(
                "join-number", Integer.toString(join.number()), words, size, Item.Anchor.MIDDLE)
            .in(Colour.GREY));
  }
}
