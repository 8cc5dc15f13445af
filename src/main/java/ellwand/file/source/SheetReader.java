package ellwand.file.source;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Unit;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads a job file and the files it names: {@code style: {file: styles/coat.yaml}}. */
public final class SheetReader {

  /** The sections that another file may hold; there they stand under the same name. */
  private static final Set<String> SECTIONS =
      Set.of("style", "sizes", "cloths", "remnants", "order");

  /** Far above any job that a person writes. */
  private static final int MAX_BYTES = 5_000_000;

  private static final int MAX_FILES_IN_A_CHAIN = 8;
  private static final String REMEDY_UNIT = "Write for example unit: cm, or in, mm, m, yd";

  private final Map<JsonPointer, FileLine> places = new HashMap<>();
  private final Map<String, Unit> units = new HashMap<>();
  private final List<Source> sources = new ArrayList<>();
  private final Map<String, Tree> trees = new HashMap<>();

  private final Folder folder;

  /** The files that led here, the job itself last. */
  private final List<String> above;

  private SheetReader(Folder folder, List<String> above) {
    this.folder = folder;
    this.above = above;
  }

  /**
   * Reads a job.
   *
   * @param job its path, or a name for it
   * @throws InputException if a file cannot be read or is no job
   */
  public static Sheet read(String job, Folder from) {
    return new SheetReader(from, List.of(job)).sheet(job);
  }

  private Sheet sheet(String job) {
    Tree tree = tree(job);
    ObjectNode root = (ObjectNode) tree.root();
    if (root.has("job") && root.has("copies")) {
      throw new InputException(
          Problem.of(
                  "this is a marker, not a job",
                  "Name the job that it was made from; check and print take markers")
              .at(job, 1));
    }
    places.putAll(tree.places());
    for (String section : SECTIONS) {
      if (root.has(section)) {
        root.set(section, section(section, job, List.of(job)));
      }
    }
    Map<JsonPointer, Sheet> blocks = blocks(root);
    return new Sheet(root, places, units, sources, blocks);
  }

  /** The files that {@code from: {file: block.yaml, piece: front}} names. */
  private Map<JsonPointer, Sheet> blocks(ObjectNode root) {
    Map<JsonPointer, Sheet> blocks = new HashMap<>();
    Map<String, Sheet> read = new HashMap<>();
    JsonPointer pieces = JsonPointer.valueOf("/style/pieces");
    root.at(pieces)
        .fields()
        .forEachRemaining(
            piece -> {
              JsonNode file = piece.getValue().path("from").path("file");
              if (file.isTextual()) {
                JsonPointer at =
                    pieces
                        .appendProperty(piece.getKey())
                        .appendProperty("from")
                        .appendProperty("file");
                FileLine here = places.get(at);
                String next = named(here.file(), file.asText(), here);
                blocks.put(at, read.computeIfAbsent(next, n -> block(n, here)));
              }
            });
    read.values().forEach(sheet -> sources.addAll(sheet.sources()));
    return blocks;
  }

  private Sheet block(String next, FileLine here) {
    List<String> chain = longer(above, next, here, "block");
    try {
      Sheet sheet = new SheetReader(folder, chain).sheet(next);
      if (!sheet.root().has("style")) {
        throw refused(
            new FileLine(next, 1),
            here.file() + " takes a piece of this file, but it has no style:",
            "Put its pieces under style:, beside unit:");
      }
      return sheet;
    } catch (InputException e) {
      throw located(e, next, here);
    }
  }

  private Tree tree(String path) {
    Tree known = trees.get(path);
    if (known != null) {
      return known;
    }
    Source source = Source.read(path, folder, MAX_BYTES);
    Tree tree = Tree.ofYaml(source);
    if (!tree.root().isObject()) {
      throw refused(
          tree.places().get(JsonPointer.empty()),
          "this is no job: it should consist of entries such as unit: and style:",
          "Start from one of the sample jobs");
    }
    sources.add(source);
    trees.put(path, tree);
    return tree;
  }

  /** The section of a file, or of the file that it names in turn. */
  private JsonNode section(String section, String path, List<String> chain) {
    Tree tree = tree(path);
    JsonPointer at = JsonPointer.empty().appendProperty(section);
    JsonNode node = tree.root().get(section);
    if (node == null) {
      throw refused(
          tree.places().get(JsonPointer.empty()),
          chain.get(chain.size() - 2) + " looks for " + section + ": in this file, it has none",
          "Put the " + section + " under the key " + section + ":, beside unit:");
    }
    JsonNode file = node.get("file");
    if (file == null || !file.isTextual() || node.size() > 1) {
      places.keySet().removeIf(p -> under(p, section));
      tree.places().forEach((p, place) -> put(p, place, section));
      units.put(section, unit(tree));
      return node;
    }
    FileLine here = tree.places().get(at.appendProperty("file"));
    String next = named(path, file.asText(), here);
    List<String> longer = longer(chain, next, here, section);
    try {
      return section(section, next, longer);
    } catch (InputException e) {
      throw located(e, next, here);
    }
  }

  private static List<String> longer(
      List<String> chain, String next, FileLine here, String sought) {
    if (chain.contains(next)) {
      throw refused(
          here, "this file ends up naming itself", "Name the file that has the " + sought);
    }
    if (chain.size() >= MAX_FILES_IN_A_CHAIN) {
      throw refused(here, "too many files name one another", "Name the last of them directly");
    }
    List<String> longer = new ArrayList<>(chain);
    longer.add(next);
    return longer;
  }

  /** A missing file is the fault of the line that names it. */
  private static InputException located(InputException e, String next, FileLine here) {
    List<Problem> problems =
        e.problems().stream()
            .map(
                p ->
                    p.line() == 0 && p.file().filter(next::equals).isPresent()
                        ? Problem.of(next + ": " + p.what(), p.remedy())
                            .at(here.file(), here.line())
                        : p)
            .toList();
    return new InputException(problems);
  }

  private static String named(String from, String name, FileLine here) {
    try {
      return Path.of(from).resolveSibling(name).normalize().toString();
    } catch (InvalidPathException e) {
      throw refused(here, "'" + name + "' is no file name", "Name a file beside this one");
    }
  }

  private void put(JsonPointer p, FileLine place, String section) {
    if (under(p, section)) {
      places.put(p, place);
    }
  }

  private static boolean under(JsonPointer p, String section) {
    return !p.matches() && p.getMatchingProperty().equals(section);
  }

  /** What bare numbers stand for; an order by itself is reckoned in metres unless it says. */
  private static Unit unit(Tree tree) {
    JsonNode unit = tree.root().get("unit");
    FileLine place =
        tree.places()
            .getOrDefault(JsonPointer.valueOf("/unit"), tree.places().get(JsonPointer.empty()));
    if (unit == null && !tree.root().has("style") && !tree.root().has("cloths")) {
      return Unit.M;
    }
    if (unit == null || !unit.isTextual()) {
      throw refused(place, "it is not said what bare numbers stand for", REMEDY_UNIT);
    }
    try {
      return Unit.parse(unit.asText());
    } catch (InputException e) {
      throw refused(place, "'" + unit.asText() + "' is not a unit of length", REMEDY_UNIT);
    }
  }

  private static InputException refused(FileLine at, String what, String remedy) {
    return new InputException(Problem.of(what, remedy).at(at.file(), at.line()));
  }
}
