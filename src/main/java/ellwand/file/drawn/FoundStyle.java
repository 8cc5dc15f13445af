package ellwand.file.drawn;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.job.StyleFile;
import ellwand.file.job.StyleWriter;
import ellwand.file.source.Folder;
import ellwand.file.source.Json;
import ellwand.file.source.Yaml;
import ellwand.pattern.GradeRule;
import ellwand.pattern.Sizes;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Puts found pieces together as a style. It is read back as every job will read it, so that what
 * comes of it can be used at once.
 */
public final class FoundStyle {

  /** How the entry of a piece reads that is drawn, in the words of a drawing. */
  public static final String DRAWN = "drawn";

  private final PieceNames names;
  private final Unit unit;
  private final ObjectNode pieces = Json.object();
  private final Map<String, FoundPiece> found = new LinkedHashMap<>();
  private final Set<String> taken = new LinkedHashSet<>();
  private final Set<String> drawn = new LinkedHashSet<>();
  private final Map<String, Map<String, GradeRule>> grades = new LinkedHashMap<>();
  private Optional<DrawnSizes> sizes = Optional.empty();
  private String file = "";
  private ObjectNode whole = Json.object();

  /**
   * @param unit that the style is reckoned in
   */
  public FoundStyle(PieceNames names, Unit unit) {
    this.names = names;
    this.unit = names.unit().orElse(unit);
  }

  /**
   * Adds what was found in a file.
   *
   * @param words what it says of the whole style
   * @throws InputException if it has other sizes than a file before it
   */
  public void add(Drawing drawing, List<FoundPiece> more, Optional<ObjectNode> words) {
    file = drawing.file();
    take(drawing.sizes());
    words.ifPresent(
        w -> {
          whole = w;
          w.path("style")
              .path("pieces")
              .fields()
              .forEachRemaining(e -> put(e.getKey(), e.getValue()));
        });
    for (FoundPiece piece : more) {
      drawn.add(piece.calledInDrawing());
      ObjectNode said = names.of(piece);
      if (!said.path("leave-out").asBoolean()) {
        put(piece, said);
      }
    }
  }

  private void take(Optional<DrawnSizes> more) {
    if (more.isEmpty()) {
      return;
    }
    if (sizes.isPresent()
        && !(sizes.get().names().equals(more.get().names())
            && sizes.get().base().equals(more.get().base()))) {
      throw new InputException(
          Problem.of(
                  "it has the sizes %s, and a file before it %s"
                      .formatted(
                          String.join(", ", more.get().names()),
                          String.join(", ", sizes.get().names())),
                  "Read each by itself, or one size of both (--sizes)")
              .at(file, 0));
    }
    sizes = more;
  }

  private void put(String name, JsonNode entry) {
    pieces.set(name, entry);
    if (!entry.asText().equals(DRAWN)) {
      taken.add(name);
    }
  }

  private void put(FoundPiece piece, ObjectNode said) {
    String called = said.has("called") ? said.remove("called").asText() : piece.draft().name();
    String name = SafeName.free(called, taken);
    ObjectNode entry = StyleWriter.entry(piece.draft(), unit);
    merge(entry, piece.words());
    merge(entry, said);
    pieces.set(name, entry);
    found.put(name, piece);
    if (!piece.grade().isEmpty()) {
      grades.put(name, piece.grade());
    }
  }

  /** Entries go before what was found; those of edges are added to what was found of them. */
  private static void merge(ObjectNode entry, ObjectNode words) {
    words
        .fields()
        .forEachRemaining(
            w -> {
              if (w.getKey().equals("edges") && entry.get("edges") instanceof ObjectNode edges) {
                w.getValue().fields().forEachRemaining(e -> merge(edges, e.getKey(), e.getValue()));
              } else {
                entry.set(w.getKey(), w.getValue());
              }
            });
  }

  private static void merge(ObjectNode edges, String name, JsonNode words) {
    if (edges.get(name) instanceof ObjectNode edge && words instanceof ObjectNode said) {
      edge.setAll(said);
    } else {
      edges.set(name, words);
    }
  }

  /** The pieces found, by the name that they have in the style. */
  public Map<String, FoundPiece> found() {
    return found;
  }

  /**
   * The style.
   *
   * @param called its name where no drawing says one
   * @throws InputException if it cannot be used, each problem with its piece
   */
  public StyleFile style(String called) {
    names.checkAgainst(drawn);
    for (String name : fieldNames(pieces)) {
      if (pieces.get(name).asText().equals(DRAWN)) {
        pieces.remove(name);
      }
    }
    ObjectNode root = Json.object();
    root.put("ellwand", 1);
    root.put("unit", unit.symbol());
    ObjectNode style = root.putObject("style");
    style.put("name", called);
    sizes.ifPresent(in -> style.put("size", in.base()));
    sizes
        .filter(in -> in.names().size() > 1)
        .ifPresent(
            in ->
                root.set(
                    "sizes", StyleWriter.sizes(new Sizes(in.names(), in.base(), grades), unit)));
    if (whole.get("style") instanceof ObjectNode said) {
      said.fields().forEachRemaining(e -> style.set(e.getKey(), e.getValue()));
    }
    style.set("pieces", pieces);
    if (whole.has("sizes")) {
      root.set("sizes", whole.get("sizes"));
    }
    try {
      return StyleFile.read(file, Folder.EMPTY.with(file, Yaml.bytes(root)));
    } catch (InputException e) {
      throw new InputException(e.problems().stream().map(this::located).toList());
    }
  }

  private static List<String> fieldNames(ObjectNode node) {
    List<String> all = new ArrayList<>();
    node.fieldNames().forEachRemaining(all::add);
    return all;
  }

  /** At the line of the drawing, not of what was made of it. */
  private Problem located(Problem problem) {
    int line = problem.piece().map(found::get).map(FoundPiece::line).orElse(0);
    return problem.at(file, line);
  }
}
