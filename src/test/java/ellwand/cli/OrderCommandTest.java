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
import org.junit.jupiter.params.provider.ValueSource;

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
  @ValueSource(strings = {"lay", "compare"})
  void anOrderInColoursIsNoLay(String command) throws IOException {
    Path job = job("colours: {white: {S: 3}}, lengths: {S: 1 m}, max-plies: 9, max-garments: 2");
    Path out = folder.resolve("out");
    Ran ran = Ran.of(command, job, "--out", out);
    assertEquals(2, ran.code());
    assertEquals(
        job
            + ":1: what is wanted in colours is not one lay. Plan it with the command order, or say"
            + " what to lay, for example garments: 1.\n",
        ran.err());
    assertFalse(Files.exists(out));
  }

  /** Every refusal is tested where orders are read. */
  @Test
  void aBadOrderIsRefusedAndNothingIsWritten() throws IOException {
    Path bad = folder.resolve("bad");
    Path job = job("colours: {red: {S: -4}}, lengths: {S: 80 cm}, max-plies: 20, max-garments: 3");
    Ran ran = Ran.of("order", job, "--out", bad);
    assertEquals(2, ran.code(), ran.err());
    assertEquals(
        job
            + ":1: there cannot be -4 garments of size S in colour red. Write 0 or more."
            + System.lineSeparator(),
        ran.err());
    assertFalse(Files.exists(bad));
  }

  @Test
  void saysWhichSizeCannotBeMetAndWritesTheNearestPlan() throws IOException {
    Path job =
        job(
            "colours: {red: {S: 3}}, lengths: {S: 1 m}, max-plies: 4, max-garments: 3,"
                + " spread: {faces: face to face, asymmetric: true}");
    Ran ran = Ran.of("order", job, "--out", folder);
    assertEquals(1, ran.code(), ran.out());
    assertTrue(ran.err().contains("Not met: colour red, size S: 3 wanted"), ran.err());
    assertTrue(Files.exists(folder.resolve("order.json")));
    // The older word, read for one version after 0.1.0.
    Path older = Files.writeString(job, Files.readString(job).replace("asymmetric", "one-handed"));
    assertEquals(ran.err(), Ran.of("order", older, "--out", folder).err());
  }
}
