package ellwand.desk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.cloth.Cloth;
import ellwand.file.job.JobReader;
import ellwand.file.job.Renaming;
import ellwand.file.source.Folder;
import ellwand.file.source.Json;
import ellwand.file.source.YamlEdit;
import ellwand.file.source.YamlTree;
import ellwand.job.Job;
import ellwand.lay.Marker;
import ellwand.problem.InputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/** A job that somebody looks at: its file, its tables, its order, the tabs that show it. */
final class OpenJob {

  private static final int LONGEST_CHAIN = 8;

  private final String name;
  private final Path hidden;
  private final Sharing sharing;
  private final Tabs tabs = new Tabs();
  private final Map<String, Table> tables = new LinkedHashMap<>();
  private final KeptFile<Job> file;
  private final OrderBook order;

  /** Files that have a section of the job, by their paths. */
  private final Map<Path, KeptFile<Job>> elsewhere = new LinkedHashMap<>();

  /** How often a page was told of it: of two answers the later has the larger number. */
  private long told;

  /** What of the job was read last. */
  private Optional<Job> known = Optional.empty();

  /**
   * @param hidden folder for its history and its markers
   * @param sharing knows which files take something from which
   */
  OpenJob(String name, Path path, Path hidden, Sharing sharing) {
    this.name = name;
    this.hidden = hidden;
    this.sharing = sharing;
    this.file = new KeptFile<>(path, hidden.resolve("history"), sharing, JobReader::read);
    this.order = new OrderBook(path, hidden.resolve("order-history"), sharing, tabs);
    setTables();
  }

  /** Whether its file still is. */
  boolean isThere() {
    return Files.isRegularFile(file.path());
  }

  Tabs tabs() {
    return tabs;
  }

  OrderBook order() {
    return order;
  }

  /** Looks whether another program, or another job, has changed what it says; tells the tabs. */
  synchronized void lookAgain() {
    if (look()) {
      tabs.tell("changed", Json.object());
    }
  }

  private boolean look() {
    boolean other = file.look();
    if (other) {
      setTables();
    }
    return other;
  }

  private void setTables() {
    if (file.said().isEmpty() || file.said().equals(known)) {
      return;
    }
    Job job = file.get();
    Map<String, String> renamed =
        known.map(old -> Renaming.pieces(old.style(), job.style())).orElse(Map.of());
    known = Optional.of(job);
    List<String> cloths = job.cloths().stream().map(Cloth::name).toList();
    tables.keySet().stream()
        .filter(c -> !cloths.contains(c))
        .toList()
        .forEach(gone -> tables.remove(gone).close());
    for (Cloth cloth : job.cloths()) {
      tables
          .computeIfAbsent(cloth.name(), c -> new Table(c, hidden.resolve("markers"), tabs))
          .of(job, cloth, renamed);
    }
  }

  /** The file that has a section of the job: the job's own, or one that it names. */
  private KeptFile<Job> holding(String section) {
    Path path = file.path();
    for (int i = 0; i < LONGEST_CHAIN; i++) {
      Path here = path;
      Optional<Path> next =
          Sharing.entries(path, Folder.DISK)
              .flatMap(root -> Sharing.named(here, root.path(section)));
      if (next.isEmpty()) {
        break;
      }
      path = next.get();
    }
    if (path.equals(file.path())) {
      return file;
    }
    KeptFile<Job> kept = elsewhere.get(path);
    if (kept == null) {
      kept =
          new KeptFile<>(
              path,
              sharing.history(path),
              sharing,
              (changed, from) -> JobReader.read(file.path().toString(), from));
      elsewhere.put(path, kept);
    }
    kept.look();
    return kept;
  }

  /** See {@link KeptFile#edit}; in the file that has the section. */
  synchronized void edit(List<String> at, Optional<JsonNode> was, Optional<JsonNode> value) {
    change(at.get(0), f -> f.edit(at, was, value));
  }

  /**
   * Alters a piece by one more step.
   *
   * @param step as it is written in a job, such as {@code mark: v, on: centre front, at: 6 cm}
   * @throws InputException if it is no step, or none that can be done
   */
  synchronized void alter(String piece, JsonNode step) {
    List<String> list = List.of("style", "pieces", piece, "alter");
    change("style", f -> added(f, list, step));
  }

