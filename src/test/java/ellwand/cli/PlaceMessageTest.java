package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is said where a piece is narrow enough, but not where the repeat wants it to lie. */
class PlaceMessageTest {

  @TempDir private Path folder;
  private Path job;

  @BeforeEach
  void write() throws IOException {
    job =
        Files.writeString(
            folder.resolve("job.yaml"),
            """
            ellwand: 1
            unit: cm
            style:
              name: panel
              allowance: 0
              pieces:
                panel:
                  cut: {print: 1}
                  outline: [{point: a, at: [0, 0]}, {point: b, at: [30, 0]}, [30, 45], [0, 45]]
                  edges: {low: {from: a, to: b}}
                  place: {at: low, across: 0}
            cloths:
              print: {width: 50, fold: open, direction: one way, \
            repeat: {across: 40, start: {across: 20}}}
            """);
  }

  @Test
  void layNamesThePieceAndTheWaysOut() {
    Path out = folder.resolve("out");
    Ran ran = Ran.of("lay", job, "--effort", "5steps", "--out", out);
    assertEquals(2, ran.code(), ran.err());
    assertEquals(
        job
            + ": piece panel: it has no room where place: and match: put it in the repeat of cloth"
            + " print. Use cloth at least 65.0 cm wide, or change what is asked for under place: and"
            + " match.",
        ran.err().strip());
    assertFalse(Files.exists(out));
  }

  @Test
  void fitSaysWhy() {
    Ran ran = Ran.of("fit", job, "--effort", "5steps", "--on", "50cm x 2m");
    assertEquals(1, ran.code(), ran.err());
    assertEquals(
        "No: a piece has no room where place: and match: put it in the repeat.",
        ran.out().lines().findFirst().orElse(""));
  }
}
