package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.cli.JoinedPages.Laid;
import java.awt.geom.Line2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Markers printed full size, from their files. */
class PrintedMarkerTest {

  private static final Path JOB = Path.of("src/test/resources/ellwand/cli/bib.yaml");

  @TempDir private Path folder;

  @Test
  void everyCopyIsWhereItsFileSaysOnTheJoinedPages() throws IOException {
    Path json = marker();
    Path out = folder.resolve("marker.pdf");
    Ran ran = Ran.of("print", json, "--paper", "A4", "--out", out);
    assertEquals(0, ran.code(), ran.err());
    List<Laid> pages = JoinedPages.read(out, 210, 297, 10);
    List<Line2D> cut = JoinedPages.lines(pages, 0.5);
    JsonNode copies = Ran.JSON.readTree(json.toFile()).get("copies");
    double[] shift = shift(copies, cut);
    for (JsonNode copy : copies) {
      if (copy.get("form").asText().equals("half")) {
        // Along the fold nothing is cut.
        continue;
      }
      List<double[]> ring = ring(copy, shift);
      for (int i = 0; i < ring.size(); i++) {
        double[] a = ring.get(i);
        double[] b = ring.get((i + 1) % ring.size());
        for (double t = 0; t < 1; t += 0.05) {
          double x = a[0] + (b[0] - a[0]) * t;
          double y = a[1] + (b[1] - a[1]) * t;
          boolean printed = false;
          for (Laid page : pages) {
            if (JoinedPages.inside(page.printed(), x, y)) {
              printed = true;
              List<Line2D> here = JoinedPages.lines(List.of(page), 0.5);
              assertTrue(JoinedPages.nearest(here, x, y) < 0.05, copy.get("piece") + page.name());
            }
          }
          assertTrue(printed, copy.get("piece").asText());
        }
      }
    }
  }

  @Test
  void aMarkerThatBreaksARuleIsNotPrinted() throws IOException {
    Path json = marker();
    ObjectNode root = (ObjectNode) Ran.JSON.readTree(json.toFile());
    root.put("length", root.get("length").asDouble() - 50);
    Path broken = folder.resolve("broken.marker.json");
    Files.writeString(broken, root.toString());
    for (String name : List.of("no.pdf", "no.hpgl")) {
      Ran ran = Ran.of("print", broken, "--out", folder.resolve(name));
      assertEquals(1, ran.code(), ran.err());
      assertTrue(ran.err().contains("Nothing was printed."), ran.err());
      assertFalse(Files.exists(folder.resolve(name)));
    }
  }

  @Test
  void aMarkerFromItsFileIsPlottedAsItWasWhenItWasMade() throws IOException {
    Path json = marker();
    Path out = folder.resolve("again.hpgl");
    assertEquals(0, Ran.of("print", json, "--out", out).code());
    assertEquals(Files.readString(json.resolveSibling("main.plot.hpgl")), Files.readString(out));
  }

  @Test
  void refusals() throws IOException {
    refused("there is no such file", folder.resolve("none.marker.json"));
    refused("with its words, and of a roll 30cm wide 28.0 cm", marker(), "--paper", "roll:30cm");
    refused("a marker.json holds no pieces", marker(), "--of", "pieces");
    refused("go with pieces, not with a marker", marker(), "--lines", "sewing");
    refused("'dwg' is no kind of file for a plotter", marker(), "--out", "x.dwg");
    refused("--paper goes with a .pdf file", marker(), "--paper", "A4", "--out", "x.dxf");
    refused(
        "a marker for each of its 2 cloths",
        JOB,
        "--of",
        "marker",
        "--effort",
        "20steps",
        "--out",
        "x.dxf");
    refused("must end with .pdf", JOB, "--out", "x.dxf");
  }

  /** Open it takes less cloth, and folded it is 45 cm wide where open it is 90. */
  @Test
  void onANarrowRollClothLiesOnlyAsHasRoom() throws IOException {
    Path both = folder.resolve("both.yaml");
    String bib = Files.readString(JOB);
    Files.writeString(
        both,
        bib.replace("fold: lengthwise fold", "fold: [open, lengthwise fold]")
            .replace("width: 70", "width: 40"));
    Path out = folder.resolve("narrow.pdf");
    Object[] print = {"print", both, "--of", "marker", "--effort", "20steps", "--out", out};
    Ran narrow = Ran.of(with(print, "--paper", "roll:60cm"));
    assertEquals(0, narrow.code(), narrow.err());
    assertTrue(
        narrow
            .err()
            .contains("Cloth main is not laid open, for which a roll 60cm wide is too narrow."),
        narrow.err());
    assertTrue(Files.exists(out));
    Ran wide = Ran.of(with(print, "--paper", "roll:110cm"));
    assertEquals(0, wide.code(), wide.err());
    assertFalse(wide.err().contains("is not laid"), wide.err());
  }

