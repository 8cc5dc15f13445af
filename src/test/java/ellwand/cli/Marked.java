package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The marker of a job's one cloth, main, as a user gets it. Lengths in mm.
 *
 * @param marker as written to main.marker.json
 * @param figures as written to figures.json
 */
record Marked(Ran ran, JsonNode marker, JsonNode figures) {

  /** Lays the job briefly; its results are in a folder beside it. */
  static Marked lay(Path folder, String job, String effort) throws IOException {
    Path path = Files.writeString(folder.resolve("job.yaml"), job);
    Path out = folder.resolve("out");
    Ran ran = Ran.of("lay", path, "--effort", effort, "--threads", 1, "--out", out);
    assertEquals(0, ran.code(), ran.err());
    return new Marked(
        ran,
        Ran.JSON.readTree(out.resolve("main.marker.json").toFile()),
        Ran.JSON.readTree(out.resolve("figures.json").toFile()));
  }

  double lengthMm() {
    return marker.get("length").asDouble();
  }

  double clothLengthMm() {
    return marker.get("clothLength").asDouble();
  }

  /** A zone of the laid cloth. */
  JsonNode zone(String id) {
    for (JsonNode zone : marker.get("zones")) {
      if (zone.get("id").asText().equals(id)) {
        return zone;
      }
    }
    throw new AssertionError("no zone " + id + " in " + marker.get("zones"));
  }

  /** Every placement of a piece. */
  List<JsonNode> copies(String piece) {
    List<JsonNode> copies = new ArrayList<>();
    for (JsonNode copy : marker.get("copies")) {
      if (copy.get("piece").asText().equals(piece)) {
        copies.add(copy);
      }
    }
    return copies;
  }

  /** How far a copy's cutting line reaches: least and greatest x, least and greatest y. */
  static double[] reach(JsonNode copy) {
    double[] box = {Double.MAX_VALUE, -Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE};
    for (JsonNode point : copy.get("outline")) {
      for (int axis = 0; axis < 2; axis++) {
        double mm = point.get(axis).asDouble();
        box[2 * axis] = Math.min(box[2 * axis], mm);
        box[2 * axis + 1] = Math.max(box[2 * axis + 1], mm);
      }
    }
    return box;
  }
}
