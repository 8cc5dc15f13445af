package ellwand.desk;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.job.Renaming;
import ellwand.file.source.Json;
import ellwand.problem.InputException;
import ellwand.work.Effort;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.staticfiles.Location;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The desk's server: answers pages on this machine about the jobs of one folder. */
public final class Desk implements AutoCloseable {

  private static final long MOST_BYTES = 41_000_000;
  private static final int MOST_DRAWING_BYTES = 20_000_000;
  private static final int UNPROCESSABLE = 422;

  private static final JsonMapper JSON = new JsonMapper();

  private final Javalin server;
  private final Workroom room;
  private final Guard guard;
  private final Keeper keeper;
  private final String host;

  private Desk(Path folder, Keeper keeper, String host, int port) {
    this.host = host;
    this.keeper = keeper;
    this.room = new Workroom(folder);
    this.guard = new Guard(hosts(host, port));
    this.server = Javalin.create(this::configure).start(host, port);
    keeper.write(folder, address());
  }

  /**
   * Starts the desk.
   *
   * @param folder of the maker's jobs; it may be empty or missing
   * @param host that may reach it: {@code 127.0.0.1} for this machine alone
   * @param port 0 for any that is free
   * @throws InputException if nobody can be answered there, or another desk has the folder
   */
  public static Desk start(Path folder, String host, int port) {
    int free = free(host, port);
    Keeper keeper =
        Keeper.of(folder)
            .orElseThrow(
                () ->
                    InputException.of(
                        "another desk is open on this folder",
                        "Work on that one, or end it first"));
    Desk desk = new Desk(folder, keeper, host, free);
    // While the browser starts, which takes it longer.
    Thread warm = new Thread(Workroom::warm, "warm");
    warm.setDaemon(true);
    warm.start();
    return desk;
  }

  /**
   * Where a desk that is open on a folder is already, with the key that lets a browser in; nothing
   * if none is, or it does not say.
   */
  public static Optional<String> open(Path folder) {
    Optional<Keeper> mine = Keeper.of(folder);
    mine.ifPresent(Keeper::close);
    return mine.isPresent() ? Optional.empty() : Keeper.address(folder);
  }

  private static int free(String host, int port) {
    try (ServerSocket socket = new ServerSocket()) {
      InetSocketAddress address = new InetSocketAddress(host, port);
      // Who reaches it must call it by one name, or a page elsewhere could pass for it.
      InputException.unless(
          address.getAddress() == null || !address.getAddress().isAnyLocalAddress(),
          host + " is every address of this machine",
          "Name the one by which your other machines reach it");
      socket.bind(address);
      return socket.getLocalPort();
    } catch (IOException | IllegalArgumentException e) {
      throw InputException.of(
          "nothing can be served at " + host + ":" + port + ", " + e.getMessage(),
          "Choose another port with --port, or 0 for any that is free");
    }
  }

  private static Set<String> hosts(String host, int port) {
    return Stream.of(host, "localhost", "127.0.0.1")
        .map(name -> name + ":" + port)
        .collect(Collectors.toUnmodifiableSet());
  }

  /** Where a browser finds it, with the key that lets it in. */
  public String address() {
    return "http://" + host + ":" + server.port() + "/?key=" + guard.key();
  }

  @Override
  public void close() {
    room.close();
    server.stop();
    keeper.close();
  }

  private void configure(JavalinConfig config) {
    config.startup.showJavalinBanner = false;
    config.startup.startupWatcherEnabled = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.http.maxRequestSize = MOST_BYTES;
    config.staticFiles.add(
        files -> {
          files.directory = "/ellwand/desk";
          files.location = Location.CLASSPATH;
          files.hostedPath = "/";
        });
    config.routes.before(
        request -> {
          if (!request.path().equals("/health")) {
            guard.admit(request);
          }
        });
    config.routes.get("/health", request -> request.result("ok"));
    config.routes.exception(InputException.class, Desk::refuse);
    config.routes.get("/jobs", request -> json(request, jobs()));
    config.routes.post("/jobs", this::begin);
    config.routes.post("/jobs/made", this::make);
    config.routes.post("/jobs/drawing", Desk::draw);
    new PhotoRoutes().in(config);
    config.routes.get("/job", request -> json(request, job(request).json()));
    // Refused before news begin: a page tries again for ever where they have.
    config.routes.before("/job/news", this::job);
    config.routes.sse("/job/news", tab -> job(tab.ctx()).tabs().add(tab));
    config.routes.post("/job/edit", this::edit);
    config.routes.post("/job/undo", request -> step(request, true));
    config.routes.post("/job/redo", request -> step(request, false));
    config.routes.post("/job/rename", this::rename);
    config.routes.get(
        "/job/pieces",
        request -> json(request, job(request).pieces(word(request.queryParam("size")))));
    config.routes.post(
        "/job/alter",
        request -> {
          JsonNode body = body(request);
          change(request, job -> job.alter(body.path("piece").asText(), body.path("step")));
        });
    config.routes.get("/job/tables", request -> json(request, tables(job(request))));
    config.routes.post("/job/table/lay", this::lay);
    config.routes.post("/job/table/keep", request -> changed(request, table(request)::keep));
    config.routes.post("/job/table/undo", request -> changed(request, table(request)::undo));
    config.routes.post(
        "/job/table/step",
        request -> {
          long told = table(request).step(HandStep.of(body(request)));
          json(request, Json.object().put("told", told));
        });
    config.routes.post(
        "/job/table/tidy", request -> changed(request, () -> table(request).tidy(effort(request))));
    config.routes.get(
        "/job/table/left", request -> json(request, table(request).leftOvers().json()));
    config.routes.post("/job/table/left", this::keepLeftOver);
    config.routes.get(
        "/job/compare",
        request ->
            json(request, WidthsJson.of(job(request).job(), word(request.queryParam("cloth")))));
    new OrderRoutes(request -> job(request).order()).in(config);
    new PaperRoutes(this::job).in(config);
  }

