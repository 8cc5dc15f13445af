package ellwand.desk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.app.ConvertRequest;
import ellwand.app.ConvertRun;
import ellwand.app.Converted;
import ellwand.file.drawn.Asked;
import ellwand.file.drawn.PieceNames;
import ellwand.file.job.JobReader;
import ellwand.file.job.StyleFile;
import ellwand.file.job.StyleWriter;
import ellwand.file.source.Folder;
import ellwand.file.source.Json;
import ellwand.file.source.Yaml;
import ellwand.job.Job;
import ellwand.problem.InputException;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A job that was not there before, whole enough to be laid at once.
 *
 * @param name that its file is to have, or nearly
 * @param entries of the file
 * @param job what they say
 * @param said what its maker should know, one sentence each
 */
record Newcomer(String name, ObjectNode entries, Job job, List<String> said) {

  private static final String DRAWING = "drawing";

  /**
   * Of a drawing.
   *
   * @param file its name, which becomes the job's
   * @param allowance what the drawn lines lack; nothing if they need none
   * @param included what of it they include
   * @throws ellwand.problem.InputException if it cannot be read safely or holds no piece
   */
  static Newcomer drawn(String file, byte[] drawing, String allowance, String included) {
    Folder folder = Folder.EMPTY.with(DRAWING, drawing);
    ConvertRequest request = request(stem(file), allowance, included);
    try {
      Newcomer made = of(stem(file), ConvertRun.style(List.of(DRAWING), folder, request));
      return new Newcomer(
          made.name, made.entries, made.job, made.said.stream().map(Asides::ofDrawing).toList());
    } catch (InputException e) {
      throw new InputException(e.problems().stream().map(Asides::ofDrawing).toList());
    }
  }

  /** How a drawing, or what was traced, is to become a style of that name. */
  static ConvertRequest request(String name, String allowance, String included) {
    return new ConvertRequest(
        new Asked(length(allowance), length(included), List.of()),
        PieceNames.NONE,
        OptionalDouble.empty(),
        Optional.empty(),
        Optional.of(name),
        Optional.empty(),
        List.of(),
        Optional.empty(),
        false);
  }

  /** Of a style that was made of something else. */
  static Newcomer of(String name, Converted converted) {
    ObjectNode root = StyleWriter.tree(converted.file().design(), converted.file().wear());
    List<String> said = new ArrayList<>(converted.text().lines().toList());
    said.addAll(converted.remarks());
    return of(name, root, said);
  }

  private static OptionalDouble length(String text) {
    return text == null || text.isBlank()
        ? OptionalDouble.empty()
        : OptionalDouble.of(Length.parse(text, Unit.CM).mm());
  }

  private static String stem(String file) {
    String name = file.replaceAll(".*[/\\\\]", "").replaceFirst("\\.[^.]*$", "").strip();
    return name.isEmpty() ? "style" : name;
  }

  /**
   * Of what a page put together: entries of a job, of which cloths and order may be missing.
   *
   * @throws ellwand.problem.InputException if it makes no job
   */
  static Newcomer made(String name, JsonNode entries) {
    return of(name, (ObjectNode) entries, List.of());
  }

  /**
   * The bytes of a job that takes its style, and sizes if it has some, from another file.
   *
   * @param path where that is
   * @param file what the job calls it
   * @throws ellwand.problem.InputException if it holds no style
   */
  static byte[] with(String path, String file) {
    StyleFile style = StyleFile.read(path, Folder.DISK);
    ObjectNode root = Json.object();
    root.put("ellwand", 1);
    root.put("unit", style.design().unit().symbol());
    root.put("title", style.design().name());
    root.putObject("style").put("file", file);
    if (style.design().sizes().names().size() > 1) {
      root.putObject("sizes").put("file", file);
    }
    ObjectNode cloths = root.putObject("cloths");
    style.style().pieces(style.style().drawnSize()).stream()
        .flatMap(piece -> piece.cuts().stream())
        .forEach(cut -> cloths.putObject(cut.cloth()).put("width", "140 cm"));
    root.putObject("order").putObject("garments").put(style.style().drawnSize(), 1);
    return Yaml.bytes(root);
  }

  private static Newcomer of(String name, ObjectNode root, List<String> said) {
    if (!root.has("cloths")) {
      ObjectNode cloths = root.putObject("cloths");
      named(root).forEach(cloth -> cloths.putObject(cloth).put("width", "140 cm"));
    }
    if (!root.has("order")) {
      String size = root.path("style").path("size").asText();
      root.putObject("order").putObject("garments").put(size, 1);
    }
    byte[] bytes = Yaml.bytes(root);
    return new Newcomer(name, root, JobReader.read(name, Folder.EMPTY.with(name, bytes)), said);
  }

  byte[] bytes() {
    return Yaml.bytes(entries);
  }

  /** What a page needs to show it before it is kept. */
  ObjectNode json() {
    ObjectNode json = PiecesJson.of(job, job.style().drawnSize());
    json.put("name", name);
    json.set("entries", entries);
    said.stream().map(Asides::without).forEach(json.putArray("said")::add);
    return json;
  }

  /** The cloths that pieces are cut from. */
  private static Set<String> named(ObjectNode root) {
    Set<String> cloths = new LinkedHashSet<>();
    for (JsonNode piece : root.path("style").path("pieces")) {
      piece.path("cut").fieldNames().forEachRemaining(cloths::add);
    }
    return cloths.isEmpty() ? Set.of("main") : cloths;
  }
}
