package ellwand.file.source;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.problem.InputException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** What a text in YAML says, without its places. */
public final class YamlTree {

  private YamlTree() {}

  /** Its entries; nothing if it cannot be read. */
  public static Optional<ObjectNode> of(String text) {
    try {
      Source source = new Source("", text.getBytes(StandardCharsets.UTF_8), text);
      return Tree.ofYaml(source).root() instanceof ObjectNode root
          ? Optional.of(root)
          : Optional.empty();
    } catch (InputException e) {
      return Optional.empty();
    }
  }

  /** What stands at a place, from the outermost entry inward; items of a list go by number. */
  public static Optional<JsonNode> at(String text, List<String> place) {
    Optional<JsonNode> node = of(text).map(root -> root);
    for (String name : place) {
      node =
          node.map(
              n ->
                  n.isArray() && name.matches("\\d{1,6}")
                      ? n.get(Integer.parseInt(name))
                      : n.get(name));
    }
    return node.filter(n -> !n.isNull());
  }
}
