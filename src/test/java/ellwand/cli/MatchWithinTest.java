package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Side seams that match at two places are met as a maker works, and what they miss is told. */
class MatchWithinTest {

  private static final String JOB =
      """
      ellwand: 1
      unit: cm
      style:
        name: tabard
        allowance: 1
        match:
          - [front.side @ 2, back.side @ 2]
          - [front.side @ 38, back.side @ 38]
        pieces:
          front:
            cut: {main: 1}
            outline: [[0, 0], [50, 0], {point: c, at: [50, 20]}, {point: d, at: [5, 24]}]
            edges: {side: {from: c, to: d}}
          back:
            cut: {main: 1}
            outline: [[0, 0], [50, 0], {point: c, at: [50, 20]}, {point: d, at: [5, FLARE]}]
            edges: {side: {from: c, to: d}}
      cloths:
        main: {width: 140, repeat: {along: 6WITHIN}}
      """;

  @TempDir Path folder;

  private static String job(String flare, String within) {
    return JOB.replace("FLARE", flare).replace("WITHIN", within);
  }

  /**
   * 36 cm along the sides run 36 x 45 / root(45 x 45 + 4 x 4) = 35.8586 cm along the cloth in
   * front, and with 4.5 in the place of 4 35.8213 cm at the back: 0.373 mm less.
   */
  @Test
  void whatIsMetWithinHalfAMillimetreIsLaidAndTold() throws IOException {
    Marked marked = Marked.lay(folder, job("24.5", ""), "50steps");
    double missed = marked.figures().get("cloths").get(0).get("worstMatchMm").asDouble();
    assertEquals(0.373, missed, 0.001);
    assertTrue(
        marked
            .ran()
            .out()
            .replaceAll(" +", " ")
            .contains("Matches missed by 0.4 mm at most: front.side @ 38 and back.side"),
        marked.ran().out());
    assertEquals(0, Ran.of("check", folder.resolve("out/main.marker.json")).code());
  }

  /** 4.9 in the place of 4: 35.7885 cm, 0.701 mm less. */
  @Test
  void moreIsRefusedUnlessTheJobAllowsIt() throws IOException {
    Path job = Files.writeString(folder.resolve("refused.yaml"), job("24.9", ""));
    Ran refused = Ran.of("check", job);
    assertEquals(2, refused.code());
    assertEquals(
        job
            + ":8: piece front: side @ 38 cannot match back.side @ 38 as well as all else that is"
            + " asked: it would be 0.7 mm off in one size, and 0.5 mm are allowed. Take out"
            + " one of the matches or places of these pieces, or allow more with match-within: of"
            + " the repeat.",
        refused.err().strip());
    Marked marked = Marked.lay(folder, job("24.9", ", match-within: 1 mm"), "50steps");
    assertEquals(0, Ran.of("check", folder.resolve("out/main.marker.json")).code());
    assertEquals(
        0.701, marked.figures().get("cloths").get(0).get("worstMatchMm").asDouble(), 0.001);
  }
}
