package ellwand.many;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.app.AskedLay;
import ellwand.cloth.Fold;
import ellwand.cloth.Wishes;
import ellwand.file.source.Json;
import ellwand.lay.Scope;
import ellwand.work.Effort;
import ellwand.work.Progress;
import ellwand.work.Request;
import ellwand.work.Seed;
import ellwand.work.Stop;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.StreamSupport;

/**
 * A search for the markers of a lay, as a task.
 *
 * @param folds that are tried
 * @param threads to search on, 1 or more
 * @param from the file of a marker to go on from, in its own fold; not to be changed
 */
record MarkerTask(
    JobFiles job,
    AskedLay lay,
    List<Fold> folds,
    Effort effort,
    Seed seed,
    int threads,
    Optional<byte[]> from) {

  static final String KIND = "marker";

  private static final String ASKED = "asked.json";
  private static final String FILE = "job/";
  private static final String FROM = "from.marker.json";

  /**
   * What a search may take beyond its effort, to begin, to turn pieces and to serve wishes; ours.
   */
  private static final double BEYOND = 4;

  private static final Duration TO_BEGIN = Duration.ofMinutes(2);

  /** Nobody knows how long steps take; ours. */
  private static final Duration ANY_STEPS = Duration.ofHours(12);

  MarkerTask {
    folds = List.copyOf(folds);
  }

  /** The same with another seed. */
  MarkerTask with(Seed other) {
    return new MarkerTask(job, lay, folds, effort, other, threads, from);
  }

  /** How to search. */
  Request request(Stop stop, Progress progress) {
    return new Request(effort, seed, threads, stop, progress);
  }

  Task task() {
    return new Task(
        KIND,
        bytes(),
        threads,
        effort.repeats()
            ? ANY_STEPS
            : TO_BEGIN.plusMillis((long) (1000 * BEYOND * effort.seconds())));
  }

  private byte[] bytes() {
    ObjectNode root = Json.object();
    root.put("job", job.name()).put("order", job.order());
    if (Double.isFinite(effort.leastSeconds())) {
      root.put("leastSeconds", effort.leastSeconds());
    }
    if (Double.isFinite(effort.seconds())) {
      root.put("seconds", effort.seconds());
    }
    root.put("steps", effort.steps());
    root.put("seed", seed.value()).put("threads", threads);
    put(root.putArray("folds"), folds);
    put(root.putObject("lay"));
    Map<String, byte[]> files = new LinkedHashMap<>();
    List<String> names = List.copyOf(job.files().keySet());
    names.forEach(root.putArray("files")::add);
    files.put(ASKED, Json.bytes(root));
    for (int i = 0; i < names.size(); i++) {
      files.put(FILE + i, job.files().get(names.get(i)));
    }
    from.ifPresent(marker -> files.put(FROM, marker));
    return new Parcel(files).bytes();
  }

  private static void put(ArrayNode array, List<Fold> folds) {
    folds.forEach(fold -> array.add(fold.name()));
  }

  private void put(ObjectNode node) {
    node.put("cloth", lay.cloth());
    lay.remnant().ifPresent(on -> node.put("remnant", on));
    node.put("widthMm", lay.widthMm());
    put(node.putArray("folds"), lay.folds());
    if (Double.isFinite(lay.withinMm())) {
      node.put("withinMm", lay.withinMm());
    }
    node.put("flawed", lay.flawed());
    lay.price().ifPresent(p -> node.putObject("price").put("share", p.share()).put("mm", p.mm()));
    // A list, since its order counts.
    ArrayNode garments = node.putArray("garments");
    lay.garments()
        .forEach((size, number) -> garments.addObject().put("size", size).put("number", number));
    node.put(
        "scope",
        lay.scope() instanceof Scope.Whole
            ? "whole"
            : lay.scope() instanceof Scope.Part ? "part" : "garments");
    node.put("cutForBolt", lay.cutForBolt());
    lay.part().ifPresent(some -> some.forEach(node.putArray("part")::add));
  }

  /**
   * What {@link #task} made.
   *
   * @throws TaskFailed if it is something else
   */
  static MarkerTask of(byte[] bytes) {
    Parcel parcel = Parcel.of(bytes);
    try {
      JsonNode root = Json.read(parcel.file(ASKED));
      Map<String, byte[]> files = new LinkedHashMap<>();
      for (JsonNode name : root.required("files")) {
        files.put(name.textValue(), parcel.file(FILE + files.size()));
      }
      return new MarkerTask(
          new JobFiles(
              root.required("job").textValue(), root.required("order").booleanValue(), files),
          lay(root.required("lay")),
          folds(root.required("folds")),
          new Effort(
              // JSON has no word for what is endless.
              root.path("leastSeconds").asDouble(Double.POSITIVE_INFINITY),
              root.path("seconds").asDouble(Double.POSITIVE_INFINITY),
              root.required("steps").longValue()),
          new Seed(root.required("seed").longValue()),
          root.required("threads").intValue(),
          Optional.ofNullable(parcel.files().get(FROM)));
    } catch (IllegalArgumentException e) {
      throw new TaskFailed("a task does not say what it asks for", e);
    }
  }

  private static List<Fold> folds(JsonNode array) {
    return StreamSupport.stream(array.spliterator(), false)
        .map(name -> Fold.valueOf(name.textValue()))
        .toList();
  }

  private static AskedLay lay(JsonNode node) {
    Map<String, Integer> garments = new LinkedHashMap<>();
    node.required("garments")
        .forEach(
            size ->
                garments.put(
                    size.required("size").textValue(), size.required("number").intValue()));
    List<Integer> part = new ArrayList<>();
    node.path("part").forEach(index -> part.add(index.intValue()));
    return new AskedLay(
        node.required("cloth").textValue(),
        Optional.ofNullable(node.path("remnant").textValue()),
        node.required("widthMm").doubleValue(),
        folds(node.required("folds")),
        node.path("withinMm").asDouble(Double.POSITIVE_INFINITY),
        node.required("flawed").booleanValue(),
        Optional.ofNullable(node.get("price"))
            .map(
                p ->
                    new Wishes.Price(
                        p.required("share").doubleValue(), p.required("mm").doubleValue())),
        garments,
        switch (node.required("scope").asText()) {
          case "whole" -> Scope.WHOLE;
          case "part" -> Scope.PART;
          default -> new Scope.Garments(garments);
        },
        node.required("cutForBolt").booleanValue(),
        node.has("part") ? Optional.of(part) : Optional.empty());
  }
}
