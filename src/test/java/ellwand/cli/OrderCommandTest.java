package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command order as a user runs it, with marker lengths given. */
class OrderCommandTest {

  @TempDir private Path folder;

  private Path job(String order) throws IOException {
    return Files.writeString(folder.resolve("job.yaml"), "{ellwand: 1, order: {" + order + "}}");
  }

  /**
   * Worked examples of the 'Cutting plan' after Carr & Latham, The Technology of Clothing
   * Manufacture; arithmetic rechecked. All garments are taken as equally long.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'10': 40, '12': 90, '14': 80, '16': 25, '18': 25| 50|4|2",
        "'12': 100, '14': 160, '16': 120, '18': 60       | 60|4|2",
        "S: 300, M: 600, L: 400                          | 75|5|4",
      })
  void findsThePublishedPlans(String wanted, int plies, int garments, int lays) throws IOException {
    String sizes = wanted.replace('"', '\'');
    String lengths = sizes.replaceAll(": \\d+", ": 1 m");
    Path job =
        job(
            "colours: {white: {%s}}, lengths: {%s}, max-plies: %d, max-garments: %d, end-loss: 4 cm"
                .formatted(sizes, lengths, plies, garments));
    Ran ran = Ran.of("order", job, "--json", "--effort", "3000steps", "--out", folder);
    assertEquals(0, ran.code(), ran.err());
    JsonNode plan = ran.json();
    assertEquals(lays, plan.get("lays").size(), ran.out());
    assertEquals(lays, plan.get("laysLowerBound").asInt());
    JsonNode asked = Ran.JSON.readTree("{" + sizes.replaceAll("'?(\\w+)'?:", "\"$1\":") + "}");
    assertEquals(asked, plan.get("cut").get("white"));
    assertEquals(plan, Ran.JSON.readTree(folder.resolve("order.json").toFile()));
    for (JsonNode lay : plan.get("lays")) {
      assertTrue(Ran.sum(lay.get("plies")) <= plies);
      assertTrue(Ran.sum(lay.get("garments")) <= garments);
      assertEquals(1000 * Ran.sum(lay.get("garments")), lay.get("length").asDouble());
      assertTrue(lay.get("marker").isNull());
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "S: 4|S: -4|job.yaml:1: there cannot be -4 garments of size S in colour red. Write 0 or more.",
        "S: 4|S: 4.5|size S of colour red should be a whole number, not '4.5'",
        "S: 4|XS: 4|size XS is ordered, but nothing is known of it. Use one of S, M.",
        "table: 3 m|table: 90 cm|a garment of size M needs 1.00 m with its end loss, but the table has only 0.90 m",
        "max-plies: 20|max-plies: 0|a lay of no plies cuts nothing. Set max-plies: to 1 or more.",
        "max-garments: 3|max-garments: 0|a marker of no garments cuts nothing.",
        "max-garments: 3|max-garment: 3|Perhaps max-garments: is meant.",
        "max-plies: 20,||the order has no max-plies:. Add it",
        "S: 4, M: 6|S: 0, M: 0|no garment is wanted in any size or colour",
        "over: 0|over: -1|there cannot be -1 garments over",
        "M: 1 m|M: 0 m|M: must be more than 0",
        "max-plies: 20|spread: {faces: folded}, max-plies: 1|this spreading takes plies two by two",
        "max-plies: 20|cost: {lay: 20 min}, max-plies: 1|it is not said what a minute costs",
        "max-plies: 20|spread: {half-sets: true}, max-plies: 4|half sets come out whole only",
      })
  void badOrdersAreRefused(String old, String now, String message) throws IOException {
    String good =
        "colours: {red: {S: 4, M: 6}}, lengths: {S: 80 cm, M: 1 m}, max-plies: 20,"
            + " max-garments: 3, table: 3 m, tolerance: {over: 0}";
    assertEquals(0, Ran.of("order", job(good), "--out", folder.resolve("good")).code());
    assertTrue(good.contains(old), old);
    Path bad = folder.resolve("bad");
    Ran ran = Ran.of("order", job(good.replace(old, now == null ? "" : now)), "--out", bad);
    assertEquals(2, ran.code(), ran.err());
    assertTrue(ran.err().contains(message), ran.err());
    assertFalse(Files.exists(bad));
  }

  @Test
  void saysWhichSizeCannotBeMetAndWritesTheNearestPlan() throws IOException {
    Path job =
        job(
            "colours: {red: {S: 3}}, lengths: {S: 1 m}, max-plies: 4, max-garments: 3,"
                + " spread: {faces: face to face, one-handed: true}");
    Ran ran = Ran.of("order", job, "--out", folder);
    assertEquals(1, ran.code(), ran.out());
    assertTrue(ran.err().contains("Not met: colour red, size S: 3 wanted"), ran.err());
    assertTrue(Files.exists(folder.resolve("order.json")));
  }
}