  /** One more item of a list, which begins with it if there is none. */
  private static void added(KeptFile<Job> f, List<String> list, JsonNode item) {
    int size = f.at(list).map(JsonNode::size).orElse(0);
    if (size == 0) {
      f.edit(list, f.at(list), Optional.of(Json.object().arrayNode().add(item)));
    } else {
      List<String> at = new ArrayList<>(list);
      at.add(Integer.toString(size));
      f.edit(at, Optional.empty(), Optional.of(item));
    }
  }

  /**
   * Gives a piece, or an edge or a point of one, another name wherever the file speaks of it.
   *
   * @param text the file with the other name
   * @throws InputException if it would say something else then, with where
   */
  synchronized void rename(UnaryOperator<String> text) {
    change(
        "style",
        f ->
            f.change(
                text.apply(f.text()),
                (before, after) -> Renaming.check(before.style(), after.style())));
  }

  /** Files that take something from the one that has the style. */
  synchronized List<String> sharers() {
    return sharing.users(holding("style").path());
  }

  /**
   * One step back, or forward again, of the file that has a section.
   *
   * @param section nothing for the job's own file
   */
  synchronized void step(Optional<String> section, boolean back) {
    KeptFile<Job> of = section.map(this::holding).orElse(file);
    if (back) {
      of.undo();
    } else {
      of.redo();
    }
    changed();
  }

  private void change(String section, Consumer<KeptFile<Job>> how) {
    how.accept(holding(section));
    changed();
  }

  private void changed() {
    file.look();
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
   * @throws Declined if the job has no such cloth
   */
  synchronized Table table(String cloth) {
    job();
    return Optional.ofNullable(tables.get(cloth))
        .orElseThrow(
            () -> Declined.notThere("the job has no such cloth", "Look at the job as it is now"));
  }

  synchronized List<Table> tables() {
    job();
    return List.copyOf(tables.values());
  }

  /**
   * Puts something that is left over of a cloth among the job's remnants.
   *
   * @param told as the page was told of it
   * @return what it is called there, each layer by itself
   * @throws Declined if it is not left over, or if the marker cannot be cut
   */
  synchronized List<String> keepLeftOver(String cloth, JsonNode told) {
    table(cloth).legal();
    LeftOvers left = table(cloth).leftOvers();
    List<String> names = new ArrayList<>();
    List<JsonNode> entries = left.entries(left.named(told));
    change("remnants", f -> names.addAll(shelved(f, cloth, entries)));
    return names;
  }

  /** Puts remnants into the file in one step, under names that are free. */
  private static List<String> shelved(KeptFile<Job> f, String cloth, List<JsonNode> remnants) {
    List<String> names = new ArrayList<>();
    String text = f.text();
    for (JsonNode remnant : remnants) {
      JsonNode shelf = YamlTree.at(text, List.of("remnants")).orElse(Json.object());
      String plain = cloth + " left over";
      String name = plain;
      for (int i = 2; shelf.has(name); i++) {
        name = plain + " " + i;
      }
      text =
          shelf.isEmpty()
              ? YamlEdit.set(text, List.of("remnants"), Json.object().set(name, remnant))
              : YamlEdit.set(text, List.of("remnants", name), remnant);
      names.add(name);
    }
    f.change(text, (old, fresh) -> {});
    return names;
  }

  /** The markers that can be cut, in the order of the cloths. */
  synchronized List<Marker> markers() {
    return tables().stream().filter(Table::canBeCut).map(Table::legal).toList();
  }

  /** Changes whenever something changes that can be printed. */
  synchronized Object stamp() {
    return List.of(
        job().origin().sha256(),
        tables.values().stream().map(Table::stamp).toList(),
        order.stamp());
  }

  /** What a page needs to know of it; sections of other files stand in their places. */
  synchronized ObjectNode json() {
    look();
    ObjectNode json = file.json();
    ObjectNode entries = (ObjectNode) json.get("entries");
    ObjectNode others = json.putObject("elsewhere");
    for (String section : Sharing.SECTIONS) {
      KeptFile<Job> holding = holding(section);
      if (holding != file) {
        ObjectNode other = holding.json();
        entries.set(section, other.at("/entries/" + section));
        ObjectNode told = others.putObject(section);
        told.put("file", holding.path().getFileName().toString());
        told.set("undo", other.get("undo"));
        told.set("redo", other.get("redo"));
        ArrayNode jobs = told.putArray("jobs");
        sharing.users(holding.path()).forEach(jobs::add);
      }
    }
    json.put("name", name);
    json.put("told", ++told);
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
