package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Prints are read back, and their pages put together as their user does it. */
class PrintCommandTest {

  /** Both lines of a slanting piece lie at places that are easily worked out. */
  private static final String SKIRT =
      """
      ellwand: 1
      unit: cm
      style:
        name: Wedge
        allowance: 1
        pieces:
          gore: {cut: {main: 2}, outline: [[0, 0], [0, 40], [50, 30], [50, 10]]}
          tab: {cut: {main: 1}, outline: [[0, 0], [0, 5], [6, 5], [6, 0]]}
      cloths:
        main: {width: 140}
      order: {garments: 1}
      """;

  private static final double MM_A_POINT = 25.4 / 72;
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
  void aRollAndAProjectorGetOnePage() throws IOException {
    for (String[] options : new String[][] {{"--paper", "roll:60cm"}, {"--projector"}}) {
      try (PDDocument pdf = Loader.loadPDF(print(options).toFile())) {
        assertEquals(1, pdf.getNumberOfPages());
      }
    }
    try (PDDocument pdf = Loader.loadPDF(print("--paper", "roll:60cm").toFile())) {
      assertEquals(600, pdf.getPage(0).getMediaBox().getHeight() * MM_A_POINT, 0.01);
    }
  }

  @Test
  void aDarkGroundIsDrawnOnWithLightLines() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(print("--projector", "--ground", "dark").toFile())) {
      List<Stretch> heavy =
          PageReader.lines(pdf.getPage(0)).stream().filter(s -> s.widthMm() > 1.5).toList();
      assertTrue(heavy.size() >= 8, heavy.size() + " heavy lines");
      heavy.forEach(s -> assertTrue(s.colour().getRed() > 200, s.colour().toString()));
    }
  }

  @Test
  void eachSizeIsALayerOfAProjectorsPage() throws IOException {
    Path out = folder.resolve("layers.pdf");
    Ran ran =
        Ran.of(
            "print",
            "sample-markers/beck-tunic/job.yaml",
            "--sizes",
            "98,104",
            "--projector",
            "--out",
            out);
    assertEquals(0, ran.code(), ran.err());
    try (PDDocument pdf = Loader.loadPDF(out.toFile())) {
      assertEquals(
          List.of("size 98", "size 104"),
          List.of(pdf.getDocumentCatalog().getOCProperties().getGroupNames()));
    }
  }

  @Test
  void onlyTheLinesAskedForAreDrawn() throws IOException {
    // The lower edge of the tab: 6 cm on the sewing line, 8 cm on the cutting line.
    assertEquals(List.of(false, true), hasLines("sewing"));
    assertEquals(List.of(true, false), hasLines("cutting"));
    assertEquals(List.of(true, true), hasLines("both"));
  }

  private List<Boolean> hasLines(String which) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(print("--paper", "A0", "--lines", which).toFile())) {
      List<Stretch> lines = PageReader.lines(pdf.getPage(0));
      return Stream.of(80.0, 60.0)
          .map(mm -> lines.stream().anyMatch(s -> Math.abs(s.length() - mm) < 0.01))
          .toList();
    }
  }

  @Test
  void aPieceIsPrintedOnceUnlessAClothAsksForAnotherShape() throws IOException {
    String both =
        SKIRT
            .replace("cut: {main: 2}", "cut: {main: 2, lining: 2}")
            .replace("main: {width: 140}", "main: {width: 140}\n  lining: {width: 140%s}");
    String same = labels(both.formatted(""));
    assertTrue(same.contains("2 pieces full size"), same);
    assertTrue(same.contains("main: cut 2") && same.contains("lining: cut 2"), same);
    String shrinking =
        labels(both.formatted(", shrinkage: {along: 20 %, across: 0 %, when: after}"));
    assertTrue(shrinking.contains("3 pieces full size"), shrinking);
    // What loses a fifth has to be a quarter larger.
    assertTrue(shrinking.contains("drawn larger by 25 % along and 0 % across"), shrinking);
  }

  private String labels(String yaml) throws IOException {
    Path job = Files.writeString(folder.resolve("cloths.yaml"), yaml);
    Path out = folder.resolve("cloths.pdf");
    Ran ran = Ran.of("print", job, "--paper", "A0", "--out", out);
    assertEquals(0, ran.code(), ran.err());
    return Ran.words(out).replaceAll("\\s+", " ");
  }

  @Test
  void notchesOfASewingLineBeginOnIt() throws IOException {
    String notched =
        SKIRT.replace(
            "tab: {cut: {main: 1}, outline: [[0, 0], [0, 5], [6, 5], [6, 0]]}",
            "tab: {cut: {main: 1}, edges: {side: {from: a, to: b}},"
                + " notches: [{edge: side, at: 2}], outline: [{point: a, at: [0, 0]},"
                + " {point: b, at: [0, 5]}, [6, 5], [6, 0]]}");
    Path job = Files.writeString(folder.resolve("notched.yaml"), notched);
    for (String lines : List.of("sewing", "cutting")) {
      Path out = folder.resolve("notched.pdf");
      Ran ran = Ran.of("print", job, "--paper", "A0", "--lines", lines, "--out", out);
      assertEquals(0, ran.code(), ran.err());
      try (PDDocument pdf = Loader.loadPDF(out.toFile())) {
        List<Stretch> all = PageReader.lines(pdf.getPage(0));
        Line2D notch =
            all.stream()
                .filter(s -> Math.abs(s.widthMm() - 0.45 * 1.3) < 0.001)
                .map(Stretch::line)
                .findFirst()
                .orElseThrow();
        List<Line2D> outlines =
            all.stream()
                .filter(s -> Math.abs(s.widthMm() - 0.65) < 0.001)
                .map(Stretch::line)
                .toList();
        assertEquals(0, JoinedPages.nearest(outlines, notch.getX1(), notch.getY1()), 0.01);
        assertTrue(JoinedPages.nearest(outlines, notch.getX2(), notch.getY2()) > 1.9);
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

  @Test
  void theSameJobGivesTheSameBytes() throws IOException {
    byte[] first = Files.readAllBytes(print("--paper", "A4"));
    byte[] second = Files.readAllBytes(print("--paper", "A4"));
    assertTrue(java.util.Arrays.equals(first, second));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--paper B9 | 'B9' is no paper that is known here",
        "--paper roll:0cm | a roll is 30 cm to 10 m wide, not 0.0 cm",
        "--paper roll:wide | 'wide' cannot be read as a length",
        "--paper roll:40cm | gore, one size does not fit on roll:40.0cm, of which 38.0 cm are"
            + " printed",
        "--lines all | 'all' is not known here",
        "--sizes 98 | style Wedge has no size '98'",
        "--projector --paper A4 | a projector shows one unbroken page, and A4 would be several",
        "--ground dark | a dark ground is for a projector"
      })
  void refusals(String options, String message) throws IOException {
    Path job = Files.writeString(folder.resolve("job.yaml"), SKIRT);
    Path out = folder.resolve("none.pdf");
    List<String> args = new ArrayList<>(List.of("print", job.toString()));
    args.addAll(List.of(options.split(" ")));
    args.addAll(List.of("--out", out.toString()));
    Ran ran = Ran.of(args.toArray());
    assertEquals(2, ran.code(), ran.err());
    assertTrue(ran.err().contains(message), ran.err());
    assertFalse(Files.exists(out));
  }

  @Test
  void aPieceOfAHundredMetresIsNotPrintedOnAHundredThousandPages() throws IOException {
    String vast = SKIRT.replace("[50, 30], [50, 10]", "[9000, 9000], [9000, 10]");
    Path job = Files.writeString(folder.resolve("vast.yaml"), vast);
    Path out = folder.resolve("none.pdf");
    Ran ran = Ran.of("print", job, "--paper", "A4", "--out", out);
    assertEquals(2, ran.code(), ran.err());
    assertTrue(ran.err().contains("pages of A4"), ran.err());
    assertFalse(Files.exists(out));
  }

  @Test
  void theRollThatARefusalAsksForIsWideEnough() throws IOException {
    Path job = Files.writeString(folder.resolve("job.yaml"), SKIRT);
    Ran ran = Ran.of("print", job, "--paper", "roll:40cm", "--out", folder.resolve("no.pdf"));
    Matcher width = Pattern.compile("at least ([0-9.]+) cm wide").matcher(ran.err());
    assertTrue(width.find(), ran.err());
    print("--paper", "roll:" + width.group(1) + "cm");
  }

  private Path print(String... options) throws IOException {
    Path job = Files.writeString(folder.resolve("job.yaml"), SKIRT);
    Path out = folder.resolve("out.pdf");
    List<Object> args = new ArrayList<>(List.of("print", job));
    args.addAll(List.of(options));
    args.addAll(List.of("--out", out));
    Ran ran = Ran.of(args.toArray());
    assertEquals(0, ran.code(), ran.err());
    return out;
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
