package ellwand.file.source;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/** Builds a {@link Tree} from a stream of tokens. */
final class TreeBuilder {

  private static final int MAX_DEPTH = 20;

  /** Sentences, which may be long; all other texts are names and values. */
  private static final String NOTES = "notes";

  private static final Pattern LINE_BREAK = Pattern.compile("\\R");
  private static final int MAX_DIGITS = 40;
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final Source source;
  private final JsonFactory format;
  private final boolean placesInLists;
  private final Map<JsonPointer, FileLine> places = new HashMap<>();
  private final List<Problem> problems = new ArrayList<>();
  private JsonParser in;

  TreeBuilder(Source source, JsonFactory format, boolean placesInLists) {
    this.source = source;
    this.format = format;
    this.placesInLists = placesInLists;
  }

  Tree build() {
    JsonNode root;
    try (JsonParser parser = format.createParser(source.text())) {
      in = parser;
      in.nextToken();
      places.put(JsonPointer.empty(), here());
      root = value(JsonPointer.empty(), 0);
      if (in.nextToken() != null) {
        problem("a second document starts here", "Keep to one in a file");
      }
    } catch (JsonProcessingException e) {
      throw new InputException(malformed(e));
    } catch (IOException e) {
      throw new IllegalStateException("a text in memory can be read", e);
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return new Tree(root, places);
  }

  private Problem malformed(JsonProcessingException e) {
    int line = e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNr());
    String what = e.getOriginalMessage().lines().findFirst().orElse("");
    if (e.getCause() instanceof MarkedYAMLException yaml && yaml.getProblem() != null) {
      what = yaml.getProblem();
      line = yaml.getProblemMark() == null ? line : yaml.getProblemMark().getLine() + 1;
    }
    return Problem.of(
            "the file is not well-formed " + format.getFormatName() + " here: " + what,
            "Look at this line and the one above: indent with spaces, put a space after each"
                + " colon and comma, close each bracket and quote")
        .at(file(), line);
  }

  private String file() {
    return source.name();
  }

  private FileLine here() {
    return new FileLine(file(), in.currentTokenLocation().getLineNr());
  }

  private void problem(String what, String remedy) {
    problems.add(Problem.of(what, remedy).at(file(), here().line()));
  }

  private JsonNode value(JsonPointer at, int depth) throws IOException {
    if (depth > MAX_DEPTH) {
      throw new InputException(
          Problem.of("entries are nested too deeply", "A few levels are all that is needed")
              .at(file(), here().line()));
    }
    if (in instanceof YAMLParser yaml && yaml.isCurrentAlias()) {
      problem(
          "aliases such as *" + Names.shown(in.getText()) + " are not used in job files",
          "Write the value out, or put quotes round it if it is a text");
    }
    JsonToken token = in.currentToken();
    if (token == null) {
      return NODES.nullNode();
    }
    return switch (token) {
      case START_OBJECT -> object(at, depth);
      case START_ARRAY -> array(at, depth);
      case VALUE_NUMBER_INT -> whole(in.getText());
      case VALUE_NUMBER_FLOAT -> fraction(in.getText(), in.getDoubleValue());
      case VALUE_TRUE -> NODES.booleanNode(true);
      case VALUE_FALSE -> NODES.booleanNode(false);
      case VALUE_NULL -> NODES.nullNode();
      default -> text(at, in.getText());
    };
  }

  /** A name that goes on over lines could pass for lines of ours wherever it is shown. */
  private JsonNode text(JsonPointer at, String text) {
    if (!at.matchesProperty(NOTES)) {
      oneLine(text);
    }
    return NODES.textNode(text);
  }

  private void oneLine(String text) {
    if (LINE_BREAK.matcher(text).find()) {
      problem("'" + Names.shown(text) + "' goes on over several lines", "Write it on one line");
    }
  }

  /** What is beyond all numbers stays as it is written, to be refused as that. */
  private static JsonNode fraction(String text, double number) {
    return Double.isInfinite(number) ? NODES.textNode(text) : NODES.numberNode(number);
  }

  /** Turning many digits into a number takes long, and nothing measures so much. */
  private JsonNode whole(String text) throws IOException {
    return text.length() > MAX_DIGITS
        ? NODES.textNode(text)
        : NODES.numberNode(in.getBigIntegerValue());
  }

  private ObjectNode object(JsonPointer at, int depth) throws IOException {
    ObjectNode object = NODES.objectNode();
    while (in.nextToken() != JsonToken.END_OBJECT) {
      String key = in.currentName();
      oneLine(key);
      JsonPointer entry = at.appendProperty(key);
      FileLine before = places.putIfAbsent(entry, here());
      if (before != null) {
        problem(
            "'" + Names.shown(key) + "' stands here a second time, after line " + before.line(),
            "Give it another name, or take one of the two out");
      }
      in.nextToken();
      if (before == null) {
        object.set(key, value(entry, depth + 1));
      } else {
        in.skipChildren();
      }
    }
    return object;
  }

  private ArrayNode array(JsonPointer at, int depth) throws IOException {
    ArrayNode array = NODES.arrayNode();
    while (in.nextToken() != JsonToken.END_ARRAY) {
      JsonPointer entry = at.appendIndex(array.size());
      if (placesInLists || in.currentToken() == JsonToken.START_OBJECT) {
        places.put(entry, here());
      }
      array.add(value(entry, depth + 1));
    }
    return array;
  }
}