  /**
   * Folded over by 10 cm the cloth has room for back and side abreast, and is 138 cm wide; folded
   * over by 30 cm it is 118 cm wide, and opened 148.
   */
  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void onANarrowRollAPartFoldIsDeepEnough(int seeds) throws IOException {
    Path panels = folder.resolve("panels.yaml");
    Files.writeString(
        panels,
        """
        ellwand: 1
        unit: cm
        style:
          name: panels
          allowance: 0
          pieces:
            long:
              cut: {main: 1 on fold}
              fold: centre
              outline: [{point: a, at: [0, 0]}, [0, 10], [100, 10], {point: b, at: [100, 0]}]
              edges: {centre: {from: b, to: a}}
            wide:
              cut: {main: 1 on fold}
              fold: centre
              outline: [{point: a, at: [0, 0]}, [0, 30], [10, 30], {point: b, at: [10, 0]}]
              edges: {centre: {from: b, to: a}}
            back: {cut: {main: 1}, outline: [[0, 0], [0, 80], [100, 80], [100, 0]]}
            side: {cut: {main: 1}, outline: [[0, 0], [0, 45], [100, 45], [100, 0]]}
        cloths: {main: {width: 150, selvedge: 1, fold: part fold}}
        """);
    Path out = folder.resolve("panels.pdf");
    Object[] print = {
      "print", panels, "--of", "marker", "--effort", "50steps", "--seeds", seeds, "--out", out
    };
    Ran narrow = Ran.of(with(print, "--paper", "roll:130cm"));
    assertEquals(0, narrow.code(), narrow.err());
    assertTrue(
        narrow
            .err()
            .contains("Cloth main is folded to 126.8 cm or narrower, for which a roll 130cm"),
        narrow.err());
    assertTrue(Files.exists(out));
    Ran wide = Ran.of(with(print, "--paper", "roll:160cm"));
    assertEquals(0, wide.code(), wide.err());
    assertFalse(wide.err().contains("narrower"), wide.err());
  }

  private static Object[] with(Object[] args, Object... more) {
    return Stream.of(args, more).flatMap(Stream::of).toArray();
  }

  private void refused(String message, Object... args) {
    List<Object> all = new ArrayList<>(List.of("print"));
    all.addAll(List.of(args));
    if (!all.contains("--out")) {
      all.addAll(List.of("--out", folder.resolve("no.pdf")));
    }
    Ran ran = Ran.of(all.toArray());
    assertEquals(2, ran.code(), message + ran.err());
    assertTrue(ran.err().contains(message), ran.err());
    assertFalse(Files.exists(folder.resolve("no.pdf")));
  }

  private Path marker() throws IOException {
    Path out = folder.resolve("laid");
    Ran ran = Ran.of("lay", JOB, "--also", "hpgl", "--effort", "20steps", "--out", out);
    assertEquals(0, ran.code(), ran.err());
    return out.resolve("main.marker.json");
  }

  /** Where the marker's frame lies on the pages: at which a whole copy finds all of its corners. */
  private static double[] shift(JsonNode copies, List<Line2D> cut) {
    for (JsonNode copy : copies) {
      if (!copy.get("form").asText().equals("half")) {
        List<double[]> ring = ring(copy, new double[2]);
        for (Line2D line : cut) {
          double[] shift = {line.getX1() - ring.get(0)[0], line.getY1() - ring.get(0)[1]};
          if (ring(copy, shift).stream()
              .allMatch(p -> JoinedPages.nearest(cut, p[0], p[1]) < 0.05)) {
            return shift;
          }
        }
      }
    }
    throw new AssertionError("no copy is printed");
  }

  private static List<double[]> ring(JsonNode copy, double[] shift) {
    List<double[]> ring = new ArrayList<>();
    for (JsonNode p : copy.get("outline")) {
      ring.add(new double[] {p.get(0).asDouble() + shift[0], p.get(1).asDouble() + shift[1]});
    }
    return ring;
  }
}
