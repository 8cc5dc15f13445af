package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cli.JoinedPages.Laid;
import ellwand.draw.sheet.PageReader;
import ellwand.draw.sheet.PageReader.Stretch;
import java.awt.Color;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Prints are read back, and their pages put together as their user does it. */
class PrintedPagesTest {

  private static final double MARGIN = 10;

  @TempDir private Path folder;

  @ParameterizedTest
  // ISO 216; Letter is 8 1/2 x 11 in.
  @CsvSource({
    "A4, 210, 297, 10",
    "Letter, 215.9, 279.4, 10",
    "A4-Letter, 210, 297, 19",
    "A3, 297, 420, 10"
  })
  void everyLineLiesWhereItShouldOnEveryPageAndAcrossEveryJoin(
      String paper, double width, double height, double endMm) throws IOException {
    List<Laid> pages = JoinedPages.read(print("--paper", paper), width, height, endMm);
    List<Line2D> cutting = heavy(pages);
    for (List<double[]> expected : List.of(gore(), tab())) {
      AffineTransform place = place(expected, cutting);
      List<double[]> corners =
          expected.stream()
              .map(
                  c -> {
                    double[] at = new double[2];
                    place.transform(c, 0, at, 0, 1);
                    return at;
                  })
              .toList();
      for (int i = 0; i < corners.size(); i++) {
        double[] a = corners.get(i);
        double[] b = corners.get((i + 1) % corners.size());
        double length = Math.hypot(b[0] - a[0], b[1] - a[1]);
        for (double s = 0.5; s < length; s += 1) {
          double x = a[0] + (b[0] - a[0]) * s / length;
          double y = a[1] + (b[1] - a[1]) * s / length;
          boolean printed = false;
          for (Laid page : pages) {
            if (JoinedPages.inside(page.printed(), x, y)) {
              printed = true;
              double off = JoinedPages.nearest(heavy(List.of(page)), x, y);
              assertTrue(off < 0.05, paper + " page " + page.name() + ": " + off + " mm off");
            }
          }
          assertTrue(printed, paper + ": no page shows " + x + ", " + y);
        }
      }
    }
  }

  @Test
  void whatIsDrawnOnBothSidesOfAJoinMeetsThere() throws IOException {
    List<Laid> pages = JoinedPages.read(print("--paper", "A4"), 210, 297, MARGIN);
    int joins = 0;
    for (Laid one : pages) {
      for (Laid other : pages) {
        Rectangle2D both = one.printed().createIntersection(other.printed());
        if (one == other || both.getWidth() < 1 || both.getHeight() < 1) {
          continue;
        }
        joins++;
        for (Line2D line : heavy(List.of(one))) {
          for (double t = 0; t <= 1; t += 0.01) {
            double x = line.getX1() + (line.getX2() - line.getX1()) * t;
            double y = line.getY1() + (line.getY2() - line.getY1()) * t;
            if (JoinedPages.inside(both, x, y)) {
              assertEquals(0, JoinedPages.nearest(heavy(List.of(other)), x, y), 0.02);
            }
          }
        }
      }
    }
    assertTrue(joins > 2, joins + " pairs of pages overlap");
  }

  @Test
  void theHalvesOfEveryDiamondMeet() throws IOException {
    Path pdf = print("--paper", "A4");
    List<Laid> pages = JoinedPages.read(pdf, 210, 297, MARGIN);
    // The long side of each half, 12 mm, lies on the join.
    List<Line2D> sides =
        pages.stream()
            .flatMap(p -> p.lines().stream())
            .filter(s -> Math.abs(s.widthMm() - 0.25) < 0.01 && Math.abs(s.length() - 12) < 0.01)
            .map(Stretch::line)
            .toList();
    assertTrue(sides.size() >= 4, sides.size() + " halves");
    for (Line2D side : sides) {
      long same = sides.stream().filter(o -> apart(side, o) < 0.02).count();
      assertEquals(2, same, "halves at " + side.getBounds2D());
    }
  }

