package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.work.Stop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** The commands as a user runs them, on the sample jobs. */
class CommandLineTest {

  private static final String JACKET = "sample-markers/weir-jacket/job.yaml";

  /** Three plain pieces, so that a run is quick. */
  private static final String BIB = "src/test/resources/ellwand/cli/bib.yaml";

  private static final String CAPE = "sample-markers/harbour-cape/job.yaml";
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir private Path folder;

  /** What a run left behind. */
  private Path laid() {
    Path out = folder.resolve("bib");
    Ran ran = Ran.of("lay", BIB, "--effort", "200steps", "--threads", 1, "--out", out);
    assertEquals(0, ran.code(), ran.err());
    return out;
  }

  private static Set<String> names(Path in) throws IOException {
    try (var files = Files.list(in)) {
      return files
          .map(f -> f.getFileName().toString())
          .filter(name -> !name.startsWith("."))
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  @Test
  void aTildeIsTheUsersOwnFolderThoughNoShellSaidSo() {
    Ran ran = Ran.of("check", "~/not there/job.yaml");
    String home = Path.of(System.getProperty("user.home"), "not there", "job.yaml").toString();
    assertEquals(2, ran.code());
    assertTrue(ran.err().startsWith(home + ": there is no such file"), ran.err());
  }

  @Test
  void layWritesEveryFileAndCheckFindsNothing() throws IOException {
    Path out = laid();
    assertEquals(
        new TreeSet<>(
            List.of(
                "cut-sheet.pdf",
                "figures.json",
                "lining.marker.json",
                "lining.pdf",
                "lining.png",
                "lining.svg",
                "main.marker.json",
                "main.pdf",
                "main.png",
                "main.svg",
                "shopping-list.pdf",
                "shopping-list.txt")),
        names(out));
    for (String cloth : List.of("main", "lining")) {
      Ran check = Ran.of("check", out.resolve(cloth + ".marker.json"));
      assertEquals(0, check.code(), check.out());
    }
  }

  /** Someone will copy the example from the help. */
  @Test
  void theExamplesInTheHelpNameFilesThatAreThere() {
    int examples = 0;
    for (CommandLine command : Main.commandLine(Stop::new).getSubcommands().values()) {
      for (String word : command.getUsageMessage().split("\\s+")) {
        if (word.startsWith("sample-markers/")) {
          examples++;
          assertTrue(Files.exists(Path.of(word)), word);
        }
      }
    }
    assertTrue(examples > 6, "the help has examples");
  }

  @Test
  void theSampleJacketIsLaid() {
    Ran ran = Ran.of("lay", JACKET, "--effort", "50steps", "--out", folder.resolve("jacket"));
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.out().contains("Length to buy"), ran.out());
  }

  @Test
  void theSameStepsSeedAndThreadsGiveTheSameBytes() throws IOException {
    for (String name : List.of("a", "b")) {
      Ran ran =
          Ran.of(
              "lay",
              BIB,
              "--effort",
              "300steps",
              "--threads",
              2,
              "--seed",
              7,
              "--out",
              folder.resolve(name));
      assertEquals(0, ran.code(), ran.err());
    }
    for (String file : names(folder.resolve("a"))) {
      if (!file.endsWith(".pdf")) {
        assertEquals(
            -1,
            Files.mismatch(folder.resolve("a").resolve(file), folder.resolve("b").resolve(file)),
            file);
      }
    }
  }

  @Test
  void jsonPrintsTheFiguresAndNothingElse() throws IOException {
    Ran ran = Ran.of("lay", BIB, "--effort", "100steps", "--json", "--out", folder.resolve("json"));
    JsonNode figures = JSON.readTree(ran.out());
    assertEquals(2, figures.get("cloths").size());
    assertEquals(figures, JSON.readTree(folder.resolve("json").resolve("figures.json").toFile()));
  }

  @Test
  void aPieceWiderThanItsClothIsNamedAndNothingIsWritten() {
    Path out = folder.resolve("cape");
    Ran ran = Ran.of("lay", CAPE, "--out", out);
    assertEquals(2, ran.code());
    assertTrue(ran.err().contains("piece cape"), ran.err());
    assertTrue(ran.err().contains("128.0 cm across"), ran.err());
    assertTrue(ran.err().contains("only 108.0 cm"), ran.err());
    assertFalse(ran.err().contains("searched for"), ran.err());
    assertFalse(Files.exists(out));
  }

  @Test
  void clothThatHasNoLineToFoldAtIsTold() throws IOException {
    Path job =
        Files.writeString(
            folder.resolve("striped.yaml"),
            """
            ellwand: 1
            unit: cm
            style: {name: Mat, size: M, allowance: 0, pieces: {mat: {cut: {felt: pair}, outline: \
            [[0, 0], [30, 0], [30, 10], [0, 9]]}}}
            cloths: {felt: {width: 52, selvedge: 1, fold: lengthwise fold, repeat: {across: 120}}}
            order: {garments: 1}
            """);
    Ran ran = Ran.of("lay", job, "--out", folder.resolve("striped"));
    assertEquals(2, ran.code(), ran.err());
    assertTrue(
        ran.err()
            .contains(
                "cloth felt is too narrow for this fold. Lay the cloth open, use cloth at least"
                    + " 62.0 cm wide, or fold it another way."),
        ran.err());
  }

  @Test
  void aBlockToBeFusedKeepsAMarginRoundEachPiece() throws IOException {
    String job =
        """
        ellwand: 1
        unit: cm
        style: {name: Belt, size: M, allowance: 0, pieces: {belt: {cut: {fusible: 2}, outline: \
        [[0, 0], [30, 0], [30, 17], [0, 17]]}}}
        cloths: {fusible: {width: WIDTH, fusing-margin: 15 mm, fold: open, shop-step: 1}}
        order: {garments: 1}
        """;
    // 1.5 + 17 + 3 + 17 + 1.5 across, 1.5 + 30 + 1.5 along.
    Path side = Files.writeString(folder.resolve("side.yaml"), job.replace("WIDTH", "40"));
    Ran ran = Ran.of("lay", side, "--effort", "20steps", "--out", folder.resolve("side"));
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.out().contains("Length to buy      0.33 m"), ran.out());
    String svg = Files.readString(folder.resolve("side/fusible.svg"));
    assertTrue(svg.contains("A fusing margin of 1.5 cm is kept"), svg);
    Path behind = Files.writeString(folder.resolve("behind.yaml"), job.replace("WIDTH", "39.9"));
    ran = Ran.of("lay", behind, "--effort", "20steps", "--out", folder.resolve("behind"));
    assertTrue(ran.out().contains("Length to buy      0.66 m"), ran.out());
  }

