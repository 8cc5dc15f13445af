package ellwand.draw.tiles;

import ellwand.draw.sheet.Block;
import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Lettering;
import ellwand.draw.sheet.Paragraphs;
import ellwand.draw.sheet.Reading;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * What stands at the upper left of everything printed full size: what it is, two squares to
 * measure, which page lies where, and how it is put together.
 *
 * @param about one line under the title
 * @param sentences in the order in which they are to be followed
 * @param reading for its letters; the squares are as large as they say
 */
public record PrintHead(String title, String about, List<String> sentences, Reading reading) {

  /** Width of its letters' column on paper, mm: fits on the narrowest page. */
  private static final double WIDTH = 180;

  private static final double CM_SQUARE = 50;
  private static final double INCH_SQUARE = 2 * Unit.INCH.mm();
  private static final double GAP = 3;
  private static final Ink LINE = Ink.line(Colour.INK, 0.2);

  public PrintHead {
    sentences = List.copyOf(sentences);
  }

  /** What it covers, from its upper left corner at 0, 0. */
  public Box box() {
    return new Box(0, -heightMm(), reading.mm(WIDTH), 0);
  }

  private double heightMm() {
    return top() + INCH_SQUARE + reading.mm(GAP) + words().heightMm() + reading.mm(GAP);
  }

  /** Title and the line under it. */
  private double top() {
    return reading.points(Reading.TITLE) * 1.1 + reading.points(Reading.TEXT) * 1.6;
  }

  private Block words() {
    return new Paragraphs(
        "instruction", "", sentences, Reading.TEXT, Colour.INK, reading.mm(WIDTH), reading);
  }

  /** Nothing but white as large as it is, to plan pages with. */
  public List<Item> ground(Point upperLeft) {
    Box box = box().shifted(upperLeft.x(), upperLeft.y());
    return List.of(
        Item.Lines.closed("head-ground", Ink.area(Colour.WHITE), Outline.of(box).points()));
  }

  /**
   * The head in its place.
   *
   * @param map of the pages, if there are several
   */
  List<Item> items(Point upperLeft, List<PageMap> map) {
    List<Item> items = new ArrayList<>();
    double title = reading.points(Reading.TITLE);
    double text = reading.points(Reading.TEXT);
    double width = reading.mm(WIDTH);
    Point base = upperLeft.minus(new Point(0, title * 0.85));
    items.add(
        Item.Text.of(
                "title",
                Lettering.shortened(this.title, title, width * 0.95),
                base,
                title,
                Item.Anchor.START)
            .strongly());
    items.add(
        Item.Text.of(
            "about",
            Lettering.shortened(about, text, width),
            base.minus(new Point(0, text * 1.5)),
            text,
            Item.Anchor.START));
    Point squares = upperLeft.minus(new Point(0, top()));
    items.addAll(square(squares, CM_SQUARE, "50 mm"));
    Point second = squares.plus(new Point(CM_SQUARE + reading.mm(GAP), 0));
    items.addAll(square(second, INCH_SQUARE, "2 in"));
    double left = second.x() + INCH_SQUARE + reading.mm(GAP);
    double right = upperLeft.x() + width;
    map.forEach(
        m -> items.addAll(m.items(new Box(left, squares.y() - INCH_SQUARE, right, squares.y()))));
    Point under = squares.minus(new Point(0, INCH_SQUARE + reading.mm(GAP)));
    items.addAll(words().items(under));
    return List.of(Item.Group.furniture("head", items));
  }

  private List<Item> square(Point upperLeft, double side, String words) {
    Box box = new Box(upperLeft.x(), upperLeft.y() - side, upperLeft.x() + side, upperLeft.y());
    double size = reading.points(Reading.VALUE);
    Point middle = box.centre();
    return List.of(
        Item.Lines.closed("test-square", LINE, Outline.of(box).points()),
        Item.Text.of("test-words", words, middle, size, Item.Anchor.MIDDLE),
        Item.Text.of(
            "test-words",
            "each way",
            middle.minus(new Point(0, size * Lettering.LINE)),
            reading.points(Reading.TEXT),
            Item.Anchor.MIDDLE));
  }
}
