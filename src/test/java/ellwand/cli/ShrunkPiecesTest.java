package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Shrinkage is the share of its length that cloth loses in the wash: (before - after) / before, as
 * in ISO 5077 and AATCC 135 (the formula from memory). So what is to measure m after the wash is
 * cut m / (1 - s).
 */
class ShrunkPiecesTest {

  private static final double ALONG = 0.04;
  private static final double ACROSS = 0.05;

  private static final String SLIP =
      """
      ellwand: 1
      unit: cm
      style:
        name: Slip
        size: M
        allowance: 1
        pieces:
          front: {cut: {main: 1}, outline: [[0, 0], [46, 0], [46, 28.4], [0, 28.4]]}
          band: {cut: {main: 1}, grain: across, outline: [[0, 0], [36, 0], [36, 17.2], [0, 17.2]]}
      cloths:
        main:
          width: 100
          gap: 0
          ends: 4
          shop-step: 1 mm
          fold: open
          direction: one way
          shrinkage: {along: 4 %%, across: 5 %%, when: %s}
      order: {garments: {M: 1}}
      """;

  @TempDir private Path folder;

  private Marked washed(String when) throws IOException {
    return Marked.lay(folder, SLIP.formatted(when), "50steps");
  }

  private static void assertReach(double along, double across, JsonNode copy) {
    double[] reach = Marked.reach(copy);
    assertEquals(along, reach[1] - reach[0], 1e-5);
    assertEquals(across, reach[3] - reach[2], 1e-5);
  }

  /** Washed as a garment: each piece is cut larger, and comes out as it was drawn. */
  @Test
  void piecesAreCutLargerAndComeOutOfTheWashAsDrawn() throws IOException {
    Marked marked = washed("after");
    // 46 + 2 x 1 is 48 cm along, 48 / 0.96 = 50; 28.4 + 2 is 30.4 across, 30.4 / 0.95 = 32.
    JsonNode front = marked.copies("front").get(0);
    assertReach(500, 320, front);
    double[] reach = Marked.reach(front);
    assertEquals(480, (reach[1] - reach[0]) * (1 - ALONG), 1e-5, "front along, washed");
    assertEquals(304, (reach[3] - reach[2]) * (1 - ACROSS), 1e-5, "front across, washed");
    // The band's 38 cm lie across the cloth, 38 / 0.95 = 40; its 19.2 along it, 19.2 / 0.96 = 20.
    assertReach(200, 400, marked.copies("band").get(0));
    // Bought as it is laid: 50 and 4 of ends; both lie side by side on 100 cm.
    assertEquals(500, marked.lengthMm(), 1e-5);
    assertEquals(540, toBuyMm(marked), 1e-6);
  }

  /** Washed as cloth: the pieces stay as drawn, the cloth is bought longer and lies narrower. */
  @Test
  void clothIsBoughtLargerAndThePiecesStayAsDrawn() throws IOException {
    Marked marked = washed("before cutting");
    assertReach(480, 304, marked.copies("front").get(0));
    assertReach(192, 380, marked.copies("band").get(0));
    assertEquals(950, marked.marker().get("markerWidth").asDouble(), 1e-6);
    // 48 + 4 of ends is 52 cm once washed; 52 / 0.96 = 54.1667, and the shop cuts whole mm here.
    assertEquals(480, marked.lengthMm(), 1e-5);
    assertEquals(542, toBuyMm(marked), 1e-6);
  }

  private static double toBuyMm(Marked marked) {
    return marked.figures().get("cloths").get(0).get("lengthToBuyMm").asDouble();
  }
}
