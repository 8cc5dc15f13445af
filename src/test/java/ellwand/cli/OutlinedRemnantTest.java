package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A remnant of any shape has no selvedges and no cut end, and its flaws are named. */
class OutlinedRemnantTest {

  private static final String JOB =
      """
      ellwand: 1
      unit: cm
      style:
        name: Pouch
        allowance: 0
        pieces:
          pouch: {cut: {tweed: 1}, outline: [[0, 0], [0, 20], [20, 20], [20, 0]]}
      cloths:
        tweed: {width: 140, selvedge: 1, fold: open}
      remnants:
        offcut:
          cloth: tweed
          outline: [[0, 0], [90, 0], [95, 50], [10, 60]]
          flaws:
            - {name: burn, at: [50, 30], radius: 0.5}
      order: {garments: 1}
      """;

  @TempDir private Path folder;

  @Test
  void isDrawnAsWhatItIs() throws IOException {
    Path job = Files.writeString(folder.resolve("pouch.yaml"), JOB);
    Path out = folder.resolve("out");
    Ran ran = Ran.of("fit", job, "--on", "offcut", "--effort", "200steps", "--out", out);
    assertEquals(0, ran.code(), ran.err());
    String words = Ran.words(out.resolve("tweed.pdf"));
    assertFalse(words.contains("selvedge") || words.contains("cut end"), words);
    assertTrue(words.contains("burn") && words.contains("near end"), words);
    assertFalse(words.contains("no cloth"), words);
    String svg = Files.readString(out.resolve("tweed.svg"));
    assertFalse(svg.contains("class=\"cut-end\""));
    assertTrue(svg.contains("class=\"no-cloth\""));
    String sheet = Ran.words(out.resolve("cut-sheet.pdf"));
    assertFalse(sheet.contains("selvedge") || sheet.contains("0.00 m"), sheet);
  }
}