  private static void refuse(InputException e, Context request) {
    request.status(e instanceof Declined declined ? declined.status() : UNPROCESSABLE);
    json(request, Json.object().set("problems", Problems.json(e.problems())));
  }

  static void json(Context request, JsonNode answer) {
    request.contentType("application/json").result(answer.toString());
  }

  static JsonNode body(Context request) {
    try {
      JsonNode body = JSON.readTree(request.bodyAsBytes());
      if (body.isObject()) {
        return body;
      }
    } catch (JsonProcessingException e) {
      // Told below.
    } catch (IOException e) {
      throw new IllegalStateException("bytes in memory can be read", e);
    }
    throw InputException.of("the page sent what cannot be read", "Load the page again");
  }

  static String word(String text) {
    return Optional.ofNullable(text)
        .orElseThrow(() -> InputException.of("the page did not say which", "Load the page again"));
  }

  private OpenJob job(Context request) {
    return room.open(word(request.queryParam("name")));
  }

  private Table table(Context request) {
    return job(request).table(word(request.queryParam("cloth")));
  }

  static void changed(Context request, Runnable change) {
    change.run();
    json(request, Json.object());
  }

  private JsonNode jobs() {
    ObjectNode json = Json.object();
    ArrayNode jobs = json.putArray("jobs");
    ArrayNode styles = json.putArray("styles");
    room.jobs().forEach((name, path) -> (Sharing.isJob(path) ? jobs : styles).add(name));
    Workroom.SAMPLES.forEach(json.putArray("samples")::add);
    return json;
  }

  private void begin(Context request) {
    JsonNode body = body(request);
    String name =
        body.has("style")
            ? room.beginWith(body.path("style").asText())
            : room.begin(body.path("sample").asText());
    json(request, Json.object().put("name", name));
  }

  /** What a page put together: blocks from measures, an outline on squared paper. */
  private void make(Context request) {
    JsonNode body = body(request);
    JsonNode entries = body.path("entries");
    if (!entries.isObject()) {
      throw InputException.of("the page sent no job", "Load the page again");
    }
    Newcomer made = Newcomer.made(body.path("name").asText(), entries);
    json(request, Json.object().put("name", room.create(made.name(), made.bytes())));
  }

  /** Reads a drawing; what is found in it is kept once its maker has named it. */
  private static void draw(Context request) {
    byte[] drawing = request.bodyAsBytes();
    if (drawing.length > MOST_DRAWING_BYTES) {
      throw InputException.of(
          "the drawing is larger than " + MOST_DRAWING_BYTES / 1_000_000 + " MB",
          "Leave out what is no pattern piece");
    }
    json(
        request,
        Newcomer.drawn(
                word(request.queryParam("file")),
                drawing,
                request.queryParam("allowance"),
                request.queryParam("included"))
            .json());
  }

  private void edit(Context request) {
    JsonNode body = body(request);
    change(request, job -> job.edit(place(body), value(body.get("was")), value(body.get("value"))));
  }

  private void step(Context request, boolean back) {
    Optional<String> section = Optional.ofNullable(request.queryParam("section"));
    change(request, job -> job.step(section, back));
  }

  private void rename(Context request) {
    JsonNode body = body(request);
    String piece = body.path("piece").asText();
    String name = body.path("name").asText();
    String other = body.path("to").asText().strip();
    room.openSharers(job(request));
    change(
        request,
        job ->
            job.rename(
                text ->
                    switch (body.path("what").asText()) {
                      case "piece" -> Renaming.piece(text, piece, other);
                      case "edge" -> Renaming.edge(text, piece, name, other);
                      case "point" -> Renaming.point(text, piece, name, other);
                      default ->
                          throw InputException.of(
                              "this cannot be renamed", "Choose a piece, an edge or a point");
                    }));
  }

  /** Changes a job, which may change others. */
  private void change(Context request, Consumer<OpenJob> how) {
    OpenJob job = job(request);
    how.accept(job);
    room.changed(job);
    json(request, job.json());
  }

  static List<String> place(JsonNode body) {
    List<String> at = new ArrayList<>();
    body.path("at").forEach(name -> at.add(name.asText()));
    if (at.isEmpty()) {
      throw InputException.of("the page did not say which entry", "Load the page again");
    }
    return at;
  }

  static Optional<JsonNode> value(JsonNode node) {
    return Optional.ofNullable(node).filter(n -> !n.isNull());
  }

  private void lay(Context request) {
    Effort effort = effort(request);
    Optional<String> way = value(body(request).get("way")).map(JsonNode::asText);
    changed(request, () -> table(request).lay(effort, way));
  }

  private void keepLeftOver(Context request) {
    ArrayNode names = Json.object().arrayNode();
    job(request).keepLeftOver(word(request.queryParam("cloth")), body(request)).forEach(names::add);
    json(request, names);
  }

  static Effort effort(Context request) {
    double seconds = body(request).path("seconds").asDouble(60);
    return Effort.ofSeconds(Math.min(3600, Math.max(1, seconds)));
  }

  private static ArrayNode tables(OpenJob job) {
    ArrayNode tables = Json.object().arrayNode();
    job.tables().forEach(table -> tables.add(table.json()));
    return tables;
  }

  static int whole(String text) {
    try {
      return Integer.parseInt(word(text));
    } catch (NumberFormatException e) {
      throw InputException.of("'" + text + "' is no number", "Load the page again");
    }
  }
}
