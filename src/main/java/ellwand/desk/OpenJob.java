package ellwand.desk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.cloth.Cloth;
import ellwand.file.job.JobReader;
import ellwand.file.source.Json;
import ellwand.file.source.Names;
import ellwand.file.source.YamlTree;
import ellwand.job.Job;
import ellwand.lay.Marker;
import ellwand.problem.InputException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** A job that somebody looks at: its file, its tables, its order, the tabs that show it. */
final class OpenJob {

  private final String name;
  private final Path hidden;
  private final Tabs tabs = new Tabs();
  private final Map<String, Table> tables = new LinkedHashMap<>();
  private final KeptFile<Job> file;
  private final OrderBook order;

  /**
   * @param hidden folder for its history and its markers
   */
  OpenJob(String name, Path path, Path hidden) {
    this.name = name;
    this.hidden = hidden;
    this.file = new KeptFile<>(path, hidden.resolve("history"), JobReader::read);
    this.order = new OrderBook(path, hidden.resolve("order-history"), tabs);
    setTables();
  }

  Tabs tabs() {
    return tabs;
  }

  OrderBook order() {
    return order;
  }

  private void look() {
    if (file.look()) {
      setTables();
    }
  }

  private void setTables() {
    if (file.said().isEmpty()) {
      return;
    }
    Job job = file.get();
    List<String> cloths = job.cloths().stream().map(Cloth::name).toList();
    tables.keySet().stream()
        .filter(c -> !cloths.contains(c))
        .toList()
        .forEach(gone -> tables.remove(gone).close());
    for (Cloth cloth : job.cloths()) {
      tables
          .computeIfAbsent(cloth.name(), c -> new Table(c, hidden.resolve("markers"), tabs))
          .of(job, cloth);
    }
  }

  /** See {@link KeptFile#edit}. */
  synchronized void edit(List<String> at, Optional<JsonNode> was, Optional<JsonNode> value) {
    change(f -> f.edit(at, was, value));
  }

  /**
   * Alters a piece by one more step, as it is written in a job.
   *
   * @param sentence such as {@code mark: v, on: centre front, at: 6 cm}
   * @throws InputException if it is no step, or none that can be done
   */
  synchronized void alter(String piece, String sentence) {
    JsonNode step =
        YamlTree.of("step: {" + sentence + "}\n")
            .map(entries -> entries.get("step"))
            .filter(JsonNode::isObject)
            .orElseThrow(
                () ->
                    InputException.of(
                        "'" + Names.shown(sentence) + "' is no step",
                        "Write it as in a job, for example mark: v, on: centre front, at: 6 cm"));
    List<String> list = List.of("style", "pieces", piece, "alter");
    int steps = file.at(list).map(JsonNode::size).orElse(0);
    if (steps == 0) {
      JsonNode first = Json.object().arrayNode().add(step);
      change(f -> f.edit(list, f.at(list), Optional.of(first)));
    } else {
      List<String> at = new ArrayList<>(list);
      at.add(Integer.toString(steps));
      change(f -> f.edit(at, Optional.empty(), Optional.of(step)));
    }
  }

  synchronized void undo() {
    change(KeptFile::undo);
  }

  synchronized void redo() {
    change(KeptFile::redo);
  }

  private void change(Consumer<KeptFile<Job>> how) {
    how.accept(file);
    setTables();
    tabs.tell("changed", Json.object());
  }

  /**
   * The job as it is now.
   *
   * @throws InputException with what is wrong with it
   */
  synchronized Job job() {
    look();
    return file.get();
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
    ObjectNode json = file.json();
    json.put("name", name);
    file.said()
        .ifPresent(
            job -> {
              json.put("title", job.heading());
              json.put("unit", Json.word(job.unit()));
              json.set("sizes", PiecesJson.sizes(job));
            });
    return json;
  }

  /** All pieces of one size. */
  synchronized ObjectNode pieces(String size) {
    return PiecesJson.of(job(), size);
  }

  void close() {
    tables.values().forEach(Table::close);
    order.close();
  }
}
