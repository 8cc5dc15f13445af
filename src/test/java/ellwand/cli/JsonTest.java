package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What every command prints with --json: for yes, for no, and when it refuses. */
class JsonTest {

  private static final String BIB = "src/test/resources/ellwand/cli/bib.yaml";

  @TempDir private Path folder;

  private Ran json(String command, Object... more) {
    List<Object> args = new ArrayList<>(List.of(command, "--json"));
    args.addAll(List.of(more));
    return Ran.of(args.toArray());
  }

  private Ran search(String command, Object... more) {
    List<Object> args = new ArrayList<>(List.of(more));
    args.addAll(List.of("--effort", "60steps", "--threads", 1, "--out", folder.resolve("out")));
    return json(command, args.toArray());
  }

  private JsonNode printed(int code, Ran ran) throws IOException {
    assertEquals(code, ran.code(), ran.err());
    return ran.json();
  }

  /** The messages say it all; nothing is printed that is no result, and nothing is written. */
  private void refused(String message, Ran ran) {
    assertEquals(2, ran.code(), ran.err());
    assertEquals("", ran.out());
    assertTrue(ran.err().contains(message), ran.err());
    assertFalse(Files.exists(folder.resolve("out")));
  }

  private Path wrongJob() throws IOException {
    return Files.writeString(
        folder.resolve("wrong.yaml"), Files.readString(Path.of(BIB)).replace("to: low", "to: lw"));
  }

  @Test
  void lay() throws IOException {
    assertEquals(2, printed(0, search("lay", BIB)).get("cloths").size());
  }

  @Test
  void layRefuses() throws IOException {
    refused("wrong.yaml:20: piece bib, edge middle: ", search("lay", wrongJob()));
  }

  @Test
  void compare() throws IOException {
    JsonNode yes = printed(0, search("compare", BIB, "--widths", "90cm"));
    assertTrue(yes.get(0).get("reason").isNull(), yes.toString());
    JsonNode no = printed(1, search("compare", BIB, "--widths", "15cm"));
    assertTrue(no.get(0).get("reason").asText().contains("lies"), no.toString());
  }

  @Test
  void compareRefuses() {
    refused("--widths", search("compare", BIB, "--widths", "wide"));
  }

  /** Face to face, what has a hand comes out in twos, so that three cannot be met. */
  @Test
  void order() throws IOException {
    String order =
        "{ellwand: 1, order: {colours: {red: {S: %d}}, lengths: {S: 1 m}, max-plies: 4,"
            + " max-garments: 3, spread: {faces: face to face, one-handed: true}}}";
    for (int wanted : List.of(4, 3)) {
      Path job = Files.writeString(folder.resolve("order.yaml"), order.formatted(wanted));
      JsonNode plan = printed(wanted == 4 ? 0 : 1, search("order", job));
      assertEquals(wanted == 4, plan.get("cut").get("red").get("S").asInt() == wanted);
    }
  }

  @Test
  void orderRefuses() throws IOException {
    Path job = Files.writeString(folder.resolve("none.yaml"), "{ellwand: 1, unit: cm}");
    refused("none.yaml:1: ", search("order", job));
  }

  @Test
  void fit() throws IOException {
    JsonNode yes = printed(0, search("fit", BIB, "--on", "90cm x 1m"));
    assertTrue(yes.get("fits").asBoolean());
    assertTrue(yes.get("tooWide").isNull());
    assertTrue(yes.get("neededMm").asDouble() <= 1000, yes.toString());
    assertEquals(0, yes.get("leftOut").size());
  }

  @Test
  void fitSaysNo() throws IOException {
    JsonNode tooShort = printed(1, search("fit", BIB, "--on", "90cm x 20cm"));
    assertFalse(tooShort.get("fits").asBoolean());
    assertTrue(tooShort.get("neededMm").asDouble() > 200, tooShort.toString());
    assertTrue(tooShort.get("leftOut").size() > 0);
    JsonNode tooNarrow = printed(1, search("fit", BIB, "--on", "15cm x 3m"));
    assertTrue(tooNarrow.get("neededMm").isNull());
    assertEquals("bib", tooNarrow.get("tooWide").get("piece").asText());
    assertFalse(Files.exists(folder.resolve("out")));
  }

  @Test
  void fitRefuses() {
    refused("no remnant is called scrap", search("fit", BIB, "--on", "scrap"));
  }

  @Test
  void fitMost() throws IOException {
    assertEquals(1, printed(0, search("fit", BIB, "--on", "90cm x 32cm", "--most")).asInt());
    assertEquals(0, printed(1, search("fit", BIB, "--on", "90cm x 5cm", "--most")).asInt());
    refused("no remnant is called scrap", search("fit", BIB, "--on", "scrap", "--most"));
  }

  @Test
  void checkOfAJob() throws IOException {
    JsonNode yes = printed(0, json("check", BIB));
    assertEquals(0, yes.get("problems").size());
    JsonNode wrong = printed(2, json("check", wrongJob())).get("problems").get(0);
    assertTrue(wrong.get("file").asText().endsWith("wrong.yaml"));
    assertEquals(20, wrong.get("line").asInt());
    assertEquals("bib", wrong.get("piece").asText());
    assertEquals("middle", wrong.get("edge").asText());
    assertFalse(wrong.get("what").asText().isEmpty());
    assertFalse(wrong.get("remedy").asText().isEmpty());
    JsonNode missing = printed(2, json("check", folder.resolve("no.yaml"))).get("problems").get(0);
    assertTrue(missing.get("line").isNull());
    assertEquals("there is no such file", missing.get("what").asText());
  }

  @Test
  void checkOfAMarker() throws IOException {
    search("lay", BIB);
    Path marker = folder.resolve("out/lining.marker.json");
    JsonNode yes = printed(0, json("check", marker));
    assertEquals(0, yes.get("findings").size());
    assertFalse(yes.get("jobChanged").asBoolean());
    String text = Files.readString(marker);
    Files.writeString(marker, text.replaceFirst("\"form\" ?: ?\"\\w+\"", "\"form\": \"pair\""));
    JsonNode no = printed(1, json("check", marker)).get("findings").get(0);
    assertFalse(no.get("rule").asText().isEmpty());
    assertTrue(no.get("sentence").asText().contains("Bib near"), no.toString());
    Files.writeString(marker, "{}");
    JsonNode refused = printed(2, json("check", marker)).get("problems").get(0);
    assertEquals("this is no marker of Ellwand", refused.get("what").asText());
  }

  @Test
  void drawHasNoFigures() {
    assertEquals(2, json("draw", BIB, "--out", folder.resolve("pieces.svg")).code());
  }
}
