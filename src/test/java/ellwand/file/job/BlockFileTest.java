package ellwand.file.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.file.source.Folder;
import ellwand.job.Job;
import ellwand.pattern.Piece;
import ellwand.problem.InputException;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Pieces that are taken from a block in a file of its own. */
class BlockFileTest {

  private static final String BLOCK =
      """
      ellwand: 1
      unit: in
      style:
        name: box block
        size: M
        allowance: 0
        pieces:
          panel:
            outline:
              - {point: a, at: [0, 0]}
              - {point: b, at: [10, 0]}
              - {point: c, at: [10, 4]}
              - {point: d, at: [0, 4]}
            edges: {hem: {from: d, to: a, allowance: 1}, top: {from: b, to: c}}
      sizes:
        names: [S, M]
        grade: {panel: {b: [1, 0], c: [1, 0]}}
      """;

  private static final String JOB =
      """
      ellwand: 1
      unit: cm
      style:
        name: bag
        size: M
        allowance: 1.5
        pieces:
          side:
            from: {file: block.yaml, piece: panel}
            cut: {main: 2}
            alter: [{extend: top, by: 2}]
      sizes: {file: block.yaml}
      cloths:
        main: {width: 140}
      order: {garments: {M: 1}}
      """;

  private static Folder folder(String job, String block) {
    return Folder.EMPTY
        .with("work/job.yaml", job.getBytes(StandardCharsets.UTF_8))
        .with("work/block.yaml", block.getBytes(StandardCharsets.UTF_8));
  }

  private static Job read(String job, String block) {
    return JobReader.read("work/job.yaml", folder(job, block));
  }

  private static String refusal(String job, String block) {
    return assertThrows(InputException.class, () -> read(job, block)).getMessage();
  }

  @Test
  void aPieceOfABlockHasItsSizesAndTheAllowancesOfTheStyle() {
    Job job = read(JOB, BLOCK);
    assertTrue(job.style().design().sized());
    Piece large = job.style().pieces("M").get(0);
    assertEquals("side", large.name());
    assertEquals(15, large.edge("top").allowanceMm());
    assertEquals(25.4, large.edge("hem").allowanceMm(), "its own");
    assertEquals(254 + 20, large.edge("a to b").line().length(), 1e-6);
    assertEquals(
        254 - 25.4 + 20, job.style().pieces("S").get(0).edge("a to b").line().length(), 1e-6);
  }

  @Test
  void aMarkerKnowsWhenItsBlockHasChanged() {
    assertNotEquals(
        read(JOB, BLOCK).origin().sha256(),
        read(JOB, BLOCK.replace("[10, 4]", "[10, 5]")).origin().sha256());
  }

  @Test
  void aBlockInOneSizeServesAStyleInOneSize() {
    String one = BLOCK.substring(0, BLOCK.indexOf("sizes:"));
    Job job =
        read(
            JOB.replace("size: M", "size: 98")
                .replace("sizes: {file: block.yaml}\n", "")
                .replace("{M: 1}", "{\"98\": 1}"),
            one);
    assertEquals(254 + 20, job.style().pieces("98").get(0).edge("a to b").line().length(), 1e-6);
  }

  @Test
  void theSizesOfABlockMayBeUsedWhateverItsPiecesAreCalled() {
    Job job = read(JOB, BLOCK);
    byte[] written = StyleWriter.bytes(job.style().design(), Set.of());
    Job again =
        JobReader.read(
            "work/job.yaml",
            folder(
                    """
                    ellwand: 1
                    unit: cm
                    style: {file: style.yaml}
                    sizes: {file: style.yaml}
                    cloths: {main: {width: 140}}
                    order: {garments: {M: 1}}
                    """,
                    BLOCK)
                .with("work/style.yaml", written));
    assertEquals(job.style().pieces("S"), again.style().pieces("S"));
  }

  @Test
  void whatIsWrongIsToldWhereItIsWritten() {
    assertEquals(
        "work/job.yaml:9: piece side: the block has no piece called flap. Use one of panel.",
        refusal(JOB.replace("piece: panel", "piece: flap"), BLOCK));
    assertEquals(
        "work/job.yaml:9: work/none.yaml: there is no such file. See that its path is right.",
        refusal(JOB.replace("block.yaml, piece", "none.yaml, piece"), BLOCK));
    assertEquals(
        "work/block.yaml:14: piece panel, edge hem: no point of the outline is named e. Use one of"
            + " a, b, c, d.",
        refusal(JOB, BLOCK.replace("{from: d,", "{from: e,")));
    assertEquals(
        "work/block.yaml:5: size: cannot be a list. Write for example 104.",
        refusal(JOB, BLOCK.replace("  size: M", "  size: [M]")));
    assertEquals(
        "work/block.yaml:9: this file ends up naming itself. Name the file that has"
            + " the block.",
        refusal(
            JOB,
            BLOCK.replace(
                "    panel:\n", "    panel:\n      from: {file: job.yaml, piece: side}\n")));
    assertEquals(
        "work/block.yaml:1: work/job.yaml takes a piece of this file, but it has no style. Put its"
            + " pieces under style:, beside unit.",
        refusal(JOB.replace("sizes: {file: block.yaml}\n", ""), "ellwand: 1\nunit: cm\n"));
  }

  @Test
  void aSizeThatTheBlockLacksIsRefused() {
    assertEquals(
        "work/job.yaml:8: piece side: in size L, style box block has no size L. Use sizes out of S,"
            + " M.",
        refusal(JOB.replace("sizes: {file: block.yaml}", "sizes: {names: [M, L]}"), BLOCK));
  }
}
