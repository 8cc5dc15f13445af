package ellwand.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;

/** The JSON form: name, items with demand, allowed_orientations and shape.data, strip_height. */
final class JsonInstance {

  private JsonInstance() {}

  static Instance read(String fileName, InputStream in) throws IOException {
    JsonNode root = new ObjectMapper().readTree(in);
    List<Instance.Item> items = new ArrayList<>();
    for (JsonNode item : need(root, "items")) {
      List<Double> rotations = new ArrayList<>();
      item.path("allowed_orientations").forEach(r -> rotations.add(r.asDouble()));
      if (rotations.isEmpty()) {
        rotations.add(0.0);
      }
      items.add(
          new Instance.Item(
              outline(need(need(item, "shape"), "data")), need(item, "demand").asInt(), rotations));
    }
    String name = root.path("name").asText(fileName);
    return new Instance(name, need(root, "strip_height").asDouble(), items);
  }

  private static Outline outline(JsonNode data) throws IOException {
    List<Point> points = new ArrayList<>();
    for (JsonNode point : data) {
      if (point.size() != 2 || !point.get(0).isNumber() || !point.get(1).isNumber()) {
        throw new IOException("'shape.data' must be a list of [x, y]");
      }
      points.add(new Point(point.get(0).asDouble(), point.get(1).asDouble()));
    }
    return Outline.of(points);
  }

  private static JsonNode need(JsonNode node, String field) throws IOException {
    if (!node.has(field)) {
      throw new IOException("'" + field + "' is missing");
    }
    return node.get(field);
  }
}
