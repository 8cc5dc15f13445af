package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.StreamSupport;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Orders of a style, each cloth planned with its markers. */
class OrderOfStyleTest {

  @TempDir private Path folder;

  @Test
  void makesTheMarkersOfAStyleAndReportsThem() throws IOException {
    Path tunic = Path.of("sample-markers/beck-tunic/order.yaml");
    Path out = folder.resolve("out");
    Ran ran = Ran.of("order", tunic, "--effort", "400steps", "--threads", 1, "--out", out);
    assertEquals(0, ran.code(), ran.err());
    JsonNode plan = Ran.JSON.readTree(out.resolve("order.json").toFile());
    assertEquals(30, plan.get("cut").get("ochre").get("104").asInt(), 1);
    for (JsonNode lay : plan.get("lays")) {
      assertTrue(lay.get("length").asDouble() + 40 <= 2400.001, "fits the table");
      Path marker = out.resolve(lay.get("marker").asText());
      Ran check = Ran.of("check", marker);
      assertEquals(0, check.code(), check.out() + check.err());
      JsonNode file = Ran.JSON.readTree(marker.toFile());
      assertEquals(file.get("clothLength").asDouble(), lay.get("length").asDouble(), 1e-5);
      assertEquals(lay.get("garments"), file.get("job").get("garments"));
    }
    double ofLays = 0;
    double cost = 0;
    double cut = 0;
    for (JsonNode lay : plan.get("lays")) {
      boolean lining = lay.get("cloth").asText().equals("lining");
      double mm = Ran.sum(lay.get("plies")) * (lay.get("length").asDouble() + (lining ? 20 : 40));
      ofLays += mm;
      // 25 min at 0.40 for each lay; cloth at 9.80 a metre, lining at 4.20.
      cost += 10;
      cut += mm / 1000 * (lining ? 4.2 : 9.8);
    }
    double ofColours = 0;
    for (JsonNode colour : plan.get("cloth")) {
      ofColours += colour.asDouble();
    }
    assertEquals(ofLays, ofColours, 1e-3);
    assertEquals(cut, plan.get("clothCostAsCut").asDouble(), 1e-3);
    // What is paid is for cloth as bought, and the shopping list asks for the same money.
    double bought = 0;
    for (JsonNode of : plan.get("cloths")) {
      bought +=
          Ran.sum(of.get("toBuy"))
              / 1000.0
              * (of.get("name").asText().equals("lining") ? 4.2 : 9.8);
    }
    assertTrue(bought >= cut);
    assertEquals(bought, plan.get("clothCost").asDouble(), 1e-3);
    assertEquals(cost + bought, plan.get("cost").asDouble(), 1e-3);
    double listed = 0;
    for (JsonNode item : plan.get("buy")) {
      listed += item.get("what").asText().equals("cloth") ? item.get("cost").asDouble() : 0;
    }
    assertEquals(bought, listed, 1e-3);
    assertTrue(
        plan.get("cloths").get(1).get("cut").has("sand"), "ochre and moss are lined in sand");
    assertTrue(ran.out().contains("Estimated marker lengths were"), ran.out());
    assertTrue(ran.out().contains("One size a lay would take"), ran.out());
    List<String> csv = Files.readAllLines(out.resolve("cut-tickets.csv"));
    int ticketed =
        csv.stream()
            .map(line -> line.split(","))
            .filter(cells -> cells[1].equals("main"))
            .mapToInt(cells -> Integer.parseInt(cells[7]))
            .sum();
    int planned = 0;
    for (JsonNode colour : plan.get("cut")) {
      planned += Ran.sum(colour);
    }
    assertEquals(planned, ticketed);
    assertTrue(Ran.words(out.resolve("order.pdf")).contains("Lay 1"));
    assertTrue(Ran.words(out.resolve("bundle-labels.pdf")).contains("plies 1 to"));
  }

  @Test
  void everyClothOfTheStyleIsPlannedForTheGarmentsOfTheFirst() throws IOException {
    Path job =
        Bibs.job(
            folder,
            "  tolerance: {over: 1}\n  cloths: {lawn: {colour: white, max-plies: 20, end-loss: 1,"
                + " cost: {cloth: 2 per m}}}\n");
    Ran ran = Bibs.order(folder, job);
    assertEquals(0, ran.code(), ran.err());
    JsonNode plan = ran.json();
    assertEquals("[\"felt\",\"lawn\"]", names(plan.get("cloths")).toString());
    int felt = 0;
    double lawnMm = 0;
    for (JsonNode lay : plan.get("lays")) {
      boolean lawn = lay.get("cloth").asText().equals("lawn");
      assertTrue(Ran.sum(lay.get("plies")) <= (lawn ? 20 : 8));
      felt += lawn ? 0 : Ran.sum(lay.get("plies")) * lay.get("garments").get("M").asInt();
      lawnMm += lawn ? Ran.sum(lay.get("plies")) * (lay.get("length").asDouble() + 10) : 0;
      assertEquals(0, Ran.of("check", folder.resolve(lay.get("marker").asText())).code());
    }
    JsonNode lawn = plan.get("cloths").get(1);
    int cut = lawn.get("cut").get("white").get("M").asInt();
    assertTrue(felt >= 7 && cut >= felt && cut <= felt + 1, ran.out());
    assertEquals(felt, Ran.sum(plan.get("cut").get("red")) + Ran.sum(plan.get("cut").get("blue")));
    assertEquals(lawnMm, lawn.get("cloth").get("white").asDouble(), 1e-3);
    assertEquals(lawnMm / 1000 * 2, lawn.get("clothCostAsCut").asDouble(), 1e-6);
    // Sold by steps of 10 cm.
    assertEquals(Math.ceil(lawnMm / 100 - 1e-4) / 10 * 2, lawn.get("cost").asDouble(), 1e-6);
    assertEquals(
        plan.get("cost").asDouble(),
        plan.get("cloths").get(0).get("cost").asDouble() + lawn.get("cost").asDouble(),
        1e-6);
    String report = Ran.words(folder.resolve("order.pdf"));
    assertTrue(report.contains("Markers of lawn"), report);
    assertTrue(report.contains("of which end loss"), report);
    assertTrue(report.contains("Take care"), report);
    assertTrue(report.replaceAll("\\s+", " ").contains("Cost per garment"), report);
    assertTrue(Ran.words(folder.resolve("bundle-labels.pdf")).contains("lawn, white"));
    List<String> csv = Files.readAllLines(folder.resolve("cut-tickets.csv"));
    assertTrue(csv.stream().anyMatch(line -> line.contains(",lawn,lawn-1,white,")), csv.toString());
  }

