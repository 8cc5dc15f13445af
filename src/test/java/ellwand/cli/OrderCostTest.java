package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The cost of a published order, worked by hand. The order and its lays are an example of the
 * 'Cutting plan' after Carr & Latham, The Technology of Clothing Manufacture: 16, 18, 12, 12 on 25
 * plies and 10, 14, 14, 12 on 40. Lengths and prices are our own.
 */
class OrderCostTest {

  private static final String ORDER =
      """
      ellwand: 1
      unit: cm
      order:
        colours: {white: {"10": 40, "12": 90, "14": 80, "16": 25, "18": 25}}
        lengths: {"10": 1.1 m, "12": 1.1 m, "14": 1.1 m, "16": 1.1 m, "18": 1.1 m}
        max-plies: 50
        max-garments: 4
        end-loss: 4
        cost: {lay: 25 min, minute: 0.40, cloth: EUR 6.40 per m}
      """;

  @TempDir private Path folder;

  @Test
  void theTotalAndWhatAGarmentOfEachSizeCosts() throws IOException {
    Path job = Files.writeString(folder.resolve("order.yaml"), ORDER);
    Ran ran = Ran.of("order", job, "--json", "--effort", "3000steps", "--out", folder);
    assertEquals(0, ran.code(), ran.err());
    JsonNode plan = ran.json();
    // Each ply is 4 x 1.10 m and 4 cm of ends, 4.44 m; 25 + 40 plies are 288.60 m.
    assertEquals(288_600, plan.get("cloth").get("white").asDouble(), 1e-6);
    // 288.60 m at 6.40 is 1847.04; two lays of 25 min at 0.40 are 20.00.
    assertEquals(1867.04, plan.get("cost").asDouble(), 1e-6);
    // A garment takes a quarter of a ply, 1.11 m or 7.104. Of its lay's 10.00 it bears a hundredth
    // on 25 plies, 0.10, and a 160th on 40 plies, 0.0625. Of size 12 two a ply are cut on 25,
    // fifty, and one a ply on 40, forty: (50 x 0.10 + 40 x 0.0625) / 90 = 0.0833.
    String report = Ran.words(folder.resolve("order.pdf"));
    assertRow(report, "10 40 40 111.0 cm 7.17 EUR");
    assertRow(report, "12 90 90 111.0 cm 7.19 EUR");
    assertRow(report, "14 80 80 111.0 cm 7.17 EUR");
    assertRow(report, "16 25 25 111.0 cm 7.20 EUR");
    assertRow(report, "18 25 25 111.0 cm 7.20 EUR");
    // One size a lay: 10 plies of four 10, 30 of three 12, 20 of four 14, 25 each of one 16 and
    // 18. That is 30 x 4.44 + 30 x 3.34 + 50 x 1.14 = 290.40 m, 1858.56, and five lays 50.00.
    assertTrue(report.contains("5 lays and 290.40 m of cloth, 1908.56 EUR"), report);
  }

  private static void assertRow(String report, String row) {
    assertTrue(report.lines().anyMatch(line -> line.strip().equals(row)), () -> row + report);
  }
}
