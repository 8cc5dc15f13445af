package ellwand.file;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.JacksonYAMLParseException;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import ellwand.pattern.InputException;
import ellwand.pattern.Problem;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.yaml.snakeyaml.LoaderOptions;

/**
 * What a YAML file says, and on which line it says it.
 *
 * @param lines line of each entry by JSON pointer; a key counts, not its value
 */
record YamlTree(JsonNode root, Map<JsonPointer, Place> places) {

  private static final int MAX_DEPTH = 20;
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  /**
   * Builds the tree.
   *
   * @throws InputException if it is no YAML, names a key twice, uses anchors, or is too deep
   */
  static YamlTree of(Source source) {
    return new Builder(source).build();
  }

  private static final class Builder {
    private final Source source;
    private final String file;
    private final Map<JsonPointer, Place> places = new HashMap<>();
    private final List<Problem> problems = new ArrayList<>();
    private YAMLParser in;

    Builder(Source source) {
      this.source = source;
      this.file = source.path().toString();
    }

    YamlTree build() {
      LoaderOptions options = new LoaderOptions();
      options.setCodePointLimit(Source.MAX_BYTES);
      YAMLFactory yaml = YAMLFactory.builder().loaderOptions(options).build();
      JsonNode root;
      try (YAMLParser parser = yaml.createParser(source.text())) {
        in = parser;
        in.nextToken();
        root = value(JsonPointer.empty());
        if (in.nextToken() != null) {
          problem("a second document starts here (---)", "Keep one job in a file");
        }
      } catch (JacksonYAMLParseException e) {
        throw new InputException(notYaml(e));
      } catch (IOException e) {
        throw new InputException(
            Problem.of(
                    "this is no YAML: " + e.getMessage().lines().findFirst().orElse(""),
                    "Compare it with one of the sample jobs")
                .at(file, line()));
      }
      if (!problems.isEmpty()) {
        throw new InputException(problems);
      }
      return new YamlTree(root, places);
    }

    private Problem notYaml(JacksonYAMLParseException e) {
      int line = e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNr());
      String what = e.getOriginalMessage().lines().findFirst().orElse("");
      return Problem.of(
              "the file is not well-formed YAML here: " + what,
              "Look at this line and the one above: indent with spaces, put a space after each"
                  + " colon and comma, close each bracket and quote")
          .at(file, line);
    }

    private int line() {
      return in.currentTokenLocation().getLineNr();
    }

    private void problem(String what, String remedy) {
      problems.add(Problem.of(what, remedy).at(file, line()));
    }

    private JsonNode value(JsonPointer at) throws IOException {
      places.putIfAbsent(at, new Place(file, line()));
      if (in.isCurrentAlias() || in.getObjectId() != null) {
        problem(
            "anchors and aliases (& and *) are not used in job files",
            "Write the value out, or put quotes round it if it is a text");
      }
      JsonToken token = in.currentToken();
      if (token == JsonToken.START_OBJECT || token == JsonToken.START_ARRAY) {
        if (depth(at) >= MAX_DEPTH) {
          throw new InputException(
              Problem.of("entries are nested too deeply", "No job needs more than a few levels")
                  .at(file, line()));
        }
        return token == JsonToken.START_OBJECT ? object(at) : array(at);
      }
      return switch (token) {
        case VALUE_NUMBER_INT -> NODES.numberNode(in.getBigIntegerValue());
        case VALUE_NUMBER_FLOAT -> NODES.numberNode(in.getDoubleValue());
        case VALUE_TRUE -> NODES.booleanNode(true);
        case VALUE_FALSE -> NODES.booleanNode(false);
        case VALUE_NULL -> NODES.nullNode();
        default -> NODES.textNode(in.getText());
      };
    }

    private static int depth(JsonPointer at) {
      int depth = 0;
      for (JsonPointer p = at; !p.matches(); p = p.tail()) {
        depth++;
      }
      return depth;
    }

    private ObjectNode object(JsonPointer at) throws IOException {
      ObjectNode object = NODES.objectNode();
      while (in.nextToken() != JsonToken.END_OBJECT) {
        String key = in.currentName();
        JsonPointer entry = at.appendProperty(key);
        Place before = places.putIfAbsent(entry, new Place(file, line()));
        if (before != null) {
          problem(
              "'" + key + "' stands here a second time, after line " + before.line(),
              "Give it another name, or take one of the two out");
        }
        in.nextToken();
        JsonNode value = value(entry);
        if (before == null) {
          object.set(key, value);
        }
      }
      return object;
    }

    private ArrayNode array(JsonPointer at) throws IOException {
      ArrayNode array = NODES.arrayNode();
      while (in.nextToken() != JsonToken.END_ARRAY) {
        array.add(value(at.appendIndex(array.size())));
      }
      return array;
    }
  }
}
