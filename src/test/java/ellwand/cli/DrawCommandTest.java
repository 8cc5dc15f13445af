package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sheet of pieces: its pages, its sizes, and what every piece says. */
class DrawCommandTest {

  private static final String NINE_SIZES = "sample-markers/beck-tunic/job.yaml";

  private static final String CUFF_AND_TAPE =
      """
      ellwand: 1
      unit: cm
      title: Cuffs for the harbour shop
      style:
        name: Cuff
        allowance: 5 mm
        pieces:
          cuff: {cut: {cotton: 2 pairs, interfacing: 2}, outline: [[0, 0], [0, 22], [2, 22], [2, 0]]}
          panel: {cut: {cotton: 1}, outline: [[0, 0], [0, 60], [140, 60], [140, 0]]}
          tape: {cut: {cotton: 1}, grain: bias, outline: [[0, 0], [0, 2], [60, 2], [60, 0]]}
      cloths:
        cotton: {width: 140}
        interfacing: {width: 90}
      order: {garments: 1}
      """;

  @TempDir private Path folder;

  @Test
  void everySizeHasAPageOfItsOwn() throws IOException {
    Path out = folder.resolve("pieces.pdf");
    Ran ran =
        Ran.of("draw", NINE_SIZES, "--sizes", "92,98,104,110,116,122,128,134,140", "--out", out);
    assertEquals(0, ran.code(), ran.err());
    assertEquals(9, pages(out));
  }

  @Test
  void beforeAndAfterAreDrawnOnOneAnotherWithWhatWasDone() throws IOException {
    String job = "src/test/resources/ellwand/file/waistcoat.yaml";
    Path svg = folder.resolve("before.svg");
    assertEquals(0, Ran.of("draw", job, "--before", "--out", svg).code());
    String drawn = Files.readString(svg);
    assertEquals(5, Pattern.compile("class=\"before\"").matcher(drawn).results().count());
    assertEquals(5, Pattern.compile("class=\"after\"").matcher(drawn).results().count());
    for (String words :
        new String[] {
          "3. v point: 17.0 cm along centre front",
          "7. point: 4.0 cm down the grain of waist centre",
          "10. centre front extended by 1.5 cm",
          "5. side seam as long as front.side seam",
          "1. facing 4.0 cm deep along"
        }) {
      assertTrue(drawn.contains(words), words);
    }
    Path pdf = folder.resolve("before.pdf");
    assertEquals(0, Ran.of("draw", job, "--before", "--sizes", "104,116", "--out", pdf).code());
    assertTrue(pages(pdf) >= 2);
    assertEquals(0, Ran.of("draw", job, "--before", "--out", folder.resolve("b.png")).code());
  }

  @Test
  void whatIsNotAlteredHasNoBefore() {
    Path out = folder.resolve("none.svg");
    Ran plain = Ran.of("draw", NINE_SIZES, "--before", "--out", out);
    assertEquals(2, plain.code());
    assertTrue(plain.err().contains("no piece of the job is altered"), plain.err());
    assertEquals(2, Ran.of("draw", NINE_SIZES, "--before", "--nested", "--out", out).code());
    assertFalse(Files.exists(out));
  }

  @Test
  void onlyTheSizesAskedForAreDrawn() throws IOException {
    Path out = folder.resolve("pieces.svg");
    assertEquals(0, Ran.of("draw", NINE_SIZES, "--sizes", "104, 98", "--out", out).code());
    String svg = Files.readString(out);
    assertTrue(svg.contains("front, size 98") && svg.contains("front, size 104"));
    assertFalse(svg.contains("size 116"));
    Pattern ids = Pattern.compile("id=\"([^\"]+)\"");
    var all = ids.matcher(svg).results().map(m -> m.group(1)).toList();
    assertEquals(all.size(), all.stream().distinct().count(), "ids are unique: " + all);
  }

  @Test
  void aSizeThatTheStyleLacksIsNamed() {
    Path out = folder.resolve("pieces.svg");
    Ran ran = Ran.of("draw", NINE_SIZES, "--sizes", "98,105", "--out", out);
    assertEquals(2, ran.code());
    assertTrue(ran.err().contains(NINE_SIZES + ": style Beck tunic has no size '105'"), ran.err());
    assertFalse(Files.exists(out));
  }

  @Test
  void aSmallPieceSaysInATableHowItIsCutFromEveryCloth() throws IOException {
    Path job = Files.writeString(folder.resolve("cuff.yaml"), CUFF_AND_TAPE);
    Path out = folder.resolve("pieces.pdf");
    assertEquals(0, Ran.of("draw", job, "--out", out).code());
    String words = Ran.words(out);
    assertTrue(words.contains("cotton: cut 2 pairs; interfacing: cut 2"), words);
    assertTrue(words.contains("Cuffs for the harbour shop"), words);
  }

  @Test
  void narrowPiecesAndBiasStripsHaveAGrainArrow() throws IOException {
    Path job = Files.writeString(folder.resolve("cuff.yaml"), CUFF_AND_TAPE);
    Path out = folder.resolve("pieces.svg");
    assertEquals(0, Ran.of("draw", job, "--out", out).code());
    long arrows =
        Pattern.compile("class=\"grain-line\"").matcher(Files.readString(out)).results().count();
    assertEquals(3, arrows);
  }

  private static int pages(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return document.getNumberOfPages();
    }
  }
}
