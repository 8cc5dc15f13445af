package ellwand.draw.marker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Drawing;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Paper;
import ellwand.draw.sheet.PdfWriter;
import ellwand.draw.sheet.PdfWriter.OnPaper;
import ellwand.draw.sheet.Unprinted;
import ellwand.geometry.Box;
import ellwand.geometry.Point;
import ellwand.lay.Marker;
import ellwand.units.Unit;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class PdfWriterTest {

  private static final double MM = 25.4 / 72;

  @Test
  void namesWordsThatCannotBePrinted() {
    assertEquals(
        Optional.of(
            "PDF and PNG show question marks for letters that are not Latin, Greek or Cyrillic;"
                + " read these in the SVG: "
                + Samples.LETTERS
                + ", \u88c1."),
        Unprinted.caution(Stream.of("back", Samples.LETTERS, "кант", "\u88c1", "\u88c1")));
    assertEquals(Optional.empty(), Unprinted.caution(Stream.of("Ålesund – złoty кант", "γαζί")));
  }

  @Test
  void pageIsA4AndTheRulerIsAsLongAsItsScaleSays() throws IOException {
    Marker marker = Samples.jacket();
    byte[] pdf =
        MarkerDrawing.of(marker, Samples.figures(marker), Samples.head(marker), Unit.CM).pdf();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDPage page = document.getPage(0);
      assertEquals(210, page.getMediaBox().getWidth() * MM, 0.05);
      assertEquals(297, page.getMediaBox().getHeight() * MM, 0.05);
      double scale = statedScale(text(document));
      assertHasLine(page, marker.lengthMm() / scale, 1);
    }
  }

  @Test
  void fullSizeIsFullSize() throws IOException {
    Marker marker = Samples.jacket();
    byte[] pdf =
        MarkerDrawing.of(marker, Samples.figures(marker), Samples.head(marker), Unit.CM).pdf(1);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertTrue(text(document).contains("drawn full size"));
      assertHasLine(document.getPage(0), marker.lengthMm(), 1);
      assertHasLine(document.getPage(0), 130, 1);
    }
  }

  @Test
  void longerPagesThanPdfAllowsAreMeasuredInLargerUnits() throws IOException {
    // ISO 32000-1, annex C: at most 14,400 units, which are 5.08 m unless UserUnit is larger.
    Drawing drawing =
        new Drawing(
            "long",
            new Box(0, 0, 7000, 100),
            List.of(
                Item.Lines.open(
                    "line", Ink.line(Colour.INK, 1), new Point(0, 50), new Point(7000, 50))));
    try (PDDocument document = Loader.loadPDF(PdfWriter.onePage(drawing, 1))) {
      PDPage page = document.getPage(0);
      assertEquals(2, page.getUserUnit(), 0);
      assertEquals(7020, page.getMediaBox().getWidth() * MM * page.getUserUnit(), 0.05);
      assertHasLine(page, 7000, page.getUserUnit());
    }
  }

  @Test
  void wordsCanBeFoundAndTheirTypeIsEmbedded() throws IOException {
    Marker marker = Samples.jacket();
    byte[] pdf =
        MarkerDrawing.of(marker, Samples.figures(marker), Samples.head(marker), Unit.CM).pdf();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      // The stripper puts spaces into upended words, so spaces are not compared.
      String text = text(document).replace(" ", "");
      for (String words :
          List.of(
              "Weir jacket · main",
              "1 Back",
              "size 104",
              "fold",
              "both selvedges",
              "cut end",
              "end of marker 112.0 cm",
              "1.20 m",
              "lengthwise fold",
              "pair, cuts 2",
              "Hanger loop: 9",
              "wrong side up",
              "allowance included")) {
        assertTrue(text.contains(words.replace(" ", "")), words + " in " + text);
      }
      for (COSName name : document.getPage(0).getResources().getFontNames()) {
        assertTrue(document.getPage(0).getResources().getFont(name).isEmbedded());
      }
    }
  }

  @Test
  void hostileNamesAreWordsLikeOthers() throws IOException {
    Marker marker = Samples.hostile();
    byte[] pdf = CutSheet.pdf("Weir jacket", Samples.job(marker), List.of(marker), Unit.CM);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      String text = text(document);
      assertTrue(text.contains("1 " + Samples.TAGS));
      assertTrue(text.contains(Samples.LETTERS.replace('裁', '?')), text);
      assertFalse(text.contains("裁"));
    }
  }

  @Test
  void theSameDrawingGivesTheSameBytes() {
    Marker marker = Samples.jacket();
    byte[] first =
        MarkerDrawing.of(marker, Samples.figures(marker), Samples.head(marker), Unit.CM).pdf();
    byte[] second =
        MarkerDrawing.of(marker, Samples.figures(marker), Samples.head(marker), Unit.CM).pdf();
    assertTrue(Arrays.equals(first, second));
  }

  @Test
  void drawingsStandWhereTheyArePut() throws IOException {
    Drawing drawing =
        new Drawing(
            "mark",
            new Box(-40, -20, 60, 30),
            List.of(
                Item.Lines.open(
                    "line", Ink.line(Colour.INK, 1), new Point(-40, -20), new Point(60, 30))));
    try (PdfWriter writer = new PdfWriter("mark")) {
      writer.page(Paper.A4, List.of(new OnPaper(drawing, 2, new Point(30, 50))));
      try (PDDocument document = Loader.loadPDF(writer.bytes())) {
        double[] line = lines(document.getPage(0)).get(0);
        assertEquals(30, line[0] * MM, 0.001);
        assertEquals(50, line[1] * MM, 0.001);
        assertEquals(80, line[2] * MM, 0.001);
        assertEquals(75, line[3] * MM, 0.001);
      }
    }
  }

  private static double statedScale(String text) {
    String words = text.substring(text.indexOf("drawn 1:") + 8);
    return Double.parseDouble(words.substring(0, words.indexOf(',')));
  }

  private static String text(PDDocument document) throws IOException {
    return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
  }

  /** Some straight line of the page is so long, to a tenth of a mm. */
  private static void assertHasLine(PDPage page, double mm, double userUnit) throws IOException {
    double nearest =
        lines(page).stream()
            .mapToDouble(l -> Math.hypot(l[2] - l[0], l[3] - l[1]) * MM * userUnit)
            .boxed()
            .min((a, b) -> Double.compare(Math.abs(a - mm), Math.abs(b - mm)))
            .orElseThrow();
    assertEquals(mm, nearest, 0.1);
  }

  /** Every straight stretch of the page as x, y, x, y in its units. */
  private static List<double[]> lines(PDPage page) throws IOException {
    List<double[]> lines = new ArrayList<>();
    List<COSBase> operands = new ArrayList<>();
    double[] at = {0, 0};
    for (Object token : new PDFStreamParser(page).parse()) {
      if (token instanceof Operator operator) {
        boolean line = operator.getName().equals("l");
        if (line || operator.getName().equals("m")) {
          double x = ((COSNumber) operands.get(0)).floatValue();
          double y = ((COSNumber) operands.get(1)).floatValue();
          if (line) {
            lines.add(new double[] {at[0], at[1], x, y});
          }
          at = new double[] {x, y};
        }
        operands.clear();
      } else {
        operands.add((COSBase) token);
      }
    }
    return lines;
  }
}
