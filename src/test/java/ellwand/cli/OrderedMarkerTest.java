package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What heads a marker of an order, and what an order says to buy. */
class OrderedMarkerTest {

  private static final String STYLE =
      """
      ellwand: 1
      unit: yd
      title: Mats
      style:
        name: Mat
        allowance: 0
        pieces:
          mat: {cut: {calico: 1}, outline: [[0 in, 0 in], [0 in, 40 in], [33 in, 40 in], [33 in, 0 in]]}
      cloths:
        calico: {width: 45 in, fold: open, price: USD 8 per yd, shop-step: 1/4 yd}
      order: {garments: {one size: 1}}
      """;

  private static final String ORDER =
      """
      ellwand: 1
      unit: yd
      title: Mats for Harbour Row
      style: {file: mat.yaml}
      cloths: {file: mat.yaml}
      order:
        colours:
          navy: {one size: 3}
          rose: {one size: 2}
        max-plies: 5
        max-garments: 1
        table: 3 yd
        end-loss: 0 in
        cost: {lay: 20 min, minute: 0.4, cloth: 8 USD per yd}
      """;

  @TempDir private Path folder;

  @Test
  void namesTheMarkerItsLayAndPliesAndTheShopsSteps() throws IOException {
    Files.writeString(folder.resolve("mat.yaml"), STYLE);
    Path order = Files.writeString(folder.resolve("order.yaml"), ORDER);
    Path out = folder.resolve("out");
    Ran ran = Ran.of("order", order, "--effort", "200steps", "--threads", "1", "--out", out);
    assertEquals(0, ran.code(), ran.err());
    // 3 x 33 in = 2 3/4 yd, which is a step; 2 x 33 in = 1 yd 30 in, the next quarter is 2 yd.
    assertTrue(ran.out().contains("navy: 2 3/4 yd of cloth, buy 2 3/4 yd"), ran.out());
    assertTrue(ran.out().contains("rose: 1 yd 30 in of cloth, buy 2 yd"), ran.out());
    String words = Ran.words(out.resolve("calico-1.pdf"));
    assertTrue(words.contains("Mats for Harbour Row · calico"), words);
    assertTrue(words.contains("lay 1, 5 plies") && words.contains("3 navy, 2 rose"), words);
    assertTrue(words.contains("4 yd 21 in"), words);
    assertFalse(words.contains("length to buy") || words.contains("USD"), words);
    assertTrue(words.contains("lengths in inches"), words);
  }

  @Test
  void theTitleHeadsMarkerAndCutSheet() throws IOException {
    Path job =
        Files.writeString(
            folder.resolve("mat.yaml"), STYLE.replace("title: Mats", "title: Mats for the shop"));
    Path out = folder.resolve("out");
    assertEquals(0, Ran.of("lay", job, "--effort", "200steps", "--out", out).code());
    assertTrue(Ran.words(out.resolve("calico.pdf")).contains("Mats for the shop · calico"));
    assertTrue(Ran.words(out.resolve("cut-sheet.pdf")).contains("Mats for the shop, "));
  }
}
