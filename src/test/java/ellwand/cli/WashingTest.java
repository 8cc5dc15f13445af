package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What shrinks is said wherever somebody might cut by it. What loses a share s is drawn longer by 1
 * / (1 - s) - 1: 4.2 % for 4 %, 2.0 % for 2 %.
 */
class WashingTest {

  private static final String JOB =
      """
      ellwand: 1
      unit: cm
      style:
        name: Slip
        allowance: 1
        pieces:
          front: {cut: {main: pair}, outline: [[0, 0], [46, 0], [46, 28], [0, 28]]}
          band: {cut: {main: 1}, grain: either, outline: [[0, 0], [36, 0], [36, 17], [0, 17]]}
          facing: {cut: {lining: 1}, outline: [[0, 0], [36, 0], [36, 7], [0, 7]]}
      cloths:
        main: {width: 100, shrinkage: {along: 4 %, across: 2 %, when: after}}
        lining: {width: 90, shrinkage: {along: 3 %, across: 1 %, when: before cutting}}
      remnants:
        shelf: {cloth: lining, width: 40, length: 40}
        scrap: {cloth: lining, width: 20, length: 20}
      """;

  private static final String LARGER =
      "very piece is drawn larger by 4.2 % along and 2 % across (band by 4.2 % both ways), since"
          + " the cloth shrinks once it is cut: do not lay the paper pattern on it.";

  @TempDir private Path folder;
  private Path job;

  @BeforeEach
  void write() throws IOException {
    job = Files.writeString(folder.resolve("job.yaml"), JOB);
  }

  private static void assertSays(String sentence, String text) {
    assertTrue(text.replaceAll("\\s+", " ").contains(sentence), text);
  }

  private static String words(Path pdf) throws IOException {
    try (var document = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(document);
    }
  }

  @Test
  void figuresCutSheetAndMarkersSayIt() throws IOException {
    Path out = folder.resolve("out");
    Ran laid = Ran.of("lay", job, "--effort", "20steps", "--out", out);
    assertSays("main: e" + LARGER, laid.out());
    // 38 cm on the table are 39.2 cm as bought, sold by 10 cm.
    String buy =
        "lining: wash it before it is cut, it loses 3 % along and 1 % across; buy 0.40 m unwashed.";
    assertSays(buy, laid.out());
    String wash =
        "Wash the cloth before it is laid; it is bought unwashed, and drawn here as it is after"
            + " the wash.";
    String sheet = words(out.resolve("cut-sheet.pdf"));
    assertSays("main: e" + LARGER, sheet);
    assertSays("E" + LARGER, sheet);
    assertSays(buy, sheet);
    assertSays(wash, sheet);
    assertSays("E" + LARGER, words(out.resolve("main.pdf")));
    assertSays(wash, words(out.resolve("lining.pdf")));
    assertFalse(words(out.resolve("lining.pdf")).contains("drawn larger"));
  }

  @Test
  void thePiecesSayIt() throws IOException {
    Path pieces = folder.resolve("pieces.svg");
    Ran.of("draw", job, "--out", pieces);
    String svg = Files.readString(pieces, StandardCharsets.UTF_8);
    assertTrue(svg.contains("main: do not lay the paper pattern on it"));
    assertTrue(svg.contains("larger by 4.2 % along and 2 % across"));
    assertFalse(svg.contains("lining: do not"));
  }

  @Test
  void whatWidthsAreComparedByIsUnwashed() {
    String said =
        "those of unwashed cloth: it loses 3 % along and 1 % across when it is washed, before it is"
            + " cut.";
    String out = folder.resolve("out").toString();
    for (String cloth : new String[] {"lining", "main"}) {
      Ran ran =
          Ran.of(
              "compare",
              job,
              "--cloth",
              cloth,
              "--widths",
              "90cm,100cm",
              "--effort",
              "5steps",
              "--out",
              out);
      assertEquals(
          cloth.equals("lining"), ran.out().replaceAll("\\s+", " ").contains(said), ran.out());
    }
  }

  @Test
  void aRemnantIsTakenAsWashed() {
    String out = folder.resolve("out").toString();
    for (String on : new String[] {"shelf", "scrap"}) {
      Ran fit = Ran.of("fit", job, "--on", on, "--effort", "20steps", "--out", out);
      assertSays(
          on
              + " is taken as washed: it is laid as large as it was measured, and what it loses in"
              + " a first wash is not allowed for.",
          fit.out());
      assertFalse(fit.out().contains("unwashed"), fit.out());
    }
    Ran most = Ran.of("fit", job, "--on", "shelf", "--effort", "20steps", "--most");
    assertSays("shelf is taken as washed", most.out());
  }
}
