package ellwand.file.source;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * YAML as Ellwand writes it: what is short and holds no group stands on one line in brackets, no
 * two runs differ.
 */
public final class Yaml {

  private static final int LINE = 90;

  private Yaml() {}

  /** The bytes of a YAML file; its first entries stand under each other. */
  public static byte[] bytes(JsonNode root) {
    DumperOptions options = new DumperOptions();
    options.setWidth(Integer.MAX_VALUE);
    options.setSplitLines(false);
    options.setAllowUnicode(true);
    options.setIndicatorIndent(2);
    options.setIndentWithIndicator(true);
    StringWriter out = new StringWriter();
    new org.yaml.snakeyaml.Yaml(options).serialize(node(root, FlowStyle.BLOCK), out);
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** A value on one line, as it can stand after a name or in brackets. */
  public static String line(JsonNode value) {
    SequenceNode alone = new SequenceNode(Tag.SEQ, List.of(flow(value)), FlowStyle.FLOW);
    DumperOptions options = new DumperOptions();
    options.setWidth(Integer.MAX_VALUE);
    options.setSplitLines(false);
    options.setAllowUnicode(true);
    StringWriter out = new StringWriter();
    new org.yaml.snakeyaml.Yaml(options).serialize(alone, out);
    String line = out.toString().strip();
    return line.substring(1, line.length() - 1);
  }

  private static Node flow(JsonNode json) {
    if (json.isObject()) {
      List<NodeTuple> entries = new ArrayList<>();
      json.properties()
          .forEach(
              e -> entries.add(new NodeTuple(scalar(Tag.STR, e.getKey()), flow(e.getValue()))));
      return new MappingNode(Tag.MAP, entries, FlowStyle.FLOW);
    }
    if (json.isArray()) {
      List<Node> items = new ArrayList<>();
      json.forEach(item -> items.add(flow(item)));
      return new SequenceNode(Tag.SEQ, items, FlowStyle.FLOW);
    }
    return node(json, FlowStyle.FLOW);
  }

  private static Node node(JsonNode json) {
    boolean oneLine = json.toString().length() <= LINE && !holdsGroup(json);
    return node(json, oneLine ? FlowStyle.FLOW : FlowStyle.BLOCK);
  }

  private static boolean holdsGroup(JsonNode json) {
    for (JsonNode inner : json) {
      if (inner.isObject() || holdsGroup(inner)) {
        return true;
      }
    }
    return false;
  }

  private static Node node(JsonNode json, FlowStyle style) {
    if (json.isObject()) {
      List<NodeTuple> entries = new ArrayList<>();
      json.fields()
          .forEachRemaining(
              entry ->
                  entries.add(
                      new NodeTuple(scalar(Tag.STR, entry.getKey()), node(entry.getValue()))));
      return new MappingNode(Tag.MAP, entries, style);
    }
    if (json.isArray()) {
      List<Node> items = new ArrayList<>();
      json.forEach(item -> items.add(node(item)));
      return new SequenceNode(Tag.SEQ, items, style);
    }
    if (json.isBoolean()) {
      return scalar(Tag.BOOL, json.asText());
    }
    if (json.isNumber()) {
      String text = json.decimalValue().toPlainString();
      return scalar(text.contains(".") ? Tag.FLOAT : Tag.INT, text);
    }
    return scalar(Tag.STR, json.asText());
  }

  private static ScalarNode scalar(Tag tag, String text) {
    return new ScalarNode(tag, text, null, null, ScalarStyle.PLAIN);
  }
}
