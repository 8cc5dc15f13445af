package ellwand.file.source;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import ellwand.problem.InputException;
import java.util.Map;
import org.yaml.snakeyaml.LoaderOptions;

/**
 * What a file says, and where it says it.
 *
 * @param places of the entries by JSON pointer; of an entry with a key, where the key stands
 */
public record Tree(JsonNode root, Map<JsonPointer, FileLine> places) {

  /**
   * Builds the tree of a YAML file.
   *
   * @throws InputException if it is no YAML, names a key twice, uses aliases, or is too deep
   */
  public static Tree ofYaml(Source source) {
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(source.text().length() + 1);
    return new TreeBuilder(source, YAMLFactory.builder().loaderOptions(options).build(), true)
        .build();
  }

  /**
   * Builds the tree of a JSON file; lists of numbers have no places of their own.
   *
   * @throws InputException if it is no JSON, names a key twice or is too deep
   */
  public static Tree ofJson(Source source) {
    return new TreeBuilder(source, new JsonFactory(), false).build();
  }
}