  private static JsonNode names(JsonNode cloths) {
    return Ran.JSON.valueToTree(
        StreamSupport.stream(cloths.spliterator(), false).map(c -> c.get("name")).toList());
  }

  @Test
  void clothPlansJustOne() throws IOException {
    Ran ran = Bibs.order(folder, Bibs.job(folder, "  cloth: lawn\n"));
    assertEquals(0, ran.code(), ran.err());
    JsonNode plan = ran.json();
    assertFalse(plan.has("cloths"), ran.out());
    plan.get("lays").forEach(lay -> assertEquals("lawn", lay.get("cloth").asText()));
  }

  @Test
  void aTicketIsNeverSplitOverTwoPages() throws IOException {
    Path job = Bibs.job(folder, "  tolerance: {over: 1}\n");
    assertEquals(0, Bibs.order(folder, job).code());
    try (PDDocument report = Loader.loadPDF(folder.resolve("order.pdf").toFile())) {
      PDFTextStripper stripper = new PDFTextStripper();
      int tickets = 0;
      for (int page = 1; page <= report.getNumberOfPages(); page++) {
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        List<String> lines = stripper.getText(report).lines().toList();
        long heads = lines.stream().filter(line -> line.matches("Lay \\d+.*")).count();
        long spread = lines.stream().filter(line -> line.contains("Spread ")).count();
        assertEquals(heads, spread, "page " + page + ": " + lines);
        tickets += (int) heads;
      }
      assertTrue(report.getNumberOfPages() > 1 && tickets > 2, tickets + " tickets");
    }
  }

  @Test
  void aTableIsRefusedForTheMarkerThatWasMadeNotForAnEstimate() throws IOException {
    // Estimated at 75 % of its cloth, 66.7 cm; the plain rectangle fills its cloth, 50 cm.
    String mat =
        """
        ellwand: 1
        unit: cm
        style: {name: Mat, size: M, allowance: 0, pieces: {mat: {cut: {felt: 1}, outline: \
        [[0, 0], [50, 0], [50, 100], [0, 100]]}}}
        cloths: {felt: {width: 100, fold: open}}
        order: {colours: {red: {M: 4}}, max-plies: 10, max-garments: 2, table: 55, end-loss: 2}
        """;
    Path job = Files.writeString(folder.resolve("mat.yaml"), mat);
    Ran ran = Bibs.order(folder, job);
    assertEquals(0, ran.code(), ran.err());
    assertEquals(500, ran.json().get("lays").get(0).get("length").asDouble(), 0.1);
    Files.writeString(job, mat.replace("table: 55", "table: 51"));
    Ran refused = Bibs.order(folder, job);
    assertEquals(2, refused.code());
    assertTrue(
        refused
            .err()
            .contains(
                "cloth felt: the marker of 1 x M is 52.0 cm long with its end loss, but the table"
                    + " only 51.0 cm. Use a longer table"),
        refused.err());
  }

  @Test
  void theWidthThatIsAskedForIsEnoughForAllSizes() throws IOException {
    String mat =
        """
        ellwand: 1
        unit: cm
        sizes: {names: [S, M, L], grade: {mat: {right: [0, 8], left: [0, 8]}}}
        style: {name: Mat, size: S, allowance: 0, pieces: {mat: {cut: {felt: 1}, outline: \
        [{point: start, at: [0, 0]}, {point: end, at: [50, 0]}, {point: right, at: [50, 60]}, \
        {point: left, at: [0, 60]}]}}}
        cloths: {felt: {width: 65, fold: open, direction: one way}}
        order: {colours: {red: {S: 2, M: 2, L: 2}}, max-plies: 10, max-garments: 2}
        """;
    Path job = Files.writeString(folder.resolve("mat.yaml"), mat);
    Ran refused = Bibs.order(folder, job);
    assertEquals(2, refused.code());
    assertTrue(refused.err().contains("Use cloth at least 76.0 cm wide, or split"), refused.err());
    Files.writeString(job, mat.replace("width: 65", "width: 76"));
    assertEquals(0, Bibs.order(folder, job).code());
  }
}
