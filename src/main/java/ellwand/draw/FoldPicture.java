package ellwand.draw;

import ellwand.cloth.Fold;
import ellwand.geometry.Box;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * The cloth seen from its cut end: its plies one above the other, as they lie on the table.
 *
 * @param widthMm of the picture
 */
record FoldPicture(Fold fold, double widthMm, Reading reading) implements Block {

  private static final double HEIGHT = 13;
  private static final double PLIES_APART = 3.2;

  /** The right side of the cloth is drawn as a thick coloured line under or over the thin one. */
  private static final Colour RIGHT_SIDE = new Colour(0x56B4E9);

  @Override
  public double heightMm() {
    return reading.mm(HEIGHT);
  }

  @Override
  public List<Item> items(Point upperLeft) {
    Box strip =
        new Box(
            upperLeft.x() + reading.mm(10),
            upperLeft.y() - reading.mm(9),
            upperLeft.x() + widthMm - reading.mm(10),
            upperLeft.y() - reading.mm(4));
    List<Item> items =
        switch (fold) {
          case OPEN -> open(strip);
          case LENGTHWISE -> lengthwise(strip);
        };
    return List.of(Item.Group.of("fold-picture", items));
  }

  private List<Item> open(Box strip) {
    double y = strip.centre().y();
    List<Item> items = new ArrayList<>();
    items.add(table(strip));
    items.addAll(ply(List.of(new Point(strip.minX(), y), new Point(strip.maxX(), y)), 1));
    items.add(word("selvedge", strip.minX(), strip.maxY(), Item.Anchor.START));
    items.add(word("selvedge", strip.maxX(), strip.maxY(), Item.Anchor.END));
    items.add(word("right side up", strip.centre().x(), strip.maxY(), Item.Anchor.MIDDLE));
    return items;
  }

  private List<Item> lengthwise(Box strip) {
    double low = strip.centre().y() - reading.mm(PLIES_APART / 2);
    double high = low + reading.mm(PLIES_APART);
    double radius = (high - low) / 2;
    List<Point> line = new ArrayList<>();
    line.add(new Point(strip.maxX(), low));
    for (int i = 0; i <= 16; i++) {
      double angle = -Math.PI / 2 - Math.PI * i / 16;
      line.add(
          new Point(
              strip.minX() + radius + radius * Math.cos(angle),
              low + radius + radius * Math.sin(angle)));
    }
    line.add(new Point(strip.maxX(), high));
    List<Item> items = new ArrayList<>();
    items.add(table(strip));
    items.addAll(ply(line, -1));
    items.add(word("fold", strip.minX(), strip.maxY(), Item.Anchor.START));
    items.add(word("both selvedges", strip.maxX(), strip.maxY(), Item.Anchor.END));
    items.add(
        word(
            "wrong side up, right sides together",
            strip.centre().x(),
            strip.maxY(),
            Item.Anchor.MIDDLE));
    return items;
  }

  /**
   * One ply as a thin line with the right side marked beside it.
   *
   * @param side 1 if the right side lies to the left of the line as it runs, -1 if to the right
   */
  private List<Item> ply(List<Point> line, int side) {
    double offset = reading.mm(0.45) * side;
    List<Point> marked = new ArrayList<>();
    for (int i = 0; i < line.size(); i++) {
      Point a = line.get(Math.max(0, i - 1));
      Point b = line.get(Math.min(line.size() - 1, i + 1));
      marked.add(line.get(i).plus(b.minus(a).unit().left().times(offset)));
    }
    return List.of(
        Item.Lines.open(
            "right-side", Ink.line(RIGHT_SIDE, reading.mm(0.7)), marked.toArray(Point[]::new)),
        Item.Lines.open("ply", Ink.line(Colour.INK, reading.mm(0.35)), line.toArray(Point[]::new)));
  }

  private Item table(Box strip) {
    double y = strip.minY() - reading.mm(1.2);
    return Item.Lines.open(
        "table",
        Ink.line(Colour.PALE, reading.mm(0.8)),
        new Point(strip.minX() - reading.mm(6), y),
        new Point(strip.maxX() + reading.mm(6), y));
  }

  private Item word(String words, double x, double y, Item.Anchor anchor) {
    return Item.Text.of(
        "fold-word",
        words,
        new Point(x, y + reading.mm(0.6)),
        reading.points(Reading.SMALL),
        anchor);
  }
}
