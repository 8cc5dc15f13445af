package ellwand.draw.sheet;

import ellwand.geometry.Box;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * A long picture broken into rows, one under the other, each going on where the one above ends.
 *
 * @param number of rows, 1 or more
 * @param whole what the unbroken picture takes
 * @param lengthMm that is broken into equal parts, from x = 0
 */
public record Rows(int number, Box whole, double lengthMm, Reading reading) {

  /** A lay this much longer than it is wide is hard to read in one row. */
  private static final double TOO_LONG = 6;

  /** How much wider than high the picture on a page should be. */
  private static final double GOOD_SHAPE = 2.4;

  /** Room on paper between rows, and beside a break, mm. */
  private static final double APART = 4;

  private static final double BESIDE = 6;

  /**
   * The rulers and words of more would leave no room for the cloth on an A4 page, however small.
   */
  private static final int MOST = 5;

  /** How many rows suit a lay. */
  public static int suiting(double lengthMm, double widthMm) {
    double ratio = lengthMm / widthMm;
    return ratio <= TOO_LONG ? 1 : (int) Math.min(MOST, Math.ceil(Math.sqrt(ratio / GOOD_SHAPE)));
  }

  public Box box() {
    if (number == 1) {
      return whole;
    }
    double last = whole.maxX() - lengthMm + part();
    return new Box(
        whole.minX(),
        whole.minY() - (number - 1) * step(),
        Math.max(last, part() + reading.mm(BESIDE)),
        whole.maxY());
  }

  private double part() {
    return lengthMm / number;
  }

  private double step() {
    return whole.width() + reading.mm(APART);
  }

  /**
   * The rows of an unbroken picture.
   *
   * @param cloth across which a break is drawn
   */
  public List<Item> items(List<Item> items, Box cloth) {
    if (number == 1) {
      return items;
    }
    List<Item> rows = new ArrayList<>();
    for (int i = 0; i < number; i++) {
      double from = i == 0 ? Double.NEGATIVE_INFINITY : i * part();
      double to = i == number - 1 ? Double.POSITIVE_INFINITY : (i + 1) * part();
      Slice slice = new Slice(from, to, "-row-" + (i + 1), reading);
      List<Item> row = new ArrayList<>(slice.of(items));
      if (i > 0) {
        row.addAll(mark(from, "goes on from row " + i, cloth, -BESIDE / 4));
      }
      if (i < number - 1) {
        row.addAll(mark(to, "goes on in row " + (i + 2), cloth, BESIDE / 2));
      }
      rows.add(Item.Group.of("row-" + (i + 1), Shift.by(new Point(-i * part(), -i * step()), row)));
    }
    return rows;
  }

  private List<Item> mark(double x, String words, Box cloth, double asideMm) {
    return List.of(
        Item.Lines.open(
            "row-break",
            Ink.line(Colour.INK, reading.mm(0.5), reading.mm(1.2), reading.mm(1.2)),
            new Point(x, cloth.minY()),
            new Point(x, cloth.maxY())),
        Item.Text.of(
                "row-word",
                words,
                new Point(x + reading.mm(asideMm), cloth.centre().y()),
                reading.points(Reading.SMALL),
                Item.Anchor.MIDDLE)
            .turned(90));
  }
}
