package ellwand.file.job;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import ellwand.file.job.Mentions.Kind;
import ellwand.file.job.Mentions.Mention;
import ellwand.file.source.Json;
import ellwand.file.source.Names;
import ellwand.file.source.YamlEdit;
import ellwand.file.source.YamlTree;
import ellwand.pattern.Piece;
import ellwand.pattern.Style;
import ellwand.problem.InputException;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * A name of a piece, an edge or a point changed wherever the file speaks of it: copies of a piece
 * have its edges and points under the same names, so these follow.
 */
public final class Renaming {

  private final String text;
  private final JsonNode job;
  private final List<Mention> mentions;

  private Renaming(String text) {
    this.text = text;
    this.job = YamlTree.of(text).orElse(Json.object());
    this.mentions = Mentions.in(job);
  }

  /**
   * The file with another name of a piece.
   *
   * @param text of a job, or of a file with a style
   * @throws InputException if there is no such piece, or another is called so
   */
  public static String piece(String text, String name, String other) {
    Renaming of = new Renaming(text);
    checkFree(of.pieces().has(other), other);
    return of.renamed(m -> m.kind() == Kind.PIECE && m.name().equals(name), m -> other);
  }

  /**
   * The file with another name of an edge; one that is called after its ends gets its first.
   *
   * @throws InputException if the edge has its name from a block, another file or a rule
   */
  public static String edge(String text, String piece, String name, String other) {
    Renaming of = new Renaming(text);
    String owner = of.owner(Kind.EDGE, piece, name).orElseThrow(() -> notOurs(piece, name));
    Set<String> family = of.family(owner, Kind.EDGE, name);
    for (String member : family) {
      checkFree(of.pieces().path(member).path("edges").has(other), other);
    }
    String next =
        of.renamed(
            m -> m.kind() == Kind.EDGE && m.name().equals(name) && family.contains(m.piece()),
            m -> other);
    return of.defines(owner, Kind.EDGE, name) ? next : of.withEnds(next, owner, name, other);
  }

  /**
   * The file with another name of a point of an outline, or of a mark.
   *
   * @throws InputException if the point has its name from a block or another file
   */
  public static String point(String text, String piece, String name, String other) {
    Renaming of = new Renaming(text);
    String owner = of.owner(Kind.POINT, piece, name).orElseThrow(() -> notOurs(piece, name));
    Set<String> family = of.family(owner, Kind.POINT, name);
    String first = name + " to ";
    String last = " to " + name;
    Predicate<Mention> afterEnds =
        m ->
            m.kind() == Kind.EDGE
                && !of.pieces().path(owner).path("edges").has(m.name())
                && (m.name().startsWith(first) || m.name().endsWith(last));
    return of.renamed(
        m ->
            family.contains(m.piece())
                && (m.kind() == Kind.POINT ? m.name().equals(name) : afterEnds.test(m)),
        m ->
            m.kind() == Kind.POINT
                ? other
                : m.name().startsWith(first)
                    ? other + m.name().substring(name.length())
                    : m.name().substring(0, m.name().length() - name.length()) + other);
  }

  private static void checkFree(boolean taken, String name) {
    if (taken) {
      throw InputException.of(
          "another is called " + Names.shown(name) + " already", "Choose another name");
    }
  }

  private static InputException notOurs(String piece, String name) {
    return InputException.of(
        "%s of %s has its name from what the piece is made of"
            .formatted(Names.shown(name), Names.shown(piece)),
        "Keep it, or rename it where it is drawn");
  }

  private JsonNode pieces() {
    return job.at("/style/pieces");
  }

  private String renamed(Predicate<Mention> which, Function<Mention, String> to) {
    // Inner entries first, since the path to them leads by the names that are changed last.
    List<Mention> all =
        mentions.stream()
            .filter(which)
            .sorted(
                Comparator.comparing(Mention::key)
                    .thenComparing(m -> m.at().size(), Comparator.reverseOrder()))
            .toList();
    String next = text;
    for (Mention m : all) {
      next =
          m.key()
              ? YamlEdit.rename(next, m.at(), to.apply(m))
              : YamlEdit.set(next, m.at(), TextNode.valueOf(m.in().apply(to.apply(m))));
    }
    return next;
  }

  /** Whether the piece itself brings in an edge or a point of this name. */
  private boolean defines(String piece, Kind kind, String name) {
    JsonNode entry = pieces().path(piece);
    if (kind == Kind.EDGE) {
      return entry.path("edges").path(name).has("from") || has(entry.path("alter"), "seam", name);
    }
    return has(entry.path("outline"), "point", name)
        || has(entry.path("alter"), "mark", name)
        || has(entry.path("alter"), "dart", name);
  }

  private static boolean has(JsonNode items, String key, String name) {
    for (JsonNode item : items) {
      if (item.path(key).isValueNode() && item.path(key).asText().equals(name)) {
        return true;
      }
    }
    return false;
  }

