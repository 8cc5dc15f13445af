package ellwand.draw.sheet;

import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * A table that can be broken over pages: a head and rows.
 *
 * @param ticks whether each row begins with a box to tick
 */
public record Table(List<Column> columns, boolean ticks, Reading reading) {

  private static final double ROW = 5.6;
  private static final double NEXT_LINE = 4;
  private static final int MOST_LINES = 3;
  private static final double HEAD_LINE = 4;
  private static final double PAD = 1;
  private static final double TICK = 3;

  /**
   * One column.
   *
   * @param captions one line or two over it
   * @param widthMm on paper
   * @param anchor START for words, END for numbers
   */
  public record Column(List<String> captions, double widthMm, Item.Anchor anchor) {

    public static Column words(double widthMm, String... captions) {
      return new Column(List.of(captions), widthMm, Item.Anchor.START);
    }

    public static Column numbers(double widthMm, String... captions) {
      return new Column(List.of(captions), widthMm, Item.Anchor.END);
    }
  }

  public Block head() {
    return new Head(this);
  }

  public Block row(List<String> cells) {
    return new Row(this, List.copyOf(cells));
  }

  private double widthMm() {
    return reading.mm(columns.stream().mapToDouble(Column::widthMm).sum());
  }

  private double left(int column) {
    return reading.mm(columns.stream().limit(column).mapToDouble(Column::widthMm).sum() + PAD);
  }

  private double room(int column) {
    boolean words = columns.get(column).anchor() == Item.Anchor.START;
    return reading.mm(columns.get(column).widthMm() - (words ? 2 : 3) * PAD);
  }

  private Item.Text text(String kind, String words, int column, Point upperLeft, double points) {
    double size = reading.points(points);
    Item.Anchor anchor = columns.get(column).anchor();
    double x = left(column) + (anchor == Item.Anchor.END ? room(column) : 0);
    String fitting = Lettering.shortened(words, size, room(column));
    return Item.Text.of(kind, fitting, upperLeft.plus(new Point(x, 0)), size, anchor);
  }

  private Item rule(Point left, double widthOnPaper, Colour colour) {
    return Item.Lines.open(
        "rule",
        Ink.line(colour, reading.mm(widthOnPaper)),
        left,
        left.plus(new Point(widthMm(), 0)));
  }

  private record Head(Table table) implements Block {

    private int lines() {
      return table.columns.stream().mapToInt(c -> c.captions().size()).max().orElse(1);
    }

    @Override
    public double heightMm() {
      return table.reading.mm(HEAD_LINE * lines() + 1.2);
    }

    @Override
    public List<Item> items(Point upperLeft) {
      List<Item> items = new ArrayList<>();
      for (int i = 0; i < table.columns.size(); i++) {
        List<String> captions = table.columns.get(i).captions();
        for (int j = 0; j < captions.size(); j++) {
          int fromBottom = captions.size() - 1 - j;
          double down = table.reading.mm(HEAD_LINE * (lines() - fromBottom) - 1);
          Point at = upperLeft.minus(new Point(0, down));
          items.add(table.text("table-head", captions.get(j), i, at, 8).in(Colour.GREY));
        }
      }
      Point low = new Point(upperLeft.x(), upperLeft.y() - table.reading.mm(HEAD_LINE * lines()));
      items.add(table.rule(low, 0.35, Colour.INK));
      return items;
    }
  }

  private record Row(Table table, List<String> cells) implements Block {

    private List<String> lines(int column) {
      double size = table.reading.points(Reading.TEXT);
      if (table.columns.get(column).anchor() == Item.Anchor.END) {
        return List.of(cells.get(column));
      }
      List<String> all = Lettering.wrapped(cells.get(column), size, table.room(column));
      if (all.size() <= MOST_LINES) {
        return all;
      }
      List<String> first = new ArrayList<>(all.subList(0, MOST_LINES));
      first.add(first.remove(MOST_LINES - 1) + "…");
      return first;
    }

    @Override
    public double heightMm() {
      int most = 1;
      for (int i = 0; i < cells.size(); i++) {
        most = Math.max(most, lines(i).size());
      }
      return table.reading.mm(ROW + (most - 1) * NEXT_LINE);
    }

    @Override
    public List<Item> items(Point upperLeft) {
      List<Item> items = new ArrayList<>();
      if (table.ticks) {
        items.add(tick(upperLeft));
      }
      for (int i = 0; i < cells.size(); i++) {
        List<String> lines = lines(i);
        for (int j = 0; j < lines.size(); j++) {
          double down = table.reading.mm(ROW * 0.68 + j * NEXT_LINE);
          Point at = upperLeft.minus(new Point(0, down));
          items.add(table.text("cell", lines.get(j), i, at, Reading.TEXT));
        }
      }
      Point low = new Point(upperLeft.x(), upperLeft.y() - heightMm());
      items.add(table.rule(low, 0.15, Colour.PALE));
      return items;
    }

    private Item tick(Point upperLeft) {
      double side = table.reading.mm(TICK);
      double x = upperLeft.x() + table.reading.mm(PAD);
      double y = upperLeft.y() - table.reading.mm((ROW - TICK) / 2);
      return Item.Lines.closed(
          "tick",
          Ink.line(Colour.GREY, table.reading.mm(0.25)),
          Outline.of(new Box(x, y - side, x + side, y)).points());
    }
  }
}
