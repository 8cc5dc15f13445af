package ellwand.many;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.source.Json;
import ellwand.file.source.WholeFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * What came of all jobs of a batch: {@code index.json}, by which a batch goes on where it was, and
 * {@code index.html} for people.
 *
 * @param entries in the order of the list
 */
public record BatchIndex(List<BatchEntry> entries) {

  private static final String JSON = "index.json";
  private static final String PAGE = "index.html";

  public BatchIndex {
    entries = List.copyOf(entries);
  }

  /** How many jobs have come so far. */
  public long count(BatchEntry.State state) {
    return entries.stream().filter(entry -> entry.state() == state).count();
  }

  /** For programs. */
  public byte[] json() {
    ObjectNode root = Json.object();
    for (BatchEntry entry : entries) {
      ObjectNode node = root.withArray("jobs").addObject();
      node.put("name", entry.name()).put("asked", entry.asked());
      node.put("state", entry.state().word()).put("key", entry.key()).put("said", entry.said());
      node.set("seconds", Json.number(entry.seconds()));
      entry.files().forEach(node.putArray("files")::add);
    }
    return Json.bytes(root);
  }

  void write(Path folder) {
    WholeFile.write(folder.resolve(JSON), json());
    WholeFile.write(folder.resolve(PAGE), BatchPage.html(this));
  }

  /** The entries of a folder by name; none where there is no index that can be read. */
  static Map<String, BatchEntry> read(Path folder) {
    Map<String, BatchEntry> entries = new LinkedHashMap<>();
    try {
      for (JsonNode node : Json.read(Files.readAllBytes(folder.resolve(JSON))).path("jobs")) {
        List<String> files = new ArrayList<>();
        node.path("files").forEach(file -> files.add(file.asText()));
        BatchEntry entry =
            new BatchEntry(
                node.required("name").asText(),
                node.required("asked").asText(),
                state(node.required("state").asText()),
                node.required("key").asText(),
                node.required("said").asText(),
                node.required("seconds").asDouble(),
                files);
        entries.put(entry.name(), entry);
      }
    } catch (IOException | IllegalArgumentException e) {
      // Then everything is made anew.
      return Map.of();
    }
    return entries;
  }

  private static BatchEntry.State state(String word) {
    return BatchEntry.State.valueOf(word.toUpperCase(Locale.ROOT));
  }
}
