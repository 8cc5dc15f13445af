package ellwand.file.job;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Everywhere in a job that a piece, an edge or a point of one is spoken of. What is no name at all
 * is not listed; whether a name names anything is not asked.
 */
final class Mentions {

  /** What a name may be of. */
  enum Kind {
    PIECE,
    EDGE,
    POINT
  }

  /**
   * One of them.
   *
   * @param at the entry, from the outermost inward; for a key the path ends with it
   * @param key whether the entry's own name is meant, not what it says
   * @param piece whose it is; the piece itself if that is what is named
   * @param in what the entry says with another name in its place
   */
  record Mention(
      List<String> at,
      boolean key,
      Kind kind,
      String piece,
      String name,
      UnaryOperator<String> in) {}

  private static final Pattern OF_PIECE =
      Pattern.compile("(\\s*(?:\\d+\\s*x\\s+)?)([^.@]+?)\\.([^.@]+?)(\\s*(?:@.*)?)");
  private static final Pattern ON_EDGE = Pattern.compile("([^@]+?)(\\s*(?:@.*)?)");
  private static final Pattern MANNER = Pattern.compile("((?:square to|along)\\s+)(.+)");

  /** Keys of a step that name edges; {@code to} and {@code at} depend on what is done. */
  private static final Set<String> EDGES =
      Set.of(
          "on",
          "along",
          "square to",
          "meets",
          "redraw",
          "extend",
          "unfold",
          "facing",
          "true",
          "seam",
          "across",
          "tape together");

  private static final Set<String> POINTS =
      Set.of("mark", "from", "towards", "between", "where", "through", "point", "folded towards");
  private static final Set<String> DARTS = Set.of("dart", "move dart", "close dart");

  private final List<Mention> found = new ArrayList<>();

  private Mentions() {}

  /** All of a job's, which has its style in itself. */
  static List<Mention> in(JsonNode job) {
    Mentions mentions = new Mentions();
    mentions.style(job.path("style"));
    mentions.grade(job.at("/sizes/grade"));
    return mentions.found;
  }

  private void style(JsonNode style) {
    ofPieces(style.path("seams"), List.of("style", "seams"));
    ofPieces(style.path("match"), List.of("style", "match"));
    for (Map.Entry<String, JsonNode> trim : style.path("trims").properties()) {
      for (String key : List.of("length", "each")) {
        ofPieces(trim.getValue().path(key), List.of("style", "trims", trim.getKey(), key));
      }
    }
    for (Map.Entry<String, JsonNode> piece : style.path("pieces").properties()) {
      List<String> at = List.of("style", "pieces", piece.getKey());
      key(at, Kind.PIECE, piece.getKey(), piece.getKey());
      piece(piece.getKey(), piece.getValue(), at);
    }
  }

  private void grade(JsonNode grade) {
    for (Map.Entry<String, JsonNode> piece : grade.properties()) {
      List<String> at = List.of("sizes", "grade", piece.getKey());
      key(at, Kind.PIECE, piece.getKey(), piece.getKey());
      for (Map.Entry<String, JsonNode> point : piece.getValue().properties()) {
        key(with(at, point.getKey()), Kind.POINT, piece.getKey(), point.getKey());
      }
    }
  }

  private void piece(String name, JsonNode piece, List<String> at) {
    start(piece.path("from"), with(at, "from"));
    for (String rule : StyleReader.RULES) {
      ofPieces(piece.path(rule).path("from"), with(with(at, rule), "from"));
    }
    ofPieces(piece.path("block").path("armhole"), with(with(at, "block"), "armhole"));
    for (Map.Entry<String, JsonNode> edge : piece.path("edges").properties()) {
      List<String> here = with(with(at, "edges"), edge.getKey());
      key(here, Kind.EDGE, name, edge.getKey());
      for (String end : List.of("from", "to")) {
        whole(edge.getValue().path(end), with(here, end), Kind.POINT, name);
      }
    }
    for (int i = 0; i < piece.path("outline").size(); i++) {
      List<String> here = with(with(with(at, "outline"), Integer.toString(i)), "point");
      whole(piece.path("outline").get(i).path("point"), here, Kind.POINT, name);
    }
    whole(piece.path("fold"), with(at, "fold"), Kind.EDGE, name);
    matched(piece.path("place").path("at"), with(with(at, "place"), "at"), name, ON_EDGE, 1);
    for (int i = 0; i < piece.path("notches").size(); i++) {
      List<String> here = with(with(with(at, "notches"), Integer.toString(i)), "edge");
      whole(piece.path("notches").get(i).path("edge"), here, Kind.EDGE, name);
    }
    for (int i = 0; i < piece.path("alter").size(); i++) {
      List<String> here = with(with(at, "alter"), Integer.toString(i));
      step(name, piece.path("alter").get(i), here);
    }
  }

