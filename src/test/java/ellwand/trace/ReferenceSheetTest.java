package ellwand.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.draw.reference.ReferencePages;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The PDF as printed, read with the finder of photos. */
class ReferenceSheetTest {

  private static final int DPI = 127;
  private static final double PIXELS_PER_MM = DPI / 25.4;

  @ParameterizedTest
  @EnumSource(ReferenceSheet.Paper.class)
  void everySheetIsReadFromItsPageAndTrueInMm(ReferenceSheet.Paper paper) throws IOException {
    byte[] pdf = ReferencePages.pdf(paper, ReferenceSheet.MOST);
    SheetFinder finder = new SheetFinder();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertEquals(1 + ReferenceSheet.MOST, document.getNumberOfPages());
      assertEquals(paper.widthMm() / 25.4 * 72, document.getPage(1).getMediaBox().getWidth(), 1e-3);
      PDFRenderer renderer = new PDFRenderer(document);
      for (int number = 1; number <= ReferenceSheet.MOST; number++) {
        BufferedImage page = renderer.renderImageWithDPI(number, DPI, ImageType.RGB);
        List<SeenSheet> seen = finder.find(new Grey(page));
        assertEquals(1, seen.size());
        assertEquals(new ReferenceSheet(paper, number), seen.get(0).sheet());
        assertEquals(24, seen.get(0).corners().size());
        assertTrue(farthest(seen.get(0)) < 0.2, "off by " + farthest(seen.get(0)) + " mm");
      }
    }
  }

  /** From where a corner ought to be printed, mm; a dot is 0.2 mm. */
  private static double farthest(SeenSheet seen) {
    double height = seen.sheet().paper().heightMm();
    double farthest = 0;
    for (Map.Entry<Integer, Point> corner : seen.corners().entrySet()) {
      Point pixel = corner.getValue();
      Point mm =
          new Point((pixel.x() + 0.5) / PIXELS_PER_MM, height - (pixel.y() + 0.5) / PIXELS_PER_MM);
      farthest = Math.max(farthest, mm.distance(seen.sheet().corners().get(corner.getKey())));
    }
    return farthest;
  }

  @Test
  void moreSheetsThanCodesAreRefused() {
    assertThrows(InputException.class, () -> ReferencePages.pdf(ReferenceSheet.Paper.A4, 8));
    assertThrows(InputException.class, () -> ReferenceSheet.Paper.parse("A5"));
    assertEquals(ReferenceSheet.Paper.LETTER, ReferenceSheet.Paper.parse(" letter "));
  }
}
