package ellwand.file.pdf;

import ellwand.app.Converted;
import ellwand.app.Converting;
import ellwand.file.drawn.Asked;
import ellwand.geometry.Box;
import ellwand.pattern.Piece;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.pdfbox.util.Matrix;

/** PDF files made here, and what is read from them. */
final class DrawnPdf {

  private DrawnPdf() {}

  static final float MM = 72 / 25.4f;

  /** What is drawn on one page; origin at its lower left, mm. */
  interface Drawer {
    void draw(PDPageContentStream on, PDDocument in, int page) throws IOException;
  }

  static byte[] pdf(int pages, Drawer drawer) throws IOException {
    try (PDDocument document = new PDDocument()) {
      for (int i = 0; i < pages; i++) {
        PDPage page = new PDPage(PDRectangle.A4);
        document.addPage(page);
        try (PDPageContentStream on = new PDPageContentStream(document, page)) {
          on.transform(Matrix.getScaleInstance(MM, MM));
          drawer.draw(on, document, i);
        }
      }
      return saved(document);
    }
  }

  static byte[] saved(PDDocument document) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    document.save(out);
    return out.toByteArray();
  }

  static Converted read(byte[] pdf, Asked asked, Optional<Tiling> tiling) {
    return Converting.read(Map.of("a.pdf", pdf), asked, List.of(), tiling);
  }

  static List<Piece> pieces(Converted read) {
    return read.file().style().pieces(read.file().design().sizes().base());
  }

  static Box box(Piece piece) {
    return Box.around(
        piece.edges().stream().flatMap(e -> e.line().flattened(0.01).stream()).toList());
  }

  static void words(PDPageContentStream on, String words, float x, float y) throws IOException {
    on.beginText();
    on.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 6);
    on.newLineAtOffset(x, y);
    on.showText(words);
    on.endText();
  }
}
