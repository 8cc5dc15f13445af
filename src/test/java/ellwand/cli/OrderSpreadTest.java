package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ways of spreading an order, as a user asks for them. */
class OrderSpreadTest {

  @TempDir private Path folder;

  @Test
  void twoPliesOfHalfSetsMakeTheGarmentsOfOneWholeMarker() throws IOException {
    Ran ran =
        Bibs.order(
            folder,
            Bibs.job(folder, "  cloth: felt\n  spread: {faces: face to face, half-sets: true}\n"));
    assertEquals(0, ran.code(), ran.err());
    JsonNode plan = ran.json();
    assertEquals(4, plan.get("cut").get("red").get("M").asInt());
    assertEquals(3, plan.get("cut").get("blue").get("M").asInt());
    double cloth = 0;
    for (JsonNode lay : plan.get("lays")) {
      lay.get("plies").forEach(plies -> assertEquals(0, plies.asInt() % 2, ran.out()));
      cloth += Ran.sum(lay.get("plies")) * lay.get("length").asDouble();
      Path marker = folder.resolve(lay.get("marker").asText());
      Ran check = Ran.of("check", marker);
      assertEquals(0, check.code(), check.out() + check.err());
      JsonNode file = Ran.JSON.readTree(marker.toFile());
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
      assertEquals(1, Ran.of("check", broken, "--job", folder.resolve("bibs.yaml")).code());
    }
    double ofColours = 0;
    for (JsonNode colour : plan.get("cloth")) {
      ofColours += colour.asDouble();
    }
    assertEquals(cloth, ofColours, 1e-3);
  }

  @Test
  void wholeSetsFaceToFaceTellWhatComesOutMirrored() throws IOException {
    Path job =
        Bibs.job(
            folder, "  tolerance: {over: 1}\n  cloth: felt\n  spread: {faces: face to face}\n");
    Ran ran = Ran.of("order", job, "--effort", "60steps", "--threads", 1, "--out", folder);
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.out().contains("on the other side: flap."), ran.out());
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
        Ran.of("order", folded, "--json", "--effort", "50steps", "--threads", 1, "--out", folder);
    assertEquals(0, ran.code(), ran.err());
    JsonNode lay = ran.json().get("lays").get(0);
    assertEquals(0, lay.get("plies").get("red").asInt() % 2, "folded plies count two");
    Files.writeString(folded, order.replace("max-plies", "spread: {faces: all up}, max-plies"));
    Ran open = Ran.of("order", folded, "--out", folder);
    assertEquals(2, open.code());
    assertTrue(open.err().contains("needs open among the ways the cloth may lie"), open.err());
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
        Ran.of("order", folded, "--json", "--effort", "50steps", "--threads", 1, "--out", folder);
    assertEquals(0, ran.code(), ran.err());
    String report = Ran.words(folder.resolve("order.pdf")).replaceAll("\\s+", " ");
    assertTrue(report.contains("Spread 4 folded lengths (8 plies), each 40.0 cm long"), report);
    String csv = Files.readString(folder.resolve("cut-tickets.csv"));
    assertTrue(csv.contains(",\"folded, headings one way\",4\n"), csv);
    Path marker = folder.resolve("felt-1.marker.json");
    JsonNode zones = Ran.JSON.readTree(marker.toFile()).get("zones");
    assertEquals(1, zones.size(), "folded from end to end");
    assertEquals(2, zones.get(0).get("plies").asInt());
    assertEquals(400, ran.json().get("lays").get(0).get("length").asDouble(), 0.1);
    assertEquals(0, Ran.of("check", marker, "--job", folded).code());
    Files.writeString(
        folded, Files.readString(folded).replace("[10, 40], [0, 35]", "[10, 60], [0, 55]"));
    Ran wide = Ran.of("order", folded, "--effort", "50steps", "--out", folder);
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

  /** Cloth for it comes from all along the roll, so that a flaw lies in one ply at the most. */
  @ParameterizedTest
  @CsvSource({"all up", "face to face", "folded"})
  void aFlawIsCutOutBeforeSpreadingAndBarsNoPly(String faces) throws IOException {
    Path job = folder.resolve("mats.yaml");
    String text =
        """
        ellwand: 1
        unit: cm
        style: {name: Mat, size: M, allowance: 0, pieces: {mat: {cut: {felt: pair}, outline: \
        [[0, 0], [30, 0], [30, 50], [0, 50]]}}}
        cloths: {felt: {width: 100, fold: [open, lengthwise fold], \
        flaws: [{name: moth hole, at: [10, 20], radius: 3}]}}
        order: {colours: {red: {M: 8}}, max-plies: 10, max-garments: 2, spread: {faces: %s}}
        """;
    Files.writeString(job, text.formatted(faces));
    Ran ran = Bibs.order(folder, job);
    assertEquals(0, ran.code(), ran.err());
    // Two mats abreast leave nothing beside them: with the hole there they would take 3 cm more.
    double length = ran.json().get("lays").get(0).get("length").asDouble();
    assertEquals(0, length % 300, 0.1, ran.out());
    assertEquals(0, Ran.of("check", folder.resolve("felt-1.marker.json"), "--job", job).code());
    String report = Ran.words(folder.resolve("order.pdf")).replaceAll("\\s+", " ");
    assertTrue(report.contains("felt has flaws (moth hole)"), report);
    assertTrue(report.contains("have 6.0 cm of cloth more"), report);
  }
}
