package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.draw.sheet.PageReader;
import ellwand.draw.sheet.PageReader.Stretch;
import java.awt.geom.Line2D;
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

/** What a print holds, and what is refused. */
class PrintCommandTest {

  private static final double MM_A_POINT = 25.4 / 72;

  @TempDir private Path folder;

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
        Wedge.JOB
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
        Wedge.JOB.replace(
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
        "--paper roll:40cm | gore, one size does not fit on a roll 40cm wide, of which 38.0 cm"
            + " are printed",
        "--lines all | 'all' is not known here",
        "--sizes 98 | style Wedge has no size '98'",
        "--projector --paper A4 | a projector shows one unbroken page, and A4 would be several",
        "--ground dark | a dark ground is for a projector"
      })
  void refusals(String options, String message) throws IOException {
    Path job = Files.writeString(folder.resolve("job.yaml"), Wedge.JOB);
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
    String vast = Wedge.JOB.replace("[50, 30], [50, 10]", "[9000, 9000], [9000, 10]");
    Path job = Files.writeString(folder.resolve("vast.yaml"), vast);
    Path out = folder.resolve("none.pdf");
    Ran ran = Ran.of("print", job, "--paper", "A4", "--out", out);
    assertEquals(2, ran.code(), ran.err());
    assertTrue(ran.err().contains("pages of A4"), ran.err());
    assertFalse(Files.exists(out));
  }

  @Test
  void theRollThatARefusalAsksForIsWideEnough() throws IOException {
    Path job = Files.writeString(folder.resolve("job.yaml"), Wedge.JOB);
    Ran ran = Ran.of("print", job, "--paper", "roll:40cm", "--out", folder.resolve("no.pdf"));
    Matcher width = Pattern.compile("at least ([0-9.]+) cm wide").matcher(ran.err());
    assertTrue(width.find(), ran.err());
    print("--paper", "roll:" + width.group(1) + "cm");
  }

  private Path print(String... options) throws IOException {
    return Wedge.print(folder, options);
  }
}
