package ellwand.desk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.app.OrderRun;
import ellwand.app.Output;
import ellwand.app.PlannedOrder;
import ellwand.file.job.OrderJobReader;
import ellwand.file.source.Folder;
import ellwand.file.source.Json;
import ellwand.file.source.WholeFile;
import ellwand.file.source.Yaml;
import ellwand.file.source.YamlTree;
import ellwand.job.OrderJob;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.work.Effort;
import ellwand.work.Progress;
import ellwand.work.Request;
import ellwand.work.Seed;
import ellwand.work.Stop;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The order of a style in several sizes and colours: a file of its own beside the style's, made
 * when it is first written in, and the plan that cuts it.
 */
final class OrderBook {

  /** What the file's name ends with, so that it is not taken for a style. */
  static final String ENDING = " order.yaml";

  private final Path style;
  private final Path path;
  private final Path history;
  private final Sharing sharing;
  private final Tabs tabs;
  private Optional<KeptFile<OrderJob>> file = Optional.empty();
  private Optional<Stop> planning = Optional.empty();
  private Optional<PlannedOrder> plan = Optional.empty();
  private List<Problem> refused = List.of();

  /** How often a page was told of it: of two answers the later has the larger number. */
  private long told;

  OrderBook(Path style, Path history, Sharing sharing, Tabs tabs) {
    this.style = style;
    this.sharing = sharing;
    this.path =
        style.resolveSibling(style.getFileName().toString().replaceFirst("\\.ya?ml$", "") + ENDING);
    this.history = history;
    this.tabs = tabs;
  }

  /** The file, if there is one. */
  private Optional<KeptFile<OrderJob>> file() {
    if (file.isEmpty() && Files.exists(path)) {
      file = Optional.of(new KeptFile<>(path, history, sharing, OrderJobReader::read));
    }
    if (file.filter(KeptFile::look).isPresent()) {
      plan = Optional.empty();
    }
    return file;
  }

  /**
   * Begins an order.
   *
   * @param colours garments by colour and size
   * @throws InputException if there is one, or it makes no sense
   */
  synchronized void begin(JsonNode colours) {
    if (file().isPresent()) {
      throw Declined.asItIsNow("there is an order already", "Change its entries");
    }
    ObjectNode entries = YamlTree.of(text(style)).orElse(Json.object());
    ObjectNode root = Json.object();
    root.put("ellwand", 1);
    Optional.ofNullable(entries.get("unit")).ifPresent(unit -> root.set("unit", unit));
    for (String part : List.of("style", "sizes", "cloths")) {
      if (entries.has(part)) {
        root.putObject(part).put("file", style.getFileName().toString());
      }
    }
    ObjectNode order = root.putObject("order");
    order.set("colours", colours);
    order.put("max-plies", 20);
    order.put("max-garments", 4);
    byte[] bytes = Yaml.bytes(root);
    OrderJobReader.read(path.toString(), Folder.DISK.with(path.toString(), bytes));
    WholeFile.write(path, bytes);
    tabs.tell("order", json());
  }

  private static String text(Path path) {
    return new String(Folder.DISK.read(path.toString(), 5_000_000), StandardCharsets.UTF_8);
  }

  /** See {@link KeptFile#edit}. */
  synchronized void edit(List<String> at, Optional<JsonNode> was, Optional<JsonNode> value) {
    known().edit(at, was, value);
    plan = Optional.empty();
    tabs.tell("order", json());
  }

  /** One step back, or forward again; what is planned is planned anew. */
  synchronized void step(boolean back) {
    KeptFile<OrderJob> of = known();
    if (back) {
      of.undo();
    } else {
      of.redo();
    }
    plan = Optional.empty();
    tabs.tell("order", json());
  }

  private KeptFile<OrderJob> known() {
    return file()
        .orElseThrow(
            () ->
                Declined.asItIsNow("there is no order yet", "Write how many of which size first"));
  }

  /** Plans it, and tells the tabs when that is done. */
  synchronized void plan(Effort effort) {
    OrderJob asked = known().get();
    planning.ifPresent(Stop::request);
    Stop stop = new Stop();
    planning = Optional.of(stop);
    refused = List.of();
    Request request =
        new Request(
            effort,
            new Seed(1),
            Math.max(1, Runtime.getRuntime().availableProcessors() - 1),
            stop,
            news -> tell(news, stop));
    Thread thread = new Thread(() -> run(asked, request, stop), "order");
    thread.setDaemon(true);
    thread.start();
    tabs.tell("order", json());
  }

  private void tell(Progress.News news, Stop stop) {
    if (news instanceof Progress.Cheaper better && planning.filter(s -> s == stop).isPresent()) {
      ObjectNode said = Json.object();
      said.put("lays", better.lays());
      said.set("share", Json.number(better.share()));
      tabs.tell("planning", said);
    }
  }

  private void run(OrderJob asked, Request request, Stop stop) {
    try {
      done(OrderRun.make(asked, asked.unit(), request), List.of(), stop);
    } catch (InputException e) {
      done(null, e.problems(), stop);
    } catch (RuntimeException e) {
      done(
          null,
          List.of(
              Problem.of(
                  "planning failed by a mistake in Ellwand: " + e,
                  "Please report this with the order's file")),
          stop);
    }
  }

  private synchronized void done(PlannedOrder made, List<Problem> problems, Stop stop) {
    if (planning.filter(s -> s == stop).isPresent()) {
      planning = Optional.empty();
      plan = Optional.ofNullable(made);
      refused = problems;
      tabs.tell("order", json());
    }
  }

  synchronized void close() {
    planning.ifPresent(Stop::request);
  }

  /** Another whenever another plan is made. */
  synchronized Object stamp() {
    return plan.map(System::identityHashCode);
  }

  /** The files of the plan. */
  synchronized List<Output> outputs() {
    return plan.map(PlannedOrder::outputs).orElse(List.of());
  }

  /** What a page needs to know of it. */
  synchronized ObjectNode json() {
    ObjectNode json = file().map(KeptFile::json).orElseGet(Json::object);
    json.put("told", ++told);
    json.put("planning", planning.isPresent());
    json.set("refused", Problems.json(refused));
    plan.ifPresent(
        made -> {
          json.put("text", made.text());
          json.set("plan", PlanJson.of(made));
          json.put("achieved", made.achieved());
          made.outputs().forEach(output -> json.withArray("files").add(output.name()));
        });
    return json;
  }
}
