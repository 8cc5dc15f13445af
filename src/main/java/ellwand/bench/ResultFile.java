package ellwand.bench;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.geometry.Point;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Writes results as JSON. */
final class ResultFile {

  private static final ObjectMapper JSON = new ObjectMapper();

  private ResultFile() {}

  static void write(Path file, List<Result> results) throws IOException {
    ArrayNode all = JSON.createArrayNode();
    results.forEach(r -> all.add(node(r)));
    JSON.writeValue(file.toFile(), all);
  }

  private static ObjectNode node(Result result) {
    ObjectNode node = JSON.createObjectNode();
    node.put("instance", result.instance().name());
    node.put("stripWidth", result.instance().width());
    node.put("usedLength", result.usedLength());
    node.put("density", result.density());
    node.put("firstLegalSeconds", result.firstLegalSeconds());
    node.put("seconds", result.seconds());
    node.put("seed", result.seed().value());
    node.put("threads", result.threads());
    node.put("moves", result.moves());
    ArrayNode trace = node.putArray("trace");
    result.trace().forEach(t -> trace.addArray().add(t[0]).add(t[1]));
    ArrayNode placements = node.putArray("placements");
    for (PlacedItem placed : result.placed()) {
      ObjectNode one = placements.addObject();
      one.put("item", placed.item());
      one.put("rotation", placed.rotation());
      ArrayNode polygon = one.putArray("polygon");
      for (Point p : placed.polygon().points()) {
        polygon.addArray().add(p.x()).add(p.y());
      }
    }
    return node;
  }
}
