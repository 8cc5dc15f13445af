package ellwand.file.source;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.ValidationMessage;
import ellwand.problem.Problem;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/** Says in plain words where a job differs from its schema. */
final class ShapeWords {

  private static final Map<String, String> KINDS =
      Map.of(
          "string", "a text",
          "number", "a number",
          "integer", "a whole number",
          "boolean", "true or false",
          "array", "a list",
          "object", "a group of entries");

  private ShapeWords() {}

  /**
   * The problem that a message of the schema stands for.
   *
   * @param at the entry concerned
   * @param known the keys that it may have, if it is a group of entries
   */
  static Problem problem(ValidationMessage message, JsonPointer at, List<String> known) {
    JsonNode schema = message.getSchemaNode();
    String entry = entry(at);
    return switch (message.getType()) {
      case "additionalProperties" -> unknown(Names.shown(message.getProperty()), entry, known);
      case "required" -> Problem.of(entry + " has no " + message.getProperty() + ":", "Add it");
      case "type" ->
          Problem.of(
              entry + " should be " + kinds(schema) + ", not " + found(message.getInstanceNode()),
              "Compare it with one of the sample jobs");
      case "enum" -> notAmong(message, entry, texts(schema));
      case "const" ->
          Problem.of(
              entry + " must be " + schema.asText() + ", the only version of the job format",
              "Write ellwand: 1");
      case "minItems", "maxItems", "minProperties", "maxProperties" -> count(message, entry);
      case "uniqueItems" -> Problem.of(entry + " says the same twice", "Say it once");
      case "minLength" -> Problem.of(entry + " is empty", "Write something, or leave it out");
      case "minimum", "maximum" ->
          Problem.of(
              entry + " cannot be " + found(message.getInstanceNode()),
              "Write a number that is at "
                  + (message.getType().equals("minimum") ? "least " : "most ")
                  + schema.asText());
      default -> Problem.of(entry + " is not right: " + message.getMessage(), "Correct it");
    };
  }

  private static Problem unknown(String key, String entry, List<String> known) {
    return Problem.of(
        entry + " has no entry called " + key + ":",
        !key.isEmpty() && Character.isDigit(key.charAt(0))
            ? "If it belongs to the number before it, write a point and no comma: 0.5 m"
            : Spelling.nearest(key, known)
                .map(k -> "Perhaps " + k + ": is meant")
                .orElse("Use " + String.join(", ", known)));
  }

  private static Problem count(ValidationMessage message, String entry) {
    String limit = message.getType().startsWith("min") ? "at least " : "at most ";
    return Problem.of(
        entry
            + " has "
            + message.getInstanceNode().size()
            + " entries, not "
            + limit
            + message.getSchemaNode().asText(),
        "A place is [x, y], a curve has two control points, what is empty may be left out");
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
  private static String entry(JsonPointer at) {
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
    return last.mayMatchElement() && at.head() != null && !at.head().matches()
        ? "number " + (last.getMatchingIndex() + 1) + " of " + entry(at.head())
        : last.getMatchingProperty() + ":";
  }
}
