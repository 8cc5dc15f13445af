package ellwand.draw.piece;

import ellwand.draw.sheet.Block;
import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Lettering;
import ellwand.draw.sheet.Reading;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** Which line is which size, and the lines themselves: told apart without colour. */
record SizeKey(List<String> sizes, double widthMm, Reading reading) implements Block {

  /** Drawn and left out in turn, on paper, mm; after the last they come round again, heavier. */
  private static final List<List<Double>> DASHES =
      List.of(
          List.of(),
          List.of(3.2, 1.0),
          List.of(0.5, 0.9),
          List.of(4.0, 0.8, 0.5, 0.8),
          List.of(1.4, 0.9),
          List.of(6.0, 1.4),
          List.of(4.0, 0.8, 0.5, 0.8, 0.5, 0.8),
          List.of(1.8, 0.7, 0.5, 0.7),
          List.of(6.0, 0.8, 1.6, 0.8));

  private static final double THIN = 0.28;
  private static final double ROW = 4.8;
  private static final double SAMPLE = 16;

  /** The line of a size, by its place among the sizes. */
  static Ink ink(int size, Reading reading) {
    Double[] dashes =
        DASHES.get(size % DASHES.size()).stream().map(reading::mm).toArray(Double[]::new);
    return Ink.line(Colour.INK, reading.mm(THIN * (1 + size / DASHES.size())), dashes);
  }

  private double column() {
    double longest =
        sizes.stream()
            .mapToDouble(s -> Lettering.width(s, reading.points(Reading.TEXT)))
            .max()
            .orElse(0);
    return longest + reading.mm(SAMPLE + 7);
  }

  private int columns() {
    return Math.max(1, (int) (widthMm / column()));
  }

  @Override
  public double heightMm() {
    return reading.mm(ROW) * ((sizes.size() + columns() - 1) / columns());
  }

  @Override
  public List<Item> items(Point upperLeft) {
    List<Item> items = new ArrayList<>();
    for (int i = 0; i < sizes.size(); i++) {
      double x = upperLeft.x() + i % columns() * column();
      double y = upperLeft.y() - reading.mm(ROW) * (i / columns() + 0.5);
      items.add(
          Item.Lines.open(
              "size-line", ink(i, reading), new Point(x, y), new Point(x + reading.mm(SAMPLE), y)));
      items.add(
          Item.Text.of(
              "key",
              sizes.get(i),
              new Point(x + reading.mm(SAMPLE + 1.5), y - reading.points(Reading.TEXT) * 0.36),
              reading.points(Reading.TEXT),
              Item.Anchor.START));
    }
    return List.of(Item.Group.of("size-key", items));
  }
}
