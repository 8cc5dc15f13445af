package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.draw.sheet.PageReader;
import ellwand.draw.sheet.PageReader.Stretch;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;

/** Printed pages laid out as a maker lays them, by the names that they bear. */
final class JoinedPages {

  private static final double MM_A_POINT = 25.4 / 72;
  private static final double MARGIN = 10;
  private static final double OVERLAP = 5;

  private JoinedPages() {}

  /** A page where it belongs: its lines in the frame of all pages together. */
  record Laid(String name, List<Stretch> lines, Rectangle2D printed) {}

  /** Pages by what they say of themselves, as a maker lays them: rows from the top. */
  static List<Laid> read(Path file, double width, double height, double endMm) throws IOException {
    List<Laid> pages = new ArrayList<>();
    try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
      PDFTextStripper words = new PDFTextStripper();
      for (int i = 0; i < pdf.getNumberOfPages(); i++) {
        PDPage page = pdf.getPage(i);
        double w = page.getMediaBox().getWidth() * MM_A_POINT;
        double h = page.getMediaBox().getHeight() * MM_A_POINT;
        boolean onItsSide = Math.abs(w - height) < 0.01 && w > h;
        assertEquals(onItsSide ? height : width, w, 0.001);
        assertEquals(onItsSide ? width : height, h, 0.001);
        words.setStartPage(i + 1);
        words.setEndPage(i + 1);
        Matcher name =
            Pattern.compile("([A-Z])(\\d+) *page " + (i + 1) + " of").matcher(words.getText(pdf));
        assertTrue(name.find(), words.getText(pdf));
        double side = onItsSide ? endMm : MARGIN;
        double end = onItsSide ? MARGIN : endMm;
        double stepX = w - 2 * side - OVERLAP;
        double stepY = h - 2 * end - OVERLAP;
        double dx = (Integer.parseInt(name.group(2)) - 1) * stepX - side;
        double dy = -(name.group(1).charAt(0) - 'A') * stepY - h + end;
        List<Stretch> lines = PageReader.lines(page).stream().map(s -> moved(s, dx, dy)).toList();
        pages.add(
            new Laid(
                name.group(1) + name.group(2),
                lines,
                new Rectangle2D.Double(dx + side, dy + end, w - 2 * side, h - 2 * end)));
      }
    }
    return pages;
  }

  private static Stretch moved(Stretch s, double dx, double dy) {
    Line2D l = s.line();
    return new Stretch(
        new Line2D.Double(l.getX1() + dx, l.getY1() + dy, l.getX2() + dx, l.getY2() + dy),
        s.widthMm(),
        s.colour(),
        s.dashed());
  }

  /** Full lines of a width. */
  static List<Line2D> lines(List<Laid> pages, double widthMm) {
    return pages.stream()
        .flatMap(p -> p.lines().stream())
        .filter(s -> Math.abs(s.widthMm() - widthMm) < 0.001 && !s.dashed())
        .map(Stretch::line)
        .toList();
  }

  static double nearest(List<Line2D> lines, double x, double y) {
    return lines.stream().mapToDouble(l -> l.ptSegDist(x, y)).min().orElse(Double.MAX_VALUE);
  }

  static boolean inside(Rectangle2D box, double x, double y) {
    return x > box.getMinX() + 0.02
        && x < box.getMaxX() - 0.02
        && y > box.getMinY() + 0.02
        && y < box.getMaxY() - 0.02;
  }
}
