package ellwand.desk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.cloth.Cloth;
import ellwand.file.job.JobReader;
import ellwand.file.source.Folder;
import ellwand.file.source.Json;
import ellwand.file.source.WholeFile;
import ellwand.file.source.YamlEdit;
import ellwand.file.source.YamlTree;
import ellwand.job.Job;
import ellwand.lay.Marker;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A job that somebody looks at: its text, what it says, its tables. One change at a time; every
 * change is on disk before it is answered.
 */
final class OpenJob {

  private static final int MOST_BYTES = 5_000_000;

  private final String name;
  private final Path path;
  private final Path hidden;
  private final History history;
  private final Tabs tabs = new Tabs();
  private final Map<String, Table> tables = new LinkedHashMap<>();
  private String text = "";
  private Optional<Job> job = Optional.empty();
  private List<Problem> problems = List.of();

  /**
   * @param hidden folder for its history and its markers
   */
  OpenJob(String name, Path path, Path hidden) {
    this.name = name;
    this.path = path;
    this.hidden = hidden;
    this.history = new History(hidden.resolve("history"));
    look();
    history.note(text);
  }

  Tabs tabs() {
    return tabs;
  }

  /** Reads the file again if another program has changed it. */
  synchronized void look() {
    String now = onDisk();
    if (!now.equals(text)) {
      text = now;
      read();
    }
  }

  private String onDisk() {
    byte[] bytes = Folder.DISK.read(path.toString(), MOST_BYTES);
    return new String(bytes, StandardCharsets.UTF_8);
  }

  private void read() {
    try {
      job = Optional.of(JobReader.read(path.toString(), Folder.DISK));
      problems = List.of();
    } catch (InputException e) {
      job = Optional.empty();
      problems = e.problems();
    }
    job.ifPresent(this::setTables);
  }

  private void setTables(Job read) {
    List<String> cloths = read.cloths().stream().map(Cloth::name).toList();
    tables.keySet().stream()
        .filter(c -> !cloths.contains(c))
        .toList()
        .forEach(gone -> tables.remove(gone).close());
    for (Cloth cloth : read.cloths()) {
      tables
          .computeIfAbsent(cloth.name(), c -> new Table(c, hidden.resolve("markers"), tabs))
          .of(read, cloth);
    }
  }

  /**
   * Changes one entry.
   *
   * @param at from the outermost entry inward
   * @param was what the page shows of it, nothing for an entry that is not there
   * @param value what it is to be, nothing to take it out
   * @throws InputException if somebody else has changed it meanwhile, or if the job would have
   *     problems that it did not have; the file is then as before
   */
  synchronized void edit(List<String> at, Optional<JsonNode> was, Optional<JsonNode> value) {
    look();
    Optional<JsonNode> now = YamlTree.at(text, at);
    if (!same(now, was)) {
      throw InputException.of(
          "this was changed meanwhile, to " + now.map(JsonNode::toString).orElse("nothing"),
          "Look at it as it is now, and change it again if you still want to");
    }
    String next =
        value.map(v -> YamlEdit.set(text, at, v)).orElseGet(() -> YamlEdit.remove(text, at));
    List<Problem> fresh = new ArrayList<>(tried(next));
    fresh.removeIf(p -> problems.stream().anyMatch(old -> old.what().equals(p.what())));
    if (!fresh.isEmpty()) {
      throw new InputException(fresh);
    }
    keep(next);
    history.note(next);
  }

  /** A page writes 1.50 as 1.5. */
  private static boolean same(Optional<JsonNode> now, Optional<JsonNode> was) {
    return now.isPresent() == was.isPresent()
        && now.filter(n -> !n.equals(OpenJob::compare, was.get())).isEmpty();
  }

  private static int compare(JsonNode one, JsonNode other) {
    return one.isNumber() && other.isNumber()
        ? Double.compare(one.asDouble(), other.asDouble())
        : one.equals(other) ? 0 : 1;
  }

  /** What would be wrong with the job if its file held this. */
  private List<Problem> tried(String next) {
    try {
      String there = path.toString();
      JobReader.read(there, Folder.DISK.with(there, next.getBytes(StandardCharsets.UTF_8)));
      return List.of();
    } catch (InputException e) {
      return e.problems();
    }
  }

  private void keep(String next) {
    WholeFile.write(path, next.getBytes(StandardCharsets.UTF_8));
    text = next;
    read();
    tabs.tell("changed", Json.object());
  }

  synchronized void undo() {
    history.undo().ifPresent(this::keep);
  }

  synchronized void redo() {
    history.redo().ifPresent(this::keep);
  }

  /** The job as it is now. */
  synchronized Job job() {
    look();
    return job.orElseThrow(() -> new InputException(problems));
  }

  /**
   * The table on which a cloth lies.
   *
   * @throws InputException if the job has no such cloth
   */
  synchronized Table table(String cloth) {
    job();
    return Optional.ofNullable(tables.get(cloth))
        .orElseThrow(
            () -> InputException.of("the job has no such cloth", "Look at the job as it is now"));
  }

  synchronized List<Table> tables() {
    job();
    return List.copyOf(tables.values());
  }

  /** One marker for each cloth, all of which have passed the check. */
  synchronized List<Marker> markers() {
    List<Marker> markers = new ArrayList<>();
    for (Table table : tables()) {
      markers.add(table.legal());
    }
    return markers;
  }

  /** What a page needs to know of it. */
  synchronized ObjectNode json() {
    look();
    ObjectNode json = Json.object();
    json.put("name", name);
    json.set("entries", YamlTree.of(text).orElse(Json.object()));
    json.put("undo", history.canUndo());
    json.put("redo", history.canRedo());
    json.set("problems", Problems.json(problems));
    job.ifPresent(
        read -> {
          json.put("title", read.heading());
          json.put("unit", Json.word(read.unit()));
          json.set("sizes", PiecesJson.sizes(read));
        });
    return json;
  }

  /** All pieces of one size. */
  synchronized ObjectNode pieces(String size) {
    return PiecesJson.of(job(), size);
  }

  void close() {
    tables.values().forEach(Table::close);
  }
}
