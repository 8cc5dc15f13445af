package ellwand.draw.sheet;

import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * The head of a sheet: a title, what it is about, and its figures in a row of boxes.
 *
 * @param title large, on the left
 * @param aside on the right, at the same height
 */
public record TitleBlock(
    String title, String aside, List<Cell> cells, double widthMm, Reading reading)
    implements Block {

  /** One figure and what it is. */
  public record Cell(String caption, String value) {}

  /**
   * The scale of a drawing in words.
   *
   * @param scale mm drawn for one mm of paper
   */
  public static String drawnAt(double scale) {
    return "drawn " + (scale == 1 ? "full size" : "1:" + SvgWriter.number(scale));
  }

  /** Sizes on paper, mm. */
  private static final double TITLE_ROW = 7.5;

  private static final double ROW = 10.2;
  private static final double PAD = 1.6;

  private double width(Cell cell) {
    return Math.max(
            Lettering.width(cell.caption(), reading.points(Reading.SMALL)),
            Lettering.width(cell.value(), reading.points(Reading.VALUE)) * 1.03)
        + reading.mm(2 * PAD);
  }

  private List<List<Cell>> rows() {
    List<List<Cell>> rows = new ArrayList<>();
    double used = Double.POSITIVE_INFINITY;
    for (Cell cell : cells) {
      if (used + width(cell) > widthMm) {
        rows.add(new ArrayList<>());
        used = 0;
      }
      rows.get(rows.size() - 1).add(cell);
      used += width(cell);
    }
    return rows;
  }

  @Override
  public double heightMm() {
    return reading.mm(TITLE_ROW) + rows().size() * reading.mm(ROW);
  }

  @Override
  public List<Item> items(Point upperLeft) {
    List<Item> items = new ArrayList<>();
    double base = upperLeft.y() - reading.points(Reading.TITLE) * 0.85;
    double right = upperLeft.x() + widthMm;
    double asideSize = reading.points(Reading.TEXT);
    String shortAside = Lettering.shortened(aside, asideSize, widthMm * 0.45);
    double room = widthMm - Lettering.width(shortAside, asideSize) - reading.mm(4);
    double size = reading.points(Reading.TITLE);
    items.add(
        Item.Text.of(
                "title",
                Lettering.shortened(title, size, room),
                new Point(upperLeft.x(), base),
                size,
                Item.Anchor.START)
            .strongly());
    items.add(
        Item.Text.of("aside", shortAside, new Point(right, base), asideSize, Item.Anchor.END));
    double y = upperLeft.y() - reading.mm(TITLE_ROW);
    for (List<Cell> row : rows()) {
      items.addAll(row(row, new Point(upperLeft.x(), y)));
      y -= reading.mm(ROW);
    }
    return List.of(Item.Group.of("title-block", items));
  }

  private List<Item> row(List<Cell> row, Point upperLeft) {
    double used = row.stream().mapToDouble(this::width).sum();
    double spare = Math.min((widthMm - used) / row.size(), reading.mm(12));
    double height = reading.mm(ROW - 1.2);
    List<List<Point>> rules = new ArrayList<>();
    List<Item> items = new ArrayList<>();
    double x = upperLeft.x();
    for (Cell cell : row) {
      double wide = Math.min(width(cell) + spare, widthMm);
      rules.add(List.of(new Point(x, upperLeft.y()), new Point(x, upperLeft.y() - height)));
      double left = x + reading.mm(PAD);
      items.add(
          Item.Text.of(
                  "caption",
                  cell.caption(),
                  new Point(left, upperLeft.y() - reading.mm(2.8)),
                  reading.points(Reading.SMALL),
                  Item.Anchor.START)
              .in(Colour.GREY));
      double size = reading.points(Reading.VALUE);
      items.add(
          Item.Text.of(
                  "figure",
                  Lettering.shortened(cell.value(), size, wide - reading.mm(PAD)),
                  new Point(left, upperLeft.y() - reading.mm(7.6)),
                  size,
                  Item.Anchor.START)
              .strongly());
      x += wide;
    }
    items.add(0, new Item.Lines("rule", rules, false, Ink.line(Colour.PALE, reading.mm(0.4))));
    return items;
  }
}
