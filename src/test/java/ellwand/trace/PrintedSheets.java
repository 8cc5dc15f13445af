package ellwand.trace;

import ellwand.draw.reference.ReferencePages;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Pages of the program's own PDF, as a printer of 600 dots to the inch lays them down. */
final class PrintedSheets {

  static final int DPI = 600;

  private static final Map<ReferenceSheet.Paper, byte[]> PDF =
      new EnumMap<>(ReferenceSheet.Paper.class);

  private static final Map<String, BufferedImage> KEPT = new HashMap<>();

  private PrintedSheets() {}

  /**
   * @param dots so many dots each way become one pixel
   */
  static synchronized BufferedImage page(ReferenceSheet sheet, int dots) {
    return KEPT.computeIfAbsent(sheet + "/" + dots, key -> fewer(dots(sheet), dots));
  }

  private static BufferedImage dots(ReferenceSheet sheet) {
    byte[] pdf =
        PDF.computeIfAbsent(sheet.paper(), paper -> ReferencePages.pdf(paper, ReferenceSheet.MOST));
    try (PDDocument document = Loader.loadPDF(pdf)) {
      int first = document.getNumberOfPages() - ReferenceSheet.MOST;
      return new PDFRenderer(document)
          .renderImageWithDPI(first + sheet.number() - 1, DPI, ImageType.GRAY);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static BufferedImage fewer(BufferedImage page, int dots) {
    int width = page.getWidth() / dots;
    int height = page.getHeight() / dots;
    BufferedImage fewer = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    int[] from = new int[width * dots * dots];
    for (int row = 0; row < height; row++) {
      page.getRaster().getPixels(0, row * dots, width * dots, dots, from);
      for (int column = 0; column < width; column++) {
        double sum = 0;
        for (int i = 0; i < dots * dots; i++) {
          sum += Film.LINEAR[from[(i / dots) * width * dots + column * dots + i % dots]];
        }
        int grey = Math.round(255 * Film.srgb((float) (sum / (dots * dots))));
        fewer.setRGB(column, row, grey * 0x10101);
      }
    }
    return fewer;
  }
}
