package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import ellwand.work.Stop;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.StreamSupport;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

/** The command order as a user runs it. */
class OrderCommandTest {

  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir private Path folder;

  private record Ran(int code, String out, String err) {}

  private Ran run(Object... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine commands = Main.commandLine(new Stop());
    commands.setOut(new PrintWriter(out));
    commands.setErr(new PrintWriter(err));
    int code = commands.execute(Arrays.stream(args).map(Object::toString).toArray(String[]::new));
    commands.getOut().flush();
    commands.getErr().flush();
    return new Ran(code, out.toString(), err.toString());
  }

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
    Ran ran = run("order", job, "--json", "--effort", "3000steps", "--out", folder);
    assertEquals(0, ran.code(), ran.err());
    JsonNode plan = JSON.readTree(ran.out());
    assertEquals(lays, plan.get("lays").size(), ran.out());
    assertEquals(lays, plan.get("laysLowerBound").asInt());
    JsonNode asked = JSON.readTree("{" + sizes.replaceAll("'?(\\w+)'?:", "\"$1\":") + "}");
    assertEquals(asked, plan.get("cut").get("white"));
    assertEquals(plan, JSON.readTree(folder.resolve("order.json").toFile()));
    for (JsonNode lay : plan.get("lays")) {
      assertTrue(sum(lay.get("plies")) <= plies);
      assertTrue(sum(lay.get("garments")) <= garments);
      assertEquals(1000 * sum(lay.get("garments")), lay.get("length").asDouble());
      assertTrue(lay.get("marker").isNull());
    }
  }

  private static int sum(JsonNode counts) {
    return StreamSupport.stream(counts.spliterator(), false).mapToInt(JsonNode::asInt).sum();
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
    assertEquals(0, run("order", job(good), "--out", folder.resolve("good")).code());
    assertTrue(good.contains(old), old);
    Path bad = folder.resolve("bad");
    Ran ran = run("order", job(good.replace(old, now == null ? "" : now)), "--out", bad);
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
    Ran ran = run("order", job, "--out", folder);
    assertEquals(1, ran.code(), ran.out());
    assertTrue(ran.err().contains("Not met: colour red, size S: 3 wanted"), ran.err());
    assertTrue(Files.exists(folder.resolve("order.json")));
  }

  @Test
  void makesTheMarkersOfAStyleAndReportsThem() throws IOException {
    Path tunic = Path.of("sample-markers/beck-tunic/order.yaml");
    Path out = folder.resolve("out");
    Ran ran = run("order", tunic, "--effort", "400steps", "--threads", 1, "--out", out);
    assertEquals(0, ran.code(), ran.err());
    JsonNode plan = JSON.readTree(out.resolve("order.json").toFile());
    assertEquals(30, plan.get("cut").get("ochre").get("104").asInt(), 1);
    for (JsonNode lay : plan.get("lays")) {
      assertTrue(lay.get("length").asDouble() + 40 <= 2400.001, "fits the table");
      Path marker = out.resolve(lay.get("marker").asText());
      Ran check = run("check", marker);
      assertEquals(0, check.code(), check.out() + check.err());
      JsonNode file = JSON.readTree(marker.toFile());
      assertEquals(file.get("clothLength").asDouble(), lay.get("length").asDouble(), 1e-5);
      assertEquals(lay.get("garments"), file.get("job").get("garments"));
    }
    double ofLays = 0;
    double cost = 0;
    for (JsonNode lay : plan.get("lays")) {
      boolean lining = lay.get("cloth").asText().equals("lining");
      double mm = sum(lay.get("plies")) * (lay.get("length").asDouble() + (lining ? 20 : 40));
      ofLays += mm;
      // 25 min at 0.40 for each lay; cloth at 9.80 a metre, lining at 4.20.
      cost += 10 + mm / 1000 * (lining ? 4.2 : 9.8);
    }
    double ofColours = 0;
    for (JsonNode colour : plan.get("cloth")) {
      ofColours += colour.asDouble();
    }
    assertEquals(ofLays, ofColours, 1e-3);
    assertEquals(cost, plan.get("cost").asDouble(), 1e-3);
    assertTrue(
        plan.get("cloths").get(1).get("cut").has("sand"), "ochre and moss are lined in sand");
    assertTrue(ran.out().contains("Estimated marker lengths were"), ran.out());
    assertTrue(ran.out().contains("One size a lay would take"), ran.out());
    List<String> csv = Files.readAllLines(out.resolve("cut-tickets.csv"));
    int cut =
        csv.stream()
            .map(line -> line.split(","))
            .filter(cells -> cells[1].equals("main"))
            .mapToInt(cells -> Integer.parseInt(cells[7]))
            .sum();
    int planned = 0;
    for (JsonNode colour : plan.get("cut")) {
      planned += sum(colour);
    }
    assertEquals(planned, cut);
    assertTrue(words(out.resolve("order.pdf")).contains("Lay 1"));
    assertTrue(words(out.resolve("bundle-labels.pdf")).contains("plies 1 to"));
  }

  private static final String BIBS =
      """
      ellwand: 1
      unit: cm
      style:
        name: Bib
        size: M
        allowance: 0
        pieces:
          side: {cut: {felt: pair}, outline: [[0, 0], [30, 0], [30, 40], [0, 35]]}
          middle: {cut: {felt: 1}, outline: [[0, 0], [20, 0], [20, 20], [0, 20]]}
          flap: {cut: {felt: 1, lawn: 2}, outline: [[0, 0], [10, 0], [10, 8], [0, 4]]}
      cloths: {felt: {width: 100, fold: open, price: 4 per m}, lawn: {width: 40, fold: open}}
      order:
        colours: {red: {M: 4}, blue: {M: 3}}
        max-plies: 8
        max-garments: 4
      """;

  private Path bibs(String more) throws IOException {
    return Files.writeString(folder.resolve("bibs.yaml"), BIBS + more);
  }

  private Ran order(Path job) {
    return run("order", job, "--json", "--effort", "60steps", "--threads", 1, "--out", folder);
  }

  @Test
  void everyClothOfTheStyleIsPlannedForTheGarmentsOfTheFirst() throws IOException {
    Path job =
        bibs(
            "  tolerance: {over: 1}\n  cloths: {lawn: {colour: white, max-plies: 20, end-loss: 1,"
                + " cost: {cloth: 2 per m}}}\n");
    Ran ran = order(job);
    assertEquals(0, ran.code(), ran.err());
    JsonNode plan = JSON.readTree(ran.out());
    assertEquals("[\"felt\",\"lawn\"]", names(plan.get("cloths")).toString());
    int felt = 0;
    double lawnMm = 0;
    for (JsonNode lay : plan.get("lays")) {
      boolean lawn = lay.get("cloth").asText().equals("lawn");
      assertTrue(sum(lay.get("plies")) <= (lawn ? 20 : 8));
      felt += lawn ? 0 : sum(lay.get("plies")) * lay.get("garments").get("M").asInt();
      lawnMm += lawn ? sum(lay.get("plies")) * (lay.get("length").asDouble() + 10) : 0;
      assertEquals(0, run("check", folder.resolve(lay.get("marker").asText())).code());
    }
    JsonNode lawn = plan.get("cloths").get(1);
    int cut = lawn.get("cut").get("white").get("M").asInt();
    assertTrue(felt >= 7 && cut >= felt && cut <= felt + 1, ran.out());
    assertEquals(felt, sum(plan.get("cut").get("red")) + sum(plan.get("cut").get("blue")));
    assertEquals(lawnMm, lawn.get("cloth").get("white").asDouble(), 1e-3);
    assertEquals(lawnMm / 1000 * 2, lawn.get("cost").asDouble(), 1e-6);
    assertEquals(
        plan.get("cost").asDouble(),
        plan.get("cloths").get(0).get("cost").asDouble() + lawn.get("cost").asDouble(),
        1e-6);
    String report = words(folder.resolve("order.pdf"));
    assertTrue(report.contains("Markers of lawn"), report);
    assertTrue(words(folder.resolve("bundle-labels.pdf")).contains("lawn, white"));
    List<String> csv = Files.readAllLines(folder.resolve("cut-tickets.csv"));
    assertTrue(csv.stream().anyMatch(line -> line.contains(",lawn,lawn-1,white,")), csv.toString());
  }

  private static JsonNode names(JsonNode cloths) {
    return JSON.valueToTree(
        StreamSupport.stream(cloths.spliterator(), false).map(c -> c.get("name")).toList());
  }

  @Test
  void clothPlansJustOne() throws IOException {
    Ran ran = order(bibs("  cloth: lawn\n"));
    assertEquals(0, ran.code(), ran.err());
    JsonNode plan = JSON.readTree(ran.out());
    assertFalse(plan.has("cloths"), ran.out());
    plan.get("lays").forEach(lay -> assertEquals("lawn", lay.get("cloth").asText()));
  }

  @Test
  void twoPliesOfHalfSetsMakeTheGarmentsOfOneWholeMarker() throws IOException {
    Ran ran = order(bibs("  cloth: felt\n  spread: {faces: face to face, half-sets: true}\n"));
    assertEquals(0, ran.code(), ran.err());
    JsonNode plan = JSON.readTree(ran.out());
    assertEquals(4, plan.get("cut").get("red").get("M").asInt());
    assertEquals(3, plan.get("cut").get("blue").get("M").asInt());
    double cloth = 0;
    for (JsonNode lay : plan.get("lays")) {
      lay.get("plies").forEach(plies -> assertEquals(0, plies.asInt() % 2, ran.out()));
      cloth += sum(lay.get("plies")) * lay.get("length").asDouble();
      Path marker = folder.resolve(lay.get("marker").asText());
      Ran check = run("check", marker);
      assertEquals(0, check.code(), check.out() + check.err());
      JsonNode file = JSON.readTree(marker.toFile());
      assertEquals(2 * lay.get("length").asDouble(), file.get("clothLength").asDouble(), 1e-5);
      int sides = 0;
      int middles = 0;
      int flaps = 0;
      for (JsonNode copy : file.get("copies")) {
        String piece = copy.get("piece").asText();
        sides += piece.equals("side") ? 1 : 0;
        middles += piece.equals("middle") ? 1 : 0;
        flaps += piece.equals("flap") ? 1 : 0;
      }
      int garments = lay.get("garments").get("M").asInt();
      assertEquals(garments, sides, "one of each pair");
      assertEquals((garments + 1) / 2, middles, "what has no hand once for two garments");
      assertEquals(garments, flaps, "the mirrored twin of what has a hand is wasted");
      Path broken = folder.resolve("broken.marker.json");
      Files.writeString(broken, Files.readString(marker).replace("\"pair\"", "\"whole\""));
      assertEquals(1, run("check", broken, "--job", folder.resolve("bibs.yaml")).code());
    }
    double ofColours = 0;
    for (JsonNode colour : plan.get("cloth")) {
      ofColours += colour.asDouble();
    }
    assertEquals(cloth, ofColours, 1e-3);
  }

  @Test
  void wholeSetsFaceToFaceTellWhatComesOutMirrored() throws IOException {
    Path job = bibs("  tolerance: {over: 1}\n  cloth: felt\n  spread: {faces: face to face}\n");
    Ran ran = run("order", job, "--effort", "60steps", "--threads", 1, "--out", folder);
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.out().contains("on the other side: flap."), ran.out());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "max-plies: 8|max-plies: 1|spread: {faces: face to face, half-sets: true}"
            + "|takes plies two by two",
        "fold: open, price|fold: open, direction: one way per garment, price"
            + "|spread: {faces: face to face, half-sets: true, headings: alternating}"
            + "|turn the nap within a garment",
        "fold: open, price|fold: open, direction: one way, price|spread: {headings: alternating}"
            + "|can't be cut from one-way cloth",
        "fold: open, price|fold: open, repeat: {along: 5}, price"
            + "|spread: {faces: face to face, half-sets: true}|half sets cannot be cut",
        "fold: open, price|fold: two plies face to face, price||cloth cannot lie 'two plies",
        "x|x|cloths: {lining: {colour: white}}|no cloth is called lining. Use one of felt, lawn",
        "x|x|cloths: {lawn: {colours: {green: white}}}|no garment is ordered in colour green",
        "x|x|cloths: {lawn: {max-plies: 0}}|a lay of no plies cuts nothing",
        "4 per m|4 EUR per m|cloths: {lawn: {cost: {cloth: GBP 3 per yd}}}"
            + "|the cloths' prices are in EUR and GBP",
      })
  void badSpreadsAndClothsAreRefused(String old, String now, String more, String message)
      throws IOException {
    Path job = folder.resolve("bad.yaml");
    Files.writeString(job, BIBS.replace(old, now) + (more == null ? "" : "  " + more + "\n"));
    Path out = folder.resolve("none");
    Ran ran = run("order", job, "--effort", "10steps", "--out", out);
    assertEquals(2, ran.code(), ran.err());
    assertTrue(ran.err().contains(message), ran.err());
    assertFalse(Files.exists(out));
  }

  @Test
  void clothThatMayNotLieOpenIsSpreadFolded() throws IOException {
    Path folded = folder.resolve("folded.yaml");
    String order =
        """
        ellwand: 1
        unit: cm
        style: {name: Mat, size: M, allowance: 0, pieces: {mat: {cut: {felt: pair}, outline: \
        [[0, 0], [30, 0], [30, 40], [0, 35]]}}}
        cloths: {felt: {width: 100, fold: lengthwise fold}}
        order: {colours: {red: {M: 4}}, max-plies: 10, max-garments: 2}
        """;
    Files.writeString(folded, order);
    Ran ran =
        run("order", folded, "--json", "--effort", "50steps", "--threads", 1, "--out", folder);
    assertEquals(0, ran.code(), ran.err());
    JsonNode lay = JSON.readTree(ran.out()).get("lays").get(0);
    assertEquals(0, lay.get("plies").get("red").asInt() % 2, "folded plies count two");
    Files.writeString(folded, order.replace("max-plies", "spread: {faces: all up}, max-plies"));
    Ran open = run("order", folded, "--out", folder);
    assertEquals(2, open.code());
    assertTrue(open.err().contains("needs the cloth to lie as open, which it may not"), open.err());
  }

  /** A badge alone would take least on opened cloth, which plies folded as a stack have not. */
  @Test
  void foldedPliesAreNeverOpenedForWhatIsCutOnce() throws IOException {
    Path folded = folder.resolve("badge.yaml");
    Files.writeString(
        folded,
        """
        ellwand: 1
        unit: cm
        style: {name: Mat, size: M, allowance: 0, pieces: {mat: {cut: {felt: pair}, outline: \
        [[0, 0], [30, 0], [30, 50], [0, 45]]}, badge: {cut: {felt: 1}, outline: \
        [[0, 0], [10, 0], [10, 40], [0, 35]]}}}
        cloths: {felt: {width: 100, fold: lengthwise fold}}
        order: {colours: {red: {M: 4}}, max-plies: 10, max-garments: 1}
        """);
    Ran ran =
        run("order", folded, "--json", "--effort", "50steps", "--threads", 1, "--out", folder);
    assertEquals(0, ran.code(), ran.err());
    String report = words(folder.resolve("order.pdf")).replaceAll("\\s+", " ");
    assertTrue(report.contains("Spread 4 folded lengths (8 plies), each 40.0 cm long"), report);
    String csv = Files.readString(folder.resolve("cut-tickets.csv"));
    assertTrue(csv.contains(",\"folded, headings one way\",4\n"), csv);
    Path marker = folder.resolve("felt-1.marker.json");
    JsonNode zones = JSON.readTree(marker.toFile()).get("zones");
    assertEquals(1, zones.size(), "folded from end to end");
    assertEquals(2, zones.get(0).get("plies").asInt());
    assertEquals(400, JSON.readTree(ran.out()).get("lays").get(0).get("length").asDouble(), 0.1);
    assertEquals(0, run("check", marker, "--job", folded).code());
    Files.writeString(
        folded, Files.readString(folded).replace("[10, 40], [0, 35]", "[10, 60], [0, 55]"));
    Ran wide = run("order", folded, "--effort", "50steps", "--out", folder);
    assertEquals(2, wide.code());
    assertTrue(wide.err().contains("badge"), wide.err());
    // Folded, 60 cm have room on cloth of twice that width.
    assertTrue(
        wide.err()
            .contains(
                "it lies 60.0 cm across, but cloth felt has only 50.0 cm for it. Lay the cloth"
                    + " open, use cloth at least 120.0 cm wide, or split the piece with a join"),
        wide.err());
  }

  private static String words(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(document);
    }
  }
}
