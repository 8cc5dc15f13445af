package ellwand.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TrialTest {

  private static final Outline WEDGE =
      Outline.of(List.of(new Point(0, 0), new Point(6, 0), new Point(4, 3), new Point(0, 3)));

  /** Two wedges make a bar of 10 by 3; four of them fill a length of 10 on a strip 6 wide. */
  private static final Instance WEDGES =
      new Instance("wedges", 6, List.of(new Instance.Item(WEDGE, 4, List.of(0.0, 180.0))));

  private static Result result() {
    return Trial.run(WEDGES, Request.of(Effort.ofSteps(500), new Seed(1)));
  }

  @Test
  void anExactFitIsFoundAndIsLegal() {
    Result result = result();
    assertEquals(List.of(), Judge.faults(WEDGES, result.placed()));
    assertEquals(1, result.density(), 1e-5);
    assertTrue(result.moves() > 0);
  }

  @Test
  void theJudgeSeesOverlapsStrayingAndMissingCopies() {
    List<PlacedItem> placed = new ArrayList<>(result().placed());
    PlacedItem first = placed.get(0);
    placed.set(0, moved(first, 0.01, 0.01));
    assertTrue(!Judge.faults(WEDGES, placed).isEmpty());
    placed.set(0, moved(first, 0, 20));
    assertTrue(Judge.faults(WEDGES, placed).toString().contains("sticks out"));
    placed.set(0, new PlacedItem(0, 90, first.polygon()));
    assertTrue(Judge.faults(WEDGES, placed).toString().contains("is turned by 90"));
    placed.remove(0);
    assertTrue(Judge.faults(WEDGES, placed).toString().contains("laid 3 times"));
  }

  private static PlacedItem moved(PlacedItem placed, double dx, double dy) {
    return new PlacedItem(
        placed.item(), placed.rotation(), placed.polygon().moved(new Motion(false, 0, dx, dy)));
  }

  @Test
  void resultsAndDrawingsAreWritten(@TempDir Path directory) throws IOException {
    Result result = result();
    Path file = directory.resolve("result.json");
    ResultFile.write(file, List.of(result));
    JsonNode written = new ObjectMapper().readTree(file.toFile()).get(0);
    assertEquals("wedges", written.get("instance").asText());
    assertEquals(6, written.get("stripWidth").asDouble());
    assertEquals(
        36 + 24,
        written.get("density").asDouble() * 6 * written.get("usedLength").asDouble(),
        1e-9);
    assertEquals(4, written.get("placements").size());
    assertEquals(4, written.get("placements").get(0).get("polygon").size());
    ResultDrawing.write(directory, result);
    String svg = Files.readString(directory.resolve("wedges-1.svg"));
    assertEquals(5, svg.split("<polygon").length);
  }

  @Test
  void enlargingRaisesDemands() {
    assertEquals(100, WEDGES.enlarged(100).copies());
  }
}