  /** The piece that an edge or a point comes from, which is this one or what it was copied from. */
  private Optional<String> owner(Kind kind, String piece, String name) {
    String at = piece;
    for (int i = 0; i <= pieces().size(); i++) {
      boolean afterEnds =
          kind == Kind.EDGE && pieces().path(at).has("outline") && name.contains(" to ");
      if (defines(at, kind, name) || afterEnds) {
        return Optional.of(at);
      }
      Optional<String> origin = Mentions.origin(pieces().path(at));
      if (origin.isEmpty()) {
        return Optional.empty();
      }
      at = origin.get();
    }
    return Optional.empty();
  }

  /** A piece and all that have its edges and points, but for those that bring in their own. */
  private Set<String> family(String owner, Kind kind, String name) {
    Set<String> family = new LinkedHashSet<>(Set.of(owner));
    boolean more = true;
    while (more) {
      more = false;
      for (var piece : pieces().properties()) {
        boolean copy =
            Mentions.origin(piece.getValue()).filter(family::contains).isPresent()
                || taped(piece.getValue(), family);
        if (copy && !defines(piece.getKey(), kind, name)) {
          more |= family.add(piece.getKey());
        }
      }
    }
    return family;
  }

  private static boolean taped(JsonNode piece, Set<String> family) {
    for (JsonNode step : piece.path("alter")) {
      String other = step.path("tape together").path(1).asText();
      if (other.contains(".") && family.contains(other.substring(0, other.indexOf('.')))) {
        return true;
      }
    }
    return false;
  }

  /** With an entry for an edge that is called after its ends, which need names for that. */
  private String withEnds(String next, String piece, String name, String other) {
    JsonNode outline = pieces().path(piece).path("outline");
    for (int i = 0; i < outline.size(); i++) {
      for (int k = 0; k < outline.size(); k++) {
        if ((label(outline, i) + " to " + label(outline, k)).equals(name)) {
          ObjectNode ends = Json.object();
          ends.put("from", label(outline, i)).put("to", label(outline, k));
          String named = withPoint(withPoint(next, piece, outline, i), piece, outline, k);
          return YamlEdit.set(named, List.of("style", "pieces", piece, "edges", other), ends);
        }
      }
    }
    throw notOurs(piece, name);
  }

  /** As an edge without a name calls the point. */
  private static String label(JsonNode outline, int i) {
    JsonNode name = outline.get(i).path("point");
    return name.isValueNode() ? name.asText() : "point " + (i + 1);
  }

  private static String withPoint(String text, String piece, JsonNode outline, int i) {
    JsonNode point = outline.get(i);
    if (point.has("point")) {
      return text;
    }
    ObjectNode named = Json.object();
    named.put("point", label(outline, i));
    if (point.isObject()) {
      named.setAll((ObjectNode) point);
    } else {
      named.set("at", point);
    }
    List<String> at = List.of("style", "pieces", piece, "outline", Integer.toString(i));
    return YamlEdit.set(text, at, named);
  }

  /**
   * Refuses a change after which the pieces are not the same but for their names.
   *
   * @throws InputException if so
   */
  public static void check(Style before, Style after) {
    boolean same =
        before.sizes().equals(after.sizes())
            && before.sizes().stream()
                .allMatch(size -> same(before.pieces(size), after.pieces(size)));
    if (!same || before.seams().size() != after.seams().size()) {
      throw InputException.of(
          "this name stands for more than one thing in the file",
          "Rename it there as text, where each is meant");
    }
  }

  /**
   * What pieces are called otherwise in a style that is the same but for their names, by the names
   * that they had; nothing where more has changed.
   */
  public static Map<String, String> pieces(Style before, Style after) {
    Map<String, String> names = new LinkedHashMap<>();
    if (before.sizes().equals(after.sizes())) {
      for (String size : before.sizes()) {
        List<Piece> old = before.pieces(size);
        List<Piece> now = after.pieces(size);
        if (!same(old, now)) {
          return Map.of();
        }
        for (int i = 0; i < old.size(); i++) {
          names.put(old.get(i).name(), now.get(i).name());
        }
      }
    }
    names.entrySet().removeIf(name -> name.getKey().equals(name.getValue()));
    return names;
  }

  private static boolean same(List<Piece> before, List<Piece> after) {
    boolean same = before.size() == after.size();
    for (int i = 0; same && i < before.size(); i++) {
      Piece one = before.get(i);
      Piece other = after.get(i);
      same =
          one.edges().size() == other.edges().size()
              && one.notches().size() == other.notches().size();
      for (int k = 0; same && k < one.edges().size(); k++) {
        same =
            one.edges().get(k).line().equals(other.edges().get(k).line())
                && one.edges().get(k).allowance().equals(other.edges().get(k).allowance());
      }
    }
    return same;
  }
}