  @Test
  void theSquaresOnTheFirstPageMeasureWhatTheySay() throws IOException {
    for (String paper : List.of("A4", "A0", "roll:91cm")) {
      try (PDDocument pdf = Loader.loadPDF(print("--paper", paper).toFile())) {
        List<Stretch> lines = PageReader.lines(pdf.getPage(0));
        for (double side : new double[] {50, 50.8}) {
          long sides =
              lines.stream()
                  .filter(s -> Math.abs(s.widthMm() - 0.2) < 0.001)
                  .filter(s -> Math.abs(s.length() - side) < 0.005)
                  .count();
          assertEquals(4, sides, paper + ", square of " + side);
        }
      }
    }
  }

  @Test
  void everyPageSaysItsNameAndNoneIsEmpty() throws IOException {
    List<Laid> pages = JoinedPages.read(print("--paper", "A4"), 210, 297, MARGIN);
    assertEquals(pages.size(), pages.stream().map(Laid::name).distinct().count());
    for (Laid page : pages.subList(1, pages.size())) {
      boolean ink = page.lines().stream().anyMatch(s -> s.colour().equals(new Color(0x1B1B1B)));
      // A page in the middle of a piece has none, but joins on all sides.
      assertTrue(ink || page.lines().size() > 8, page.name());
    }
  }

  private Path print(String... options) throws IOException {
    return Wedge.print(folder, options);
  }

  /** Cutting lines: 0.65 mm wide and full. */
  private static List<Line2D> heavy(List<Laid> pages) {
    return JoinedPages.lines(pages, 0.65);
  }

  /** Sewing lines moved out by 10 mm all round and mitred, worked out by hand. */
  private static List<double[]> gore() {
    // Sides climb 10 in 50: their offset lines lie hypot(1, 0.2) * 10 mm away across.
    double across = 10 * Math.hypot(1, 0.2);
    return List.of(
        new double[] {-10, -across - 2},
        new double[] {510, 100 - across + 2},
        new double[] {510, 300 + across - 2},
        new double[] {-10, 400 + across + 2});
  }

  private static List<double[]> tab() {
    return List.of(
        new double[] {-10, -10},
        new double[] {70, -10},
        new double[] {70, 60},
        new double[] {-10, 60});
  }

  /** How a piece was turned, in quarters, and moved; found by its box. */
  private static AffineTransform place(List<double[]> corners, List<Line2D> lines) {
    for (int quarter = 0; quarter < 4; quarter++) {
      Path2D drawn = new Path2D.Double();
      for (double[] c : corners) {
        if (drawn.getCurrentPoint() == null) {
          drawn.moveTo(c[0], c[1]);
        } else {
          drawn.lineTo(c[0], c[1]);
        }
      }
      drawn.closePath();
      AffineTransform turned = AffineTransform.getQuadrantRotateInstance(quarter);
      for (Line2D line : lines) {
        for (double[] c : corners) {
          double[] at = new double[2];
          turned.transform(c, 0, at, 0, 1);
          AffineTransform moved =
              AffineTransform.getTranslateInstance(line.getX1() - at[0], line.getY1() - at[1]);
          moved.concatenate(turned);
          double most = 0;
          for (double[] corner : corners) {
            double[] there = new double[2];
            moved.transform(corner, 0, there, 0, 1);
            most = Math.max(most, JoinedPages.nearest(lines, there[0], there[1]));
          }
          if (most < 0.05) {
            return moved;
          }
        }
      }
    }
    throw new AssertionError("the piece is nowhere");
  }

  private static double apart(Line2D a, Line2D b) {
    return Math.min(
        Math.max(a.getP1().distance(b.getP1()), a.getP2().distance(b.getP2())),
        Math.max(a.getP1().distance(b.getP2()), a.getP2().distance(b.getP1())));
  }
}
