package ellwand.file.source;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.networknt.schema.JsonNodePath;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.PathType;
import com.networknt.schema.SchemaValidatorsConfig;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import ellwand.problem.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Where a job differs from the shape that the JSON Schema describes.
 *
 * @param wrong every entry with something wrong
 * @param problems in the order of the lines
 */
public record JobShape(List<JsonPointer> wrong, List<Problem> problems) {

  private static final JsonNode SCHEMA_TEXT = schemaText();

  private static final JsonSchema SCHEMA =
      JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
          .getSchema(
              SCHEMA_TEXT,
              SchemaValidatorsConfig.builder().pathType(PathType.JSON_POINTER).build());

  private static JsonNode schemaText() {
    try (InputStream in = JobShape.class.getResourceAsStream("/ellwand/job.schema.json")) {
      return new ObjectMapper().readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Compares a job with its schema. */
  public static JobShape of(Sheet sheet) {
    List<JsonPointer> wrong = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (ValidationMessage message : SCHEMA.validate(sheet.root())) {
      JsonPointer at = pointer(message.getInstanceLocation());
      wrong.add(at);
      JsonPointer line =
          message.getType().equals("additionalProperties")
              ? at.appendProperty(message.getProperty())
              : at;
      problems.add(
          JobWords.named(
              ShapeWords.problem(message, at, rule(message), listRule(message), sheet.root()),
              sheet,
              line));
    }
    problems.sort(Comparator.comparingInt(Problem::line));
    return new JobShape(wrong, problems);
  }

  /** The part of the schema with the keyword by which a message complains. */
  private static JsonNode rule(ValidationMessage message) {
    return SCHEMA_TEXT.at(pointer(message.getSchemaLocation().getFragment().getParent()));
  }

  /** The part that holds this one as what stands in a list; missing if none does. */
  private static JsonNode listRule(ValidationMessage message) {
    JsonNodePath rule = message.getSchemaLocation().getFragment().getParent();
    return "items".equals(rule.getElement(-1))
        ? SCHEMA_TEXT.at(pointer(rule.getParent()))
        : MissingNode.getInstance();
  }

  /** Whether the entry and all in it are as they should be. */
  public boolean holds(Spot spot) {
    return wrong.stream().noneMatch(w -> within(w, spot.at()));
  }

  private static boolean within(JsonPointer inner, JsonPointer outer) {
    for (JsonPointer p = inner; p != null; p = p.head()) {
      if (p.equals(outer)) {
        return true;
      }
    }
    return false;
  }

  private static JsonPointer pointer(JsonNodePath path) {
    JsonPointer pointer = JsonPointer.empty();
    for (int i = 0; i < path.getNameCount(); i++) {
      Object element = path.getElement(i);
      pointer =
          element instanceof Integer index
              ? pointer.appendIndex(index)
              : pointer.appendProperty(element.toString());
    }
    return pointer;
  }
}