  /** Its side is to lie on a stripe, at 22 or 62 cm, and it is 45 cm wide on cloth of 50. */
  @Test
  void aPlaceInTheRepeatThatCannotBeHadIsToldSo() throws IOException {
    Path job =
        Files.writeString(
            folder.resolve("bib.yaml"),
            """
            ellwand: 1
            unit: cm
            style: {name: Bib, size: M, allowance: 0, pieces: {bib: {cut: {plaid: 1}, place: {at: \
            side @ 5, across: 0}, outline: [{point: a, at: [0, 0]}, {point: b, at: [20, 0]}, \
            [20, 45], [0, 45]], edges: {side: {from: a, to: b}}}}}
            cloths: {plaid: {width: 50, fold: open, repeat: {across: 40, start: {across: 22}, \
            uneven: [across]}}}
            order: {garments: 1}
            """);
    Path out = folder.resolve("nowhere");
    Ran laid = Ran.of("lay", job, "--effort", "20steps", "--out", out);
    assertEquals(2, laid.code(), laid.out());
    assertTrue(
        laid.err()
            .contains(
                "it has no room where place: and match: put it in the repeat of cloth plaid."),
        laid.err());
    Ran fit = Ran.of("fit", job, "--on", "50cm x 60cm", "--effort", "20steps", "--out", out);
    assertTrue(
        fit.out()
            .startsWith("No: a piece has no room where place: and match: put it in the repeat.\n"),
        fit.out());
  }

