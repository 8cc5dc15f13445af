package ellwand.draw.marker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.draw.piece.Pieces;
import ellwand.figures.Figures;
import ellwand.figures.JobFigures;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Marker;
import ellwand.units.Unit;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class CutSheetTest {

  @Test
  void tellsWhereEachPieceLies() throws IOException {
    Marker jacket = Samples.jacket();
    String text = text(CutSheet.pdf("Weir jacket", Samples.job(jacket), List.of(jacket), Unit.CM));
    // A pocket of 13 x 11 cm with 1 cm allowance, laid with its corner at 97 and 38 cm; the grain
    // line at 3/10 of its sewn width: 38 + 1 + 0.3 x 11 = 42.3.
    assertTrue(text.contains("7 Pocket 104 1 cut 1 away 97.0 112.0 38.0 51.0 42.3"), text);
    // A back on the fold begins at both zeros.
    assertTrue(text.contains("1 Back 104 1 on the fold away 0.0 53.5 0.0"), text);
    assertTrue(text.contains("folded: 2 plies, wrong side up; across is measured from the fold"));
    assertTrue(text.contains("opened from 96.8 cm: 1 ply, right side up; across is measured from"));
    assertTrue(text.contains("to the nearest 1 mm"));
  }

  /** Of a pocket turned 1.5 degrees clockwise on its way down the cloth. */
  @Test
  void tellsHowFarAPieceLeansOffItsGrain() throws IOException {
    Marker jacket = Samples.jacket();
    List<Copy> copies = new ArrayList<>(jacket.copies());
    int last = copies.size() - 1;
    Copy old = copies.get(last);
    copies.set(
        last,
        Samples.laid(Pieces.pocket(), old.garment(), Form.WHOLE, old.zone(), 178.5, 1200, 400));
    Marker leaning = jacket.with(copies);
    String text =
        text(CutSheet.pdf("Weir jacket", Samples.job(leaning), List.of(leaning), Unit.CM));
    assertTrue(text.contains("1.5 deg right"), text);
    assertTrue(text.contains("turned so far off its grain"), text);
    String straight =
        text(CutSheet.pdf("Weir jacket", Samples.job(jacket), List.of(jacket), Unit.CM));
    assertFalse(straight.contains("turned so far off its grain"), straight);
  }

  @Test
  void tellsWhatToCutAndWhatToTakeCareOf() throws IOException {
    Marker jacket = Samples.jacket();
    String text =
        text(CutSheet.pdf("Weir jacket", Samples.job(jacket), List.of(jacket), Unit.INCH));
    assertTrue(text.contains("Front 104 1 pair 2 2 "), text);
    assertTrue(text.contains("Fold the cloth lengthwise, right sides together"));
    assertTrue(text.contains("EN 14682"));
    assertTrue(text.contains("to the nearest 1/8 in"));
    assertTrue(text.contains("cost per garment"), text);
    assertTrue(text.contains("Take care – Close a rotary cutter"), text);
    assertTrue(text.contains("jacket, all cloths"), text);
    assertTrue(text.contains(" to buy "), text);
    assertTrue(
        text.contains("Where it is opened, measurements across start inside the selvedges"), text);
  }

  @Test
  void pagesAreNumberedA4AndTablesGoOn() throws IOException {
    Marker jacket = Samples.jacket();
    Marker overalls = Samples.overalls();
    byte[] pdf =
        CutSheet.pdf(
            "Weir jacket", Samples.job(jacket, overalls), List.of(jacket, overalls), Unit.CM);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      int pages = document.getNumberOfPages();
      assertEquals(5, pages);
      for (int i = 1; i <= pages; i++) {
        PDRectangle box = document.getPage(i - 1).getMediaBox();
        double shorter = Math.min(box.getWidth(), box.getHeight()) * 25.4 / 72;
        double longer = Math.max(box.getWidth(), box.getHeight()) * 25.4 / 72;
        assertEquals(210, shorter, 0.05);
        assertEquals(297, longer, 0.05);
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(i);
        stripper.setEndPage(i);
        assertTrue(stripper.getText(document).contains("page " + i + " of " + pages));
      }
      PDFTextStripper last = new PDFTextStripper();
      last.setStartPage(pages);
      String text = last.getText(document).replaceAll("\\s+", " ");
      assertTrue(text.contains("line at"), "the table's head comes again: " + text);
      assertTrue(text.contains("42 Hanger loop"));
    }
  }

  /** A page with a marker keeps room for it; what does not fit stands on the pages behind. */
  @Test
  void manyCautionsFlowOn() throws IOException {
    Marker jacket = Samples.jacket();
    List<String> many =
        IntStream.rangeClosed(1, 90)
            .mapToObj(i -> "Caution " + i + " of a cloth that takes a great deal of care.")
            .toList();
    Figures figures = Figures.of(jacket, many);
    MarkerDrawing drawing =
        MarkerDrawing.of(jacket, figures, MarkerHead.of("Weir jacket"), Unit.CM);
    String page = text(drawing.pdf());
    assertTrue(page.contains("Caution 1 of"), page);
    assertTrue(page.contains("More to take care of stands in the cut sheet."), page);
    assertFalse(page.contains("Caution 90 of"), page);
    JobFigures job = JobFigures.of("Weir jacket", List.of(figures), List.of());
    String sheet = text(CutSheet.pdf("Weir jacket", job, List.of(jacket), Unit.CM));
    many.forEach(caution -> assertTrue(sheet.contains(caution), caution));
  }

  @Test
  void everyClothNeedsItsMarker() {
    Marker jacket = Samples.jacket();
    JobFigures two = Samples.job(jacket, jacket);
    assertThrows(
        IllegalArgumentException.class, () -> CutSheet.pdf("two", two, List.of(jacket), Unit.CM));
  }

  private static String text(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }
}
