package ellwand.file.source;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.ValidationMessage;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/** Says in plain words where a job differs from its schema. */
final class ShapeWords {

  private static final Map<String, String> KINDS =
      Map.of(
          "string", "one name",
          "number", "a number",
          "integer", "a whole number",
          "boolean", "true or false",
          "array", "a list, each of its lines beginning with a hyphen",
          "object", "entries below it, set in, each with a name and a colon");

  /** What words of the cutting table are called in a job. */
  private static final Map<String, String> MEANT =
      Map.of("nap", "direction", "seam allowance", "allowance", "quantity", "cut");

  private ShapeWords() {}

  /**
   * The problem that a message of the schema stands for.
   *
   * @param at the entry concerned
   * @param rule the part of the schema that the entry does not keep to
   * @param list the part that is about the list which the entry is a line of; missing if none is
   * @param root of the job
   */
  static Problem problem(
      ValidationMessage message, JsonPointer at, JsonNode rule, JsonNode list, JsonNode root) {
    JsonNode schema = message.getSchemaNode();
    String entry = entry(at, root);
    return switch (message.getType()) {
      case "additionalProperties" -> unknown(message, entry, keys(rule));
      case "required" -> missing(entry, message.getProperty(), rule);
      case "type" -> {
        JsonNode node = message.getInstanceNode();
        yield example(rule).isEmpty() && example(list).isPresent() && !node.isBoolean()
            ? Problem.of(
                entry(at.head(), root) + " cannot be a list with " + found(node) + " in it",
                example(list).orElseThrow())
            : Problem.of(
                entry + " cannot be " + found(node),
                example(rule).orElseGet(() -> otherwise(node, schema)));
      }
      case "enum" -> notAmong(message, entry, texts(schema));
      case "const" ->
          Problem.of(
              entry + " must be " + schema.asText() + ", the only version of the job format",
              "Write ellwand: 1");
      case "minItems", "maxItems", "minProperties", "maxProperties" -> count(message, entry, rule);
      case "uniqueItems" -> Problem.of(entry + " names the same twice", "Name it once");
      case "minLength" ->
          Problem.of(entry + " is empty", example(rule).orElse("Write something, or leave it out"));
      case "minimum", "maximum" ->
          Problem.of(
              entry + " cannot be " + found(message.getInstanceNode()),
              "Write a number that is at "
                  + (message.getType().equals("minimum") ? "least " : "most ")
                  + schema.asText());
      default -> throw new IllegalStateException("the schema has no " + message.getType());
    };
  }

  private static Problem unknown(ValidationMessage message, String entry, List<String> known) {
    String key = Names.shown(message.getProperty());
    // What YAML makes of {along: 4,5 %}: an entry without anything after it.
    JsonNode value = message.getInstanceNode().path(message.getProperty());
    boolean decimals =
        value.isValueNode()
            && value.asText("").isEmpty()
            && !key.isEmpty()
            && Character.isDigit(key.charAt(0));
    return Problem.of(
        entry + " has no entry called " + key + ":",
        decimals
            ? "If it belongs to the number before it, write a point and no comma: 0.5 m"
            : Optional.ofNullable(MEANT.get(key))
                .filter(known::contains)
                .or(() -> Spelling.nearest(key, known))
                .map(k -> "Perhaps " + k + ": is meant")
                .orElse("Use " + String.join(", ", known)));
  }

  private static List<String> keys(JsonNode rule) {
    List<String> keys = new ArrayList<>();
    rule.path("properties").fieldNames().forEachRemaining(keys::add);
    return keys;
  }

  private static Problem missing(String entry, String key, JsonNode rule) {
    return Problem.of(
        entry + " has no " + key + ":",
        texts(rule.path("properties").path(key).path("examples")).stream()
            .findFirst()
            .map(one -> "Add it, for example " + key + ": " + one)
            .orElse("Add it"));
  }

  private static Problem count(ValidationMessage message, String entry, JsonNode rule) {
    int found = message.getInstanceNode().size();
    Optional<String> example = example(rule);
    if (found == 0) {
      return Problem.of(
          entry + " is empty", example.orElse("Write what belongs to it, or leave it out"));
    }
    boolean few = message.getType().startsWith("min");
    boolean exactly = rule.has("minItems") && rule.path("minItems").equals(rule.path("maxItems"));
    return Problem.of(
        "%s has %d %s, but %s %s"
            .formatted(
                entry,
                found,
                found == 1 ? "entry" : "entries",
                exactly ? "needs" : few ? "needs at least" : "takes at most",
                message.getSchemaNode().asText()),
        example.orElse(few ? "Add what is missing" : "Leave some out"));
  }

  /** What the schema has as examples. */
  private static Optional<String> example(JsonNode rule) {
    List<String> examples = texts(rule.path("examples"));
    int last = examples.size() - 1;
    return switch (examples.size()) {
      case 0 -> Optional.empty();
      case 1 -> Optional.of("Write for example " + examples.get(0));
      default ->
          Optional.of(
              "Write for example "
                  + String.join(", ", examples.subList(0, last))
                  + " or "
                  + examples.get(last));
    };
  }

  private static Problem notAmong(ValidationMessage message, String entry, List<String> known) {
    String text = Names.shown(message.getInstanceNode().asText());
    return Problem.of(
        entry + " cannot be '" + text + "'",
        Spelling.nearest(text, known)
            .map(k -> "Perhaps " + k + " is meant")
            .orElse("Use " + String.join(", ", known)));
  }

  private static List<String> texts(JsonNode list) {
    return StreamSupport.stream(list.spliterator(), false).map(JsonNode::asText).toList();
  }

  /** What to write where the schema has no example. */
  private static String otherwise(JsonNode node, JsonNode types) {
    boolean names = types.asText().equals("string") || texts(types).contains("string");
    return names && (node.isBoolean() || node.isNumber())
        ? "Put it in quotes if it is a name"
        : "Write " + kinds(types);
  }

  private static String kinds(JsonNode types) {
    return types.isArray()
        ? texts(types).stream().map(KINDS::get).collect(Collectors.joining(" or "))
        : KINDS.get(types.asText());
  }

  private static String found(JsonNode node) {
    return switch (node.getNodeType()) {
      case OBJECT -> "a group of entries";
      case ARRAY -> "a list";
      case BOOLEAN -> "'" + node.asText() + "'";
      case NULL, MISSING -> "empty";
      default -> "'" + Names.shown(node.asText()) + "'";
    };
  }

  /** The entry's key, or its number in a list: {@code width:}, {@code number 3 of outline:}. */
  private static String entry(JsonPointer at, JsonNode root) {
    if (at.matches()) {
      return "the job";
    }
    List<String> keys = JobWords.keys(at);
    if (keys.size() == 4 && keys.get(0).equals("order") && keys.get(1).equals("colours")) {
      return "size %s of colour %s".formatted(Names.shown(keys.get(3)), Names.shown(keys.get(2)));
    }
    boolean pieceOrEdge = keys.size() == 3 || keys.size() == 5 && keys.get(3).equals("edges");
    if (pieceOrEdge && keys.get(1).equals("pieces")) {
      return "it";
    }
    JsonPointer last = at.last();
    return root.at(at.head()).isArray()
        ? "number " + (last.getMatchingIndex() + 1) + " of " + entry(at.head(), root)
        : last.getMatchingProperty() + ":";
  }
}
