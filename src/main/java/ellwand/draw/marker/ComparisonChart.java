package ellwand.draw.marker;

import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Drawing;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Reading;
import ellwand.draw.sheet.Shown;
import ellwand.draw.sheet.SvgWriter;
import ellwand.figures.Buying;
import ellwand.figures.Comparison;
import ellwand.figures.Comparison.WidthTried;
import ellwand.figures.ComparisonText;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;

/** A comparison as a picture: a bar for each width and way of laying, as long as the cloth. */
public final class ComparisonChart {

  private static final double WIDTH = 240;
  private static final double ROW = 6.2;
  private static final double BAR = 4.4;
  private static final double BETWEEN_WIDTHS = 3;
  private static final double LABELS = 66;
  private static final double WORDS = 92;
  private static final Colour BUY = new Colour(0x2F4B6E);
  private static final Colour BEST = new Colour(0xA9BBD3);
  private static final Colour OTHER = new Colour(0xEFEFEF);

  private final Comparison comparison;
  private final Shown shown;
  private final Reading reading = new Reading(1);
  private final List<Item> items = new ArrayList<>();

  private ComparisonChart(Comparison comparison, Unit unit) {
    this.comparison = comparison;
    this.shown = new Shown(unit);
  }

  /** As an SVG file. */
  public static byte[] svg(Comparison comparison, Unit unit) {
    return SvgWriter.bytes(new ComparisonChart(comparison, unit).drawing(unit));
  }

  private Drawing drawing(Unit unit) {
    double y = -9;
    items.add(
        text(comparison.style() + ", " + comparison.cloth() + ": what to buy", 0, -5, Reading.TITLE)
            .strongly());
    y = sentences(unit, y);
    double most = comparison.rows().stream().mapToDouble(r -> r.tried().toBuyMm()).max().orElse(0);
    double perMm = most == 0 ? 0 : (WIDTH - LABELS - WORDS) / most;
    double width = Double.NaN;
    for (WidthTried row : comparison.rows()) {
      if (row.widthMm() != width) {
        width = row.widthMm();
        y -= BETWEEN_WIDTHS;
        items.add(text(shown.length(width) + " wide", 0, y - ROW + 1.8, Reading.VALUE).strongly());
      }
      y -= ROW;
      row(row, y, perMm);
    }
    items.add(
        text(
            "Dark: what to buy. Lighter: the best of another width. Tick inside a bar: the cloth"
                + " length without ends and rounding.",
            0,
            y - 6,
            Reading.SMALL));
    return new Drawing(comparison.style() + ", widths compared", new Box(0, y - 9, WIDTH, 2), items)
        .withMargin(5);
  }

  private double sentences(Unit unit, double from) {
    double y = from;
    for (String sentence : ComparisonText.sentences(comparison, unit)) {
      y -= 4.6;
      items.add(text(sentence, 0, y + 2, Reading.TEXT));
    }
    return y;
  }

  private void row(WidthTried row, double y, double perMm) {
    double size = Reading.TEXT;
    items.add(text(row.tried().fold().words(), LABELS - 33, y + 1.6, size));
    if (!row.tried().possible()) {
      items.add(text("no: " + row.tried().reason(), LABELS + 1, y + 1.6, Reading.SMALL));
      return;
    }
    boolean best = comparison.bestOfEach().contains(row);
    boolean buy = comparison.ranked().stream().limit(1).toList().contains(row);
    double end = LABELS + row.tried().toBuyMm() * perMm;
    Box bar = new Box(LABELS, y + 0.6, end, y + 0.6 + BAR);
    items.add(
        Item.Lines.closed(
            best ? "bar-best" : "bar",
            Ink.line(Colour.INK, 0.3).filled(buy ? BUY : best ? BEST : OTHER),
            Outline.of(bar).points()));
    double tick = LABELS + row.tried().clothLengthMm() * perMm;
    items.add(
        Item.Lines.open(
            "cloth-length",
            Ink.line(buy ? Colour.WHITE : Colour.INK, 0.5),
            new Point(tick, bar.minY() + 0.5),
            new Point(tick, bar.maxY() - 0.5)));
    String cost = row.cost() > 0 ? ", " + Shown.money(row.cost(), row.cloth().currency()) : "";
    items.add(
        text(
            Buying.shown(row.tried().toBuyMm(), shown.unit())
                + cost
                + (comparison.garments() > 1 ? each(row) : "")
                + ", "
                + Shown.share(row.utilisation())
                + " used",
            end + 2,
            y + 1.6,
            size));
  }

  private String each(WidthTried row) {
    return row.cost() == 0
        ? ""
        : " ("
            + Shown.money(row.cost() / comparison.garments(), row.cloth().currency())
            + " a garment)";
  }

  private Item.Text text(String words, double x, double y, double points) {
    return Item.Text.of(
        "chart-word", words, new Point(x, y), reading.points(points), Item.Anchor.START);
  }
}