  /** Read for one version after 0.1.0. */
  @Test
  void olderWordsStillMeanTheSame() throws IOException {
    String job =
        """
        ellwand: 1
        unit: cm
        style: {name: Belt, size: M, allowance: 0, pieces: {belt: {cut: {fusible: 2}, outline: \
        [[0, 0], [30, 0], [30, 17], [0, 17]]}}}
        cloths: {fusible: {width: 40, fusing-margin: 15 mm, fold: open, \
        wishes: [small pieces away from the ends]}}
        order: {garments: 1}
        """;
    Path now = Files.writeString(folder.resolve("now.yaml"), job);
    Path then =
        Files.writeString(
            folder.resolve("then.yaml"),
            job.replace("fusing-margin", "buffer")
                .replace("small pieces away from the ends", "small off the end"));
    Ran ran = Ran.of("lay", now, "--effort", "20steps", "--out", folder.resolve("now"));
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.out().contains("small pieces away from the ends: "), ran.out());
    Ran older = Ran.of("lay", then, "--effort", "20steps", "--out", folder.resolve("then"));
    assertEquals(0, older.code(), older.err());
    assertEquals(ran.out(), older.out());
    Path both =
        Files.writeString(
            folder.resolve("both.yaml"),
            job.replace("fusing-margin: 15 mm", "fusing-margin: 15 mm, buffer: 15 mm"));
    Ran twice = Ran.of("lay", both, "--out", folder.resolve("both"));
    assertEquals(2, twice.code(), twice.out());
    assertTrue(
        twice.err().contains("buffer is the older word for fusing-margin, and both are given"),
        twice.err());
  }

  @Test
  void badInputAndBadUsageEndWithTwo() {
    assertEquals(2, Ran.of("lay", folder.resolve("nothing.yaml")).code());
    assertEquals(2, Ran.of("lay", JACKET, "--effort", "soon").code());
    assertEquals(2, Ran.of("lay", JACKET, "--threads", "0").code());
    assertEquals(2, Ran.of("lay", JACKET, "--units", "ell").code());
    assertEquals(2, Ran.of("draw", JACKET, "--out", folder.resolve("pieces.bmp")).code());
    assertEquals(2, Ran.of("measure").code());
    assertEquals(2, Ran.of().code());
  }

  @Test
  void checkAcceptsTheSampleJobs() {
    for (String job : List.of(JACKET, BIB)) {
      Ran ran = Ran.of("check", job);
      assertEquals(0, ran.code(), ran.err());
    }
    assertEquals(2, Ran.of("check", CAPE).code());
  }

  @Test
  void drawWritesEachKind() {
    for (String name : List.of("p.svg", "p.png", "p.pdf")) {
      Path file = folder.resolve(name);
      assertEquals(0, Ran.of("draw", JACKET, "--out", file).code());
      assertTrue(Files.exists(file));
    }
  }

  @Test
  void checkCatchesWhatIsDoneToAMarkerByHand() throws IOException {
    Path marker = laid().resolve("main.marker.json");
    JsonNode good = JSON.readTree(marker.toFile());
    caught(good, "dropped", copies -> copies.remove(0));
    caught(good, "doubled", copies -> copies.add(copies.get(0).deepCopy()));
    caught(good, "mirrored", copies -> flip(copies, 0));
    caught(good, "moved", copies -> shift(copies, 0, 4));
    caught(good, "re-zoned", copies -> ((ObjectNode) copies.get(0)).put("zone", "elsewhere"));
    caught(good, "turned", copies -> ((ObjectNode) copies.get(0)).put("turn", 7));
    caught(good, "shrunk", copies -> scale(copies, 0, 0.98));
  }

  @Test
  void aJobThatNoFileCanBeCalledIsRefused() throws IOException {
    JsonNode marker = JSON.readTree(laid().resolve("main.marker.json").toFile());
    ((ObjectNode) marker.get("job")).put("path", "bib\u0000.yaml");
    Path file = folder.resolve("nul.marker.json");
    JSON.writeValue(file.toFile(), marker);
    Ran ran = Ran.of("check", file);
    assertEquals(2, ran.code(), ran.err());
    assertTrue(ran.err().contains("Name the job (--job JOB.yaml)"), ran.err());
  }

  private void caught(JsonNode good, String what, Consumer<ArrayNode> edit) throws IOException {
    JsonNode bad = good.deepCopy();
    edit.accept((ArrayNode) bad.get("copies"));
    Path file = folder.resolve(what + ".marker.json");
    JSON.writeValue(file.toFile(), bad);
    Ran ran = Ran.of("check", file, "--job", BIB);
    assertEquals(1, ran.code(), what + ": " + ran.out() + ran.err());
    assertTrue(ran.out().lines().findFirst().orElseThrow().endsWith("."), ran.out());
  }

  private static void flip(ArrayNode copies, int index) {
    ObjectNode copy = (ObjectNode) copies.get(index);
    copy.put("flipped", !copy.get("flipped").asBoolean());
  }

  private static void shift(ArrayNode copies, int index, double mm) {
    ObjectNode copy = (ObjectNode) copies.get(index);
    copy.put("x", copy.get("x").asDouble() + mm);
  }

  private static void scale(ArrayNode copies, int index, double factor) {
    for (JsonNode point : copies.get(index).get("outline")) {
      ArrayNode xy = (ArrayNode) point;
      for (int axis = 0; axis < 2; axis++) {
        double value = xy.get(axis).asDouble() * factor;
        xy.set(axis, JSON.getNodeFactory().numberNode(value));
      }
    }
  }
}
