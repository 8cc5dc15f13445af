package ellwand.draw.sheet;

import ellwand.geometry.Point;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A ruler along one edge of the cloth.
 *
 * @param id of its group
 * @param zero where it counts from
 * @param along direction in which it runs, length 1
 * @param away direction from the cloth, length 1
 * @param fromMm where it begins, counted from zero
 * @param toMm where it ends
 */
public record Ruler(String id, Point zero, Point along, Point away, double fromMm, double toMm) {

  /** How wide a ruler with its numbers is on paper, mm. */
  public static final double DEPTH = 5.2;

  /** How far apart strokes and numbers must be on paper to be told apart, mm. */
  private static final double NEAREST_STROKES = 0.9;

  private static final double POINTS = 7;
  private static final double NEAREST_NUMBERS = 8.5;

  public Item draw(Reading reading, Unit unit) {
    boolean inches = unit == Unit.INCH || unit == Unit.YARD;
    Unit numbered = inches ? Unit.INCH : unit == Unit.MM ? Unit.MM : Unit.CM;
    double base = inches ? Unit.INCH.mm() : Unit.CM.mm();
    int[] strokes = inches ? new int[] {1, 3, 6, 12} : new int[] {1, 5, 10, 50};
    int[] numbers = inches ? new int[] {6, 12, 24, 36} : new int[] {10, 20, 50, 100};
    double stroke = base * fitting(strokes, base, reading.mm(NEAREST_STROKES));
    double number = base * fitting(numbers, base, reading.mm(NEAREST_NUMBERS));
    double middle = base * (inches ? 3 : 5);
    List<List<Point>> lines = new ArrayList<>();
    List<Item> items = new ArrayList<>();
    lines.add(List.of(zero.plus(along.times(fromMm)), zero.plus(along.times(toMm))));
    for (int i = (int) Math.ceil(fromMm / stroke - 1e-6); i * stroke <= toMm + 1e-6; i++) {
      double at = i * stroke;
      boolean main = whole(at / number);
      double length = main ? 2.2 : whole(at / middle) ? 1.5 : 0.9;
      Point foot = zero.plus(along.times(at));
      lines.add(List.of(foot, foot.plus(away.times(reading.mm(length)))));
      String words = String.format(Locale.ROOT, "%.0f", at / numbered.mm());
      if (main && (at == 0 || fits(words, at, reading))) {
        items.add(words(foot, words, reading));
      }
    }
    items.add(0, new Item.Lines("ticks", lines, false, Ink.line(Colour.INK, reading.mm(0.18))));
    return Item.Group.titled(id, "ruler", "in " + numbered.symbol(), items);
  }

  /** Whether a number keeps within the ruler, so that it runs into nothing beside it. */
  private boolean fits(String words, double at, Reading reading) {
    double half = along.x() == 0 ? 0 : Lettering.width(words, reading.points(POINTS)) / 2;
    return at - half >= fromMm && at + half <= toMm;
  }

  private Item words(Point foot, String words, Reading reading) {
    double size = reading.points(POINTS);
    Point at = foot.plus(away.times(reading.mm(2.7)));
    if (along.x() == 0) {
      Point low = new Point(at.x(), at.y() - size * Lettering.CAPITALS / 2);
      return Item.Text.of(
          "ruler-number", words, low, size, away.x() < 0 ? Item.Anchor.END : Item.Anchor.START);
    }
    Point low = away.y() < 0 ? at.plus(away.times(size * Lettering.CAPITALS)) : at;
    return Item.Text.of("ruler-number", words, low, size, Item.Anchor.MIDDLE);
  }

  private static int fitting(int[] steps, double base, double nearestMm) {
    for (int step : steps) {
      if (step * base >= nearestMm) {
        return step;
      }
    }
    return steps[steps.length - 1] * (int) Math.ceil(nearestMm / (steps[steps.length - 1] * base));
  }

  private static boolean whole(double value) {
    return Math.abs(value - Math.rint(value)) < 1e-6;
  }
}
