package ellwand.draw.reference;

import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Drawing;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Paper;
import ellwand.draw.sheet.PdfWriter;
import ellwand.draw.sheet.Reading;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.trace.CodeFamily;
import ellwand.trace.ReferenceSheet;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;

/** Reference sheets to print, each on a page, after a page on how to take the photo. */
public final class ReferencePages {

  private static final Ink BLACK = Ink.area(Colour.INK);
  private static final Ink WHITE = Ink.area(Colour.WHITE);
  private static final Ink LINE = Ink.line(Colour.INK, 0.2);

  /** A bar of this length under the field, for those who measure in inches. */
  private static final double INCHES_MM = 6 * Unit.INCH.mm();

  private ReferencePages() {}

  /**
   * A PDF with so many different sheets.
   *
   * @throws ellwand.problem.InputException if there are not so many
   */
  public static byte[] pdf(ReferenceSheet.Paper paper, int count) {
    List<ReferenceSheet> sheets = ReferenceSheet.first(count, paper);
    Paper page = new Paper(paper.widthMm(), paper.heightMm());
    try (PdfWriter writer = new PdfWriter("Reference sheets for photos of paper pieces")) {
      writer.keepFullSize();
      Point corner = new Point(Paper.MARGIN_MM, Paper.MARGIN_MM);
      writer.page(page, List.of(new PdfWriter.OnPaper(HowToPhotograph.page(page), 1, corner)));
      sheets.forEach(sheet -> writer.page(page, List.of(onPage(sheet(sheet)))));
      return writer.bytes();
    }
  }

  private static PdfWriter.OnPaper onPage(Drawing drawing) {
    return new PdfWriter.OnPaper(drawing, 1, new Point(0, 0));
  }

  private static Drawing sheet(ReferenceSheet sheet) {
    List<Item> items = new ArrayList<>();
    sheet.blackSquares().forEach(box -> items.add(area("field", box, BLACK)));
    for (ReferenceSheet.Code code : sheet.codes()) {
      items.add(area("code", code.box(), BLACK));
      CodeFamily.whiteCells(code).forEach(cell -> items.add(area("cell", cell, WHITE)));
    }
    items.addAll(words(sheet));
    Box frame = sheet.outline().box();
    return new Drawing("Ellwand " + sheet, frame, items);
  }

  private static Item area(String kind, Box box, Ink ink) {
    return Item.Lines.closed(kind, ink, Outline.of(box).points());
  }

  /** Under the field: what to measure, and which sheet it is. */
  private static List<Item> words(ReferenceSheet sheet) {
    Box field = sheet.field();
    Reading reading = new Reading(1);
    double size = reading.points(Reading.TEXT);
    double y = field.minY() - 4;
    double left = field.minX();
    List<Item> items = new ArrayList<>();
    items.add(
        new Item.Lines(
            "bar",
            List.of(
                List.of(new Point(left, y), new Point(left + INCHES_MM, y)),
                List.of(new Point(left, y - 1.5), new Point(left, y + 1.5)),
                List.of(
                    new Point(left + INCHES_MM, y - 1.5), new Point(left + INCHES_MM, y + 1.5))),
            false,
            LINE));
    items.add(text("6 in", new Point(left + INCHES_MM + 2, y - size * 0.35), size));
    items.add(
        text(
                "Ellwand reference sheet " + sheet.paper() + ", number " + sheet.number(),
                new Point(left, y - 7),
                size)
            .strongly());
    items.add(
        text(
            "Print at 100 %. Measure: the chequered field is 175 mm wide and 245 mm high.",
            new Point(left, y - 7 - size * 1.4), size));
    return items;
  }

  private static Item.Text text(String words, Point at, double size) {
    return Item.Text.of("words", words, at, size, Item.Anchor.START);
  }
}
