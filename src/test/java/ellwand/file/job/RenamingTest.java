package ellwand.file.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.file.source.Folder;
import ellwand.job.Job;
import ellwand.pattern.Edge;
import ellwand.pattern.Outlined;
import ellwand.pattern.Piece;
import ellwand.problem.InputException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RenamingTest {

  private static final String BAG =
      """
      ellwand: 1
      unit: cm
      style:
        name: bag
        size: one
        allowance: 1
        seams:
          - [body.side, 2 x gusset.q to point 3]     # sewn last
          - {join: [body.a to point 2, gusset.short], ease: 3}
        pieces:
          body:
            cut: {canvas: 2}
            outline: [{point: a, at: [0, 0]}, [0, 30], [20, 30], {point: d, at: [20, 0]}]
            edges:
              side: {from: d, to: a}
            notches: [{edge: side, at: 5}, {edge: a to point 2, at: 4}]
          gusset:
            cut: {canvas: 1}
            outline: [{point: p, at: [0, 0]}, {point: q, at: [0, 10]}, [20, 10], [20, 0]]
            edges:
              short: {from: p, to: q}
          front pocket:
            from: body
            cut: {canvas: 1}
            alter:
              - {mark: low, on: side, at: 1/2}
              - {lengthen: 2, at: low}
      cloths:
        canvas: {width: 90}
      order: {garments: {one: 1}}
      """;

  private static Job read(String text) {
    return JobReader.read(
        "job.yaml", Folder.EMPTY.with("job.yaml", text.getBytes(StandardCharsets.UTF_8)));
  }

  private static String sample(String name) throws IOException {
    return Files.readString(Path.of("sample-markers", name, "job.yaml"));
  }

  /**
   * Whatever is renamed, the pieces stay what they were; some names are no one's to give.
   *
   * @param each which names are tried, since reading a style in many sizes takes a while
   */
  @ParameterizedTest
  @CsvSource({"weir-jacket, 3", "garth-waistcoat, 12", "holme-shirt, 9", "tarn-waistcoat, 1"})
  void namesOfASample(String sample, int each) throws IOException {
    String text = sample(sample);
    Job job = read(text);
    String size = job.style().sizes().get(0);
    List<String> done = new ArrayList<>();
    int i = 0;
    for (Piece piece : job.style().pieces(size)) {
      String renamed = Renaming.piece(text, piece.name(), "another name");
      Renaming.check(job.style(), read(renamed).style());
      done.add(piece.name());
      for (Edge edge : piece.edges()) {
        if (i++ % each == 0) {
          edge(job, text, piece.name(), edge.name(), done);
        }
      }
    }
    for (Outlined piece : job.style().design().outlined()) {
      for (String mark : job.style().design().making(size).piece(piece.name()).marks().keySet()) {
        if (i++ % each == 0) {
          point(job, text, piece.name(), mark, done);
        }
      }
    }
    assertTrue(done.size() > 1, done.toString());
  }

  private static void edge(Job job, String text, String piece, String edge, List<String> done) {
    String renamed;
    try {
      renamed = Renaming.edge(text, piece, edge, "another edge");
    } catch (InputException e) {
      assertTrue(e.getMessage().contains("has its name from"), e.getMessage());
      return;
    }
    Job after = read(renamed);
    Renaming.check(job.style(), after.style());
    Piece now =
        after.style().pieces(job.style().sizes().get(0)).stream()
            .filter(p -> p.name().equals(piece))
            .findFirst()
            .orElseThrow();
    assertTrue(now.edges().stream().anyMatch(e -> e.name().equals("another edge")), piece + edge);
    done.add(piece + "." + edge);
  }

  private static void point(Job job, String text, String piece, String point, List<String> done) {
    String renamed;
    try {
      renamed = Renaming.point(text, piece, point, "another point");
    } catch (InputException e) {
      assertTrue(e.getMessage().contains("has its name from"), e.getMessage());
      return;
    }
    Renaming.check(job.style(), read(renamed).style());
    done.add(piece + "@" + point);
  }

  @Test
  void aPieceIsRenamedWhereverItStands() {
    String next = Renaming.piece(BAG, "gusset", "strip");
    assertEquals(BAG.replace("gusset.", "strip.").replace("    gusset:", "    strip:"), next);
    assertTrue(next.contains("# sewn last"));
  }

  @Test
  void anEdgeIsRenamedInCopiesToo() {
    String next = Renaming.edge(BAG, "front pocket", "side", "left side");
    read(next);
    assertTrue(next.contains("left side: {from: d, to: a}"), next);
    assertTrue(next.contains("on: left side"), next);
    assertTrue(next.contains("[body.left side, 2 x gusset.q to point 3]"), next);
  }

  @Test
  void whatIsCalledAfterItsEndsGetsANameOfItsOwn() {
    String next = Renaming.edge(BAG, "body", "point 2 to point 3", "base");
    assertTrue(next.contains("base: {from: point 2, to: point 3}"), next);
    assertTrue(next.contains("{point: point 2, at: [0, 30]}"), next);
    Renaming.check(read(BAG).style(), read(next).style());
    next = Renaming.edge(BAG, "body", "a to point 2", "base");
    Renaming.check(read(BAG).style(), read(next).style());
    assertTrue(next.contains("{join: [body.base, gusset.short]"), next);
    assertTrue(next.contains("{edge: base, at: 4}"), next);
  }

  @Test
  void aPointTakesTheNamesOfEdgesAlong() {
    String next = Renaming.point(BAG, "body", "a", "corner");
    assertTrue(next.contains("{from: d, to: corner}"), next);
    assertTrue(next.contains("{edge: corner to point 2, at: 4}"), next);
    assertTrue(next.contains("{point: corner, at: [0, 0]}"), next);
  }

  @Test
  void aNameThatIsTakenIsRefused() {
    assertThrows(InputException.class, () -> Renaming.piece(BAG, "gusset", "body"));
  }

  @Test
  void aChangeOfShapeIsNoRenaming() {
    Job other = read(BAG.replace("[20, 30]", "[21, 30]"));
    InputException e =
        assertThrows(InputException.class, () -> Renaming.check(read(BAG).style(), other.style()));
    assertTrue(e.getMessage().contains("more than one thing"), e.getMessage());
  }
}
