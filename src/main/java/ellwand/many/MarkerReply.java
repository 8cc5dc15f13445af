package ellwand.many;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.cloth.Fold;
import ellwand.file.marker.MarkerReader;
import ellwand.file.marker.MarkerWriter;
import ellwand.file.source.Folder;
import ellwand.file.source.Json;
import ellwand.job.Job;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.nest.Tried;
import ellwand.nest.pose.NoRoomException;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.rule.Check;
import ellwand.rule.Finding;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What comes back of a search for markers, as bytes. */
final class MarkerReply {

  private static final String SAID = "said.json";

  private MarkerReply() {}

  /** The ways that were tried, with their markers. */
  static byte[] of(Job job, List<Tried> tried) {
    ObjectNode root = Json.object();
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put(SAID, new byte[0]);
    for (Tried one : tried) {
      ObjectNode node = root.withArray("tried").addObject();
      node.put("fold", one.fold().name()).put("carried", one.carried());
      one.noRoom()
          .ifPresent(
              why ->
                  node.putObject("noRoom")
                      .put("piece", why.piece())
                      .put("size", why.size())
                      .put("cloth", why.cloth())
                      .put("neededMm", why.neededMm())
                      .put("widestMm", why.widestMm())
                      .put("offRepeat", why.offRepeat()));
      one.marker().ifPresent(m -> files.put(marker(one.fold()), MarkerWriter.exactly(m, job)));
      one.pleasing().ifPresent(m -> files.put(pleasing(one.fold()), MarkerWriter.exactly(m, job)));
    }
    files.put(SAID, Json.bytes(root));
    return new Parcel(files).bytes();
  }

  /** Why nothing was searched for. */
  static byte[] refusing(List<Problem> problems) {
    ObjectNode root = Json.object();
    for (Problem problem : problems) {
      ObjectNode node = root.withArray("problems").addObject();
      node.put("what", problem.what()).put("remedy", problem.remedy()).put("line", problem.line());
      problem.file().ifPresent(file -> node.put("file", file));
      problem.piece().ifPresent(piece -> node.put("piece", piece));
      problem.edge().ifPresent(edge -> node.put("edge", edge));
    }
    return new Parcel(Map.of(SAID, Json.bytes(root))).bytes();
  }

  private static String marker(Fold fold) {
    return fold.name() + ".marker.json";
  }

  private static String pleasing(Fold fold) {
    return fold.name() + ".pleasing.marker.json";
  }

  /**
   * The ways that were tried for a lay. Whoever made their markers: each has passed the check.
   *
   * @param folds that were asked for
   * @throws InputException if nothing was searched for
   * @throws TaskFailed if it is no answer to that, or a marker breaks a rule
   */
  static List<Tried> read(byte[] bytes, Lay lay, List<Fold> folds) {
    Parcel parcel = Parcel.of(bytes);
    try {
      JsonNode root = Json.read(parcel.file(SAID));
      if (root.has("problems")) {
        throw new InputException(problems(root.get("problems")));
      }
      List<Tried> all = new ArrayList<>();
      for (JsonNode node : root.required("tried")) {
        all.add(tried(node, parcel, lay));
      }
      if (!all.stream().map(Tried::fold).toList().equals(folds)) {
        throw new TaskFailed("other ways to lie the cloth came back than were asked for");
      }
      return all;
    } catch (IllegalArgumentException e) {
      throw new TaskFailed("what came back is no answer", e);
    }
  }

  private static List<Problem> problems(JsonNode array) {
    List<Problem> problems = new ArrayList<>();
    for (JsonNode node : array) {
      problems.add(
          new Problem(
              text(node, "file"),
              node.required("line").intValue(),
              text(node, "piece"),
              text(node, "edge"),
              node.required("what").asText(),
              node.required("remedy").asText()));
    }
    return problems;
  }

  private static Optional<String> text(JsonNode node, String key) {
    return Optional.ofNullable(node.path(key).textValue());
  }

  private static Tried tried(JsonNode node, Parcel parcel, Lay lay) {
    Fold fold = Fold.valueOf(node.required("fold").asText());
    return new Tried(
        fold,
        marker(parcel, marker(fold), fold, lay),
        marker(parcel, pleasing(fold), fold, lay),
        Optional.ofNullable(node.get("noRoom")).map(MarkerReply::noRoom),
        node.required("carried").booleanValue());
  }

  private static NoRoomException noRoom(JsonNode node) {
    return new NoRoomException(
        node.required("piece").asText(),
        node.required("size").asText(),
        node.required("cloth").asText(),
        node.required("neededMm").doubleValue(),
        node.required("widestMm").doubleValue(),
        node.required("offRepeat").booleanValue());
  }

  private static Optional<Marker> marker(Parcel parcel, String name, Fold fold, Lay lay) {
    return Optional.ofNullable(parcel.files().get(name)).map(file -> marker(file, fold, lay));
  }

  /**
   * A marker of a lay from its file, whoever wrote that.
   *
   * @throws TaskFailed if it cannot be read, breaks a rule, or lies in another fold
   */
  static Marker marker(byte[] file, Fold fold, Lay lay) {
    String name = marker(fold);
    Marker marker;
    try {
      marker = MarkerReader.read(name, Folder.EMPTY.with(name, file)).on(lay);
    } catch (InputException e) {
      throw new TaskFailed("a marker that came back cannot be read", e);
    }
    // On a remnant the shortest may be longer than that is, and tells how much is lacking.
    List<Finding> findings = Check.of(marker.of(lay.on(lay.cloth().endless())));
    if (!findings.isEmpty()) {
      throw new TaskFailed(
          "a marker that came back breaks a rule: " + findings.get(0).sentence(Unit.MM));
    }
    if (marker.fold() != fold) {
      throw new TaskFailed("a marker came back on cloth that lies otherwise");
    }
    return marker;
  }
}
