package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Widths compared as a user does it. */
class CompareCommandTest {

  private static final ObjectMapper JSON = new ObjectMapper();

  /** A panel 100 cm wide does not lie on cloth of 90 cm. */
  private static final String CURTAIN =
      """
      ellwand: 1
      unit: cm
      style:
        name: curtain
        size: "1"
        allowance: 0
        pieces:
          panel: {cut: {main: 1}, outline: [[0, 0], [50, 0], [50, 100], [0, 100]]}
          tie: {cut: {main: 4}, outline: [[0, 0], [40, 0], [40, 5], [0, 5]]}
      cloths:
        main:
          width: 140
          fold: open
          shop-step: 10
          price: GBP 12 per m
          prices:
            - {width: 115, price: GBP 9 per m}
            - {width: 140, price: GBP 12 per m}
      order: {garments: 2}
      """;

  @TempDir private Path folder;
  private Path job;
  private Path out;

  @BeforeEach
  void curtain() throws IOException {
    job = Files.writeString(folder.resolve("curtain.yaml"), CURTAIN);
    out = folder.resolve("out");
  }

  private Ran compare(String... more) {
    List<String> args = new ArrayList<>(List.of("compare", job.toString()));
    args.addAll(List.of("--effort", "200steps", "--out", out.toString()));
    args.addAll(List.of(more).contains("--threads") ? List.of() : List.of("--threads", "2"));
    args.addAll(List.of(more));
    return Ran.of(args.toArray());
  }

  private static Set<String> keys(JsonNode node) {
    Set<String> names = new TreeSet<>();
    node.fieldNames().forEachRemaining(names::add);
    return names;
  }

  @Test
  void saysWhatToBuyOfWhichWidthAndWhatAGarmentCosts() throws IOException {
    Ran ran = compare();
    assertEquals(0, ran.code(), ran.err());
    // Of 115 cm 15 are left beside the panels, for three ties abreast: eight take 3 x 40 cm. Of
    // 140 cm 40 are left, where eight lie abreast.
    assertTrue(ran.out().contains("10.80 GBP  5.40 GBP"), ran.out());
    assertTrue(ran.out().contains("width     laid  cloth length  to buy"), ran.out());
    assertTrue(
        ran.out()
            .contains("Buy 1.20 m of the 115.0 cm cloth; the 140.0 cm cloth costs 1.20 GBP more."),
        ran.out());
    assertEquals(ran.out(), Files.readString(out.resolve("compare.txt")));
    assertTrue(Files.readString(out.resolve("compare.svg")).contains("115.0 cm wide"));
  }

  @Test
  void waysOfLayingThatTakeNoMoreAreNamed() throws IOException {
    // Two panels of 100 cm and eight ties: open or folded lengthwise, where a panel is opened.
    Files.writeString(
        job, CURTAIN.replace("fold: open", "fold: [open, lengthwise fold, crosswise fold]"));
    String out = compare("--widths", "115cm").out();
    assertTrue(out.contains(" of the 115.0 cm cloth, "), out);
    JsonNode rows = JSON.readTree(this.out.resolve("compare.json").toFile());
    double least = Double.POSITIVE_INFINITY;
    for (JsonNode row : rows) {
      least = Math.min(least, row.get("toBuy").asDouble());
    }
    String sentence = out.substring(out.indexOf("Buy "), out.indexOf(".\n", out.indexOf("Buy ")));
    int named = 0;
    for (JsonNode row : rows) {
      String fold = row.get("fold").asText();
      boolean asGood = row.get("toBuy").asDouble() == least;
      assertTrue(
          sentence.endsWith("however it is laid") || sentence.contains(fold) == asGood, sentence);
      named += asGood ? 1 : 0;
    }
    assertEquals(named == rows.size(), sentence.endsWith("however it is laid"), sentence);
  }

  @Test
  void wishesAreLeftAsideAndItSaysSo() throws IOException {
    String without = compare("--threads", "1").out();
    Files.writeString(
        job, CURTAIN.replace("fold: open", "fold: open\n    wishes: [straight cuts]"));
    String with = compare("--threads", "1").out();
    assertTrue(with.startsWith(without.stripTrailing()), with);
    String more = with.substring(without.length());
    assertTrue(more.startsWith("The cutter's wishes are left aside"), more);
  }

  @Test
  void jsonAloneIsPrintedAndIsWhatIsWritten() throws IOException {
    Ran ran = compare("--widths", "115cm,140cm", "--json");
    assertEquals(0, ran.code(), ran.err());
    JsonNode rows = JSON.readTree(ran.out());
    assertEquals(rows, JSON.readTree(out.resolve("compare.json").toFile()));
    assertEquals(2, rows.size());
    for (JsonNode row : rows) {
      assertEquals(
          Set.of(
              "width", "fold", "length", "clothLength", "toBuy", "utilisation", "cost", "reason"),
          keys(row));
      double area = 2 * (50 * 100 + 4 * 40 * 5) * 100;
      assertEquals(
          area / (row.get("width").asDouble() * row.get("clothLength").asDouble()),
          row.get("utilisation").asDouble(),
          1e-5);
      assertTrue(row.get("reason").isNull());
    }
    assertEquals(1.2 * 9, rows.get(0).get("cost").asDouble(), 1e-9);
  }

  @Test
  void aWidthTooNarrowForAPieceSaysWhyAndTheOthersAreCompared() throws IOException {
    Ran ran = compare("--widths", "90cm,115cm", "--json");
    assertEquals(0, ran.code(), ran.err());
    JsonNode rows = JSON.readTree(ran.out());
    assertEquals(
        "panel lies 100.0 cm across and the widest part of the cloth has 90.0 cm",
        rows.get(0).get("reason").asText());
    assertEquals(1200, rows.get(1).get("toBuy").asDouble(), 1e-9);
    assertTrue(
        Files.readString(out.resolve("compare.txt"))
            .contains("90.0 cm   open  not possible, panel"));
  }

  @Test
  void noWidthWillDo() throws IOException {
    Ran ran = compare("--widths", "60cm,90cm");
    assertEquals(1, ran.code(), ran.err());
    assertTrue(ran.out().contains("No width will do."), ran.out());
  }

  @Test
  void lengthsAreShownInTheUnitAskedFor() {
    Ran ran = compare("--widths", "45in,54in", "--units", "in");
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.out().contains("45 in"), ran.out());
    assertFalse(ran.out().contains(" cm"), ran.out());
  }

  @Test
  void aWidthGivenTwiceIsComparedOnce() throws IOException {
    assertEquals(1, JSON.readTree(compare("--widths", "115cm,1.15m", "--json").out()).size());
  }

  @Test
  void widthsThatAreNoneAreRefusedAndNothingIsWritten() {
    for (String widths : List.of("wide", "-3cm", "0", "115cm,1 ell", "1e99cm")) {
      Ran ran = compare("--widths", widths);
      assertEquals(2, ran.code(), widths + ": " + ran.err());
      assertTrue(ran.err().contains("--widths"), ran.err());
      assertEquals("", ran.out());
      assertFalse(Files.exists(out), widths);
    }
  }

  @Test
  void anUnknownClothIsRefusedWithThoseThereAre() {
    Ran ran = compare("--cloth", "mian");
    assertEquals(2, ran.code());
    assertTrue(ran.err().contains("the job has no cloth mian"), ran.err());
    assertFalse(Files.exists(out));
  }
}