  /** A piece of another file has its name there. */
  private void start(JsonNode from, List<String> at) {
    if (from.isObject() && !from.has("file")) {
      named(from.path("piece"), with(at, "piece"));
    } else if (!from.isObject()) {
      named(from, at);
    }
  }

  private void named(JsonNode node, List<String> at) {
    if (node.isValueNode()) {
      found.add(new Mention(at, false, Kind.PIECE, node.asText(), node.asText(), n -> n));
    }
  }

  private void step(String piece, JsonNode step, List<String> at) {
    for (Map.Entry<String, JsonNode> detail : step.properties()) {
      String key = detail.getKey();
      List<String> here = with(at, key);
      JsonNode said = detail.getValue();
      boolean spread = step.has("spread");
      if (key.equals("spread") || (key.equals("to") && spread)) {
        // Edges where it is slashed from edge to edge, marks where it opens at one place.
        each(said, here, step.has("slashes") ? Kind.EDGE : Kind.POINT, piece);
      } else if (key.equals("across") && said.size() == 2) {
        // The second is the other piece's.
        whole(said.get(0), with(here, "0"), Kind.EDGE, piece);
        String other = step.path("to").asText();
        whole(said.get(1), with(here, "1"), Kind.EDGE, other.replaceFirst("\\..*", ""));
      } else if (EDGES.contains(key)) {
        each(said, here, Kind.EDGE, piece);
        ofPieces(said, here);
      } else if (POINTS.contains(key) || DARTS.contains(key)) {
        each(said, here, Kind.POINT, piece);
      } else if (key.equals("to")) {
        each(said, here, step.has("true") ? Kind.EDGE : Kind.POINT, piece);
        ofPieces(said, here);
      } else if (key.equals("at") && (step.has("true") || isLengthened(step))) {
        each(said, here, Kind.POINT, piece);
      } else if (key.equals("leaves") || key.equals("arrives")) {
        matched(said, here, piece, MANNER, 2);
      }
    }
  }

  private static boolean isLengthened(JsonNode step) {
    return step.has("lengthen") || step.has("shorten");
  }

  private void key(List<String> at, Kind kind, String piece, String name) {
    found.add(new Mention(at, true, kind, piece, name, n -> n));
  }

  private void whole(JsonNode node, List<String> at, Kind kind, String piece) {
    if (node.isValueNode()) {
      found.add(new Mention(at, false, kind, piece, node.asText(), n -> n));
    }
  }

  /** One name, or a list of them. */
  private void each(JsonNode node, List<String> at, Kind kind, String piece) {
    whole(node, at, kind, piece);
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      whole(node.get(i), with(at, Integer.toString(i)), kind, piece);
    }
  }

  /** An edge in part of a text. */
  private void matched(JsonNode node, List<String> at, String piece, Pattern words, int group) {
    Matcher matcher = words.matcher(node.asText());
    if (node.isTextual() && matcher.matches()) {
      String text = node.asText();
      int start = matcher.start(group);
      int end = matcher.end(group);
      found.add(
          new Mention(
              at,
              false,
              Kind.EDGE,
              piece,
              matcher.group(group),
              n -> text.substring(0, start) + n + text.substring(end)));
    }
  }

  /** Every {@code piece.edge} in an entry, however deep. */
  private void ofPieces(JsonNode node, List<String> at) {
    if (node.isTextual()) {
      ofPiece(node.asText(), at);
    }
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      ofPieces(node.get(i), with(at, Integer.toString(i)));
    }
    for (String key : List.of("join", "points")) {
      if (node.path(key).isArray()) {
        ofPieces(node.path(key), with(at, key));
      }
    }
  }

  private void ofPiece(String text, List<String> at) {
    Matcher matcher = OF_PIECE.matcher(text);
    if (!matcher.matches()) {
      return;
    }
    String piece = matcher.group(2);
    String before = matcher.group(1);
    String after = matcher.group(4);
    String edge = matcher.group(3);
    found.add(
        new Mention(at, false, Kind.PIECE, piece, piece, n -> before + n + "." + edge + after));
    found.add(
        new Mention(at, false, Kind.EDGE, piece, edge, n -> before + piece + "." + n + after));
  }

  private static List<String> with(List<String> at, String name) {
    List<String> all = new ArrayList<>(at);
    all.add(name);
    return List.copyOf(all);
  }

  /** The piece of the same job that another starts from, if it does. */
  static Optional<String> origin(JsonNode piece) {
    JsonNode from = piece.path("from");
    JsonNode name = from.isObject() ? from.path("piece") : from;
    return name.isValueNode() && !from.has("file") ? Optional.of(name.asText()) : Optional.empty();
  }
}
