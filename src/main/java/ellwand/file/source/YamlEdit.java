package ellwand.file.source;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import ellwand.problem.InputException;
import java.util.List;
import java.util.Optional;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.CollectionNode;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * A text in YAML changed at one place: comments, order and all other lines stay as they are. Places
 * are entries from the outermost inward; items of a list go by their number from 0.
 */
public final class YamlEdit {

  private static final int MOST_LETTERS = 5_000_000;

  private final String text;
  private final Node root;

  private YamlEdit(String text) {
    this.text = text;
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(MOST_LETTERS);
    options.setNestingDepthLimit(50);
    try {
      root = new org.yaml.snakeyaml.Yaml(options).compose(new java.io.StringReader(text));
    } catch (YAMLException e) {
      throw InputException.of("the file is not well-formed YAML", "Mend it as text first");
    }
    if (!(root instanceof MappingNode)) {
      throw InputException.of("the file holds no entries", "Mend it as text first");
    }
  }

  /**
   * The text with a value at a place, in place of what stands there; entries that it needs round it
   * are made.
   *
   * @param at the number of a list's items stands for a new one at its end
   * @throws InputException if there is no such place, or the text cannot be read
   */
  public static String set(String text, List<String> at, JsonNode value) {
    return new YamlEdit(text).set(at, value);
  }

  /**
   * The text without what stands at a place.
   *
   * @throws InputException if there is nothing, or the text cannot be read
   */
  public static String remove(String text, List<String> at) {
    return new YamlEdit(text).remove(at);
  }

  /**
   * The text with another name of an entry, which stays where it is.
   *
   * @throws InputException if there is no such entry, or one that is called so beside it
   */
  public static String rename(String text, List<String> at, String name) {
    return new YamlEdit(text).rename(at, name);
  }

  private String rename(List<String> at, String name) {
    Node parent = parent(at);
    NodeTuple entry =
        parent instanceof MappingNode map
            ? tuple(map, at.get(at.size() - 1)).orElseThrow(() -> noPlace(at))
            : null;
    if (entry == null) {
      throw noPlace(at);
    }
    if (child(parent, name).isPresent()) {
      throw InputException.of(
          "there is an entry " + Names.shown(name) + " already", "Choose another name");
    }
    Node key = entry.getKeyNode();
    return spliced(start(key), end(key), Yaml.line(TextNode.valueOf(name)));
  }

  private Node parent(List<String> at) {
    Node parent = root;
    for (String name : at.subList(0, at.size() - 1)) {
      parent = child(parent, name).orElseThrow(() -> noPlace(at));
    }
    return parent;
  }

  private String set(List<String> at, JsonNode value) {
    Node node = root;
    for (int depth = 0; depth < at.size(); depth++) {
      Optional<Node> next = child(node, at.get(depth));
      if (next.isEmpty()) {
        return added(node, at.get(depth), wrapped(value, at.subList(depth + 1, at.size())));
      }
      if (nothing(next.get()) && depth < at.size() - 1) {
        return replaced(
            node, at.get(depth), next.get(), wrapped(value, at.subList(depth + 1, at.size())));
      }
      if (depth == at.size() - 1) {
        return replaced(node, at.get(depth), next.get(), value);
      }
      node = next.get();
    }
    throw noPlace(at);
  }

  private static JsonNode wrapped(JsonNode value, List<String> names) {
    JsonNode wrapped = value;
    for (int i = names.size() - 1; i >= 0; i--) {
      wrapped = Json.object().set(names.get(i), wrapped);
    }
    return wrapped;
  }

  private static InputException noPlace(List<String> at) {
    return InputException.of(
        "there is no entry " + String.join(", ", at.stream().map(Names::shown).toList()),
        "Look at the file as it is now");
  }

  private static Optional<Node> child(Node node, String name) {
    if (node instanceof MappingNode map) {
      return tuple(map, name).map(NodeTuple::getValueNode);
    }
    if (node instanceof SequenceNode list && name.matches("\\d{1,6}")) {
      int index = Integer.parseInt(name);
      return index < list.getValue().size()
          ? Optional.of(list.getValue().get(index))
          : Optional.empty();
    }
    return Optional.empty();
  }

  private static Optional<NodeTuple> tuple(MappingNode map, String name) {
    return map.getValue().stream()
        .filter(t -> t.getKeyNode() instanceof ScalarNode key && key.getValue().equals(name))
        .findFirst();
  }

  private String replaced(Node parent, String name, Node old, JsonNode value) {
    if (nothing(old)) {
      Node key = parent instanceof MappingNode map ? tuple(map, name).get().getKeyNode() : old;
      int colon = parent instanceof MappingNode ? text.indexOf(':', end(key)) + 1 : end(old);
      return spliced(colon, colon, " " + Yaml.line(value));
    }
    return spliced(start(old), end(old), Yaml.line(value));
  }

  private String added(Node parent, String name, JsonNode value) {
    if (parent instanceof MappingNode map) {
      return added(map, map.getValue().size(), Yaml.line(Json.object().set(name, value)), false);
    }
    if (parent instanceof SequenceNode list
        && name.equals(Integer.toString(list.getValue().size()))) {
      return added(list, list.getValue().size(), Yaml.line(value), true);
    }
    throw noPlace(List.of(name));
  }

  /** {@code entry} is {@code {name: value}} for a mapping; its braces are left out. */
  private String added(CollectionNode<?> parent, int size, String entry, boolean list) {
    String inside = list ? entry : entry.substring(1, entry.length() - 1);
    if (parent.getFlowStyle() == FlowStyle.FLOW) {
      int close = end(parent) - 1;
      int last = size == 0 ? start(parent) + 1 : end(parent, size - 1);
      return spliced(last, size == 0 ? close : last, (size == 0 ? "" : ", ") + inside);
    }
    int at = end(parent, size - 1);
    int line = text.indexOf('\n', at);
    int lineEnd = line < 0 ? text.length() : line;
    String indent = " ".repeat(parent.getStartMark().getColumn());
    return spliced(lineEnd, lineEnd, "\n" + indent + (list ? "- " : "") + inside);
  }

  private String remove(List<String> at) {
    Node parent = parent(at);
    String name = at.get(at.size() - 1);
    Node value = child(parent, name).orElseThrow(() -> noPlace(at));
    CollectionNode<?> all = (CollectionNode<?>) parent;
    int index = index(all, value);
    int size = all.getValue().size();
    boolean flow = all.getFlowStyle() == FlowStyle.FLOW;
    if (size == 1) {
      // Without entries a block is nothing at all.
      return flow
          ? spliced(start(all) + 1, end(all) - 1, "")
          : spliced(start(all), end(all, 0), all instanceof MappingNode ? "{}" : "[]");
    }
    int from = mark(all, index);
    if (flow) {
      return index == size - 1
          ? spliced(text.lastIndexOf(',', from), end(all, index), "")
          : spliced(from, mark(all, index + 1), "");
    }
    int line = text.lastIndexOf('\n', from) + 1;
    if (!text.substring(line, from).isBlank()) {
      // The first of a group that begins beside a dash: the next moves up.
      return spliced(from, mark(all, index + 1), "");
    }
    int next = text.indexOf('\n', end(all, index));
    return spliced(line, next < 0 ? text.length() : next + 1, "");
  }

  private static int index(CollectionNode<?> all, Node value) {
    if (all instanceof SequenceNode list) {
      return list.getValue().indexOf(value);
    }
    List<NodeTuple> tuples = ((MappingNode) all).getValue();
    int index = 0;
    while (tuples.get(index).getValueNode() != value) {
      index++;
    }
    return index;
  }

  /** Where an entry begins: at its name, an item of a block at its dash. */
  private int mark(CollectionNode<?> all, int index) {
    if (all instanceof MappingNode map) {
      return start(map.getValue().get(index).getKeyNode());
    }
    int item = start(((SequenceNode) all).getValue().get(index));
    if (all.getFlowStyle() == FlowStyle.FLOW) {
      return item;
    }
    int column = all.getStartMark().getColumn();
    int line = text.lastIndexOf('\n', Math.max(0, item - 1)) + 1;
    while (text.charAt(line + column) != '-' || line + column > item) {
      line = text.lastIndexOf('\n', line - 2) + 1;
    }
    return line + column;
  }

  private int end(CollectionNode<?> all, int index) {
    if (all instanceof MappingNode map) {
      NodeTuple tuple = map.getValue().get(index);
      return nothing(tuple.getValueNode())
          ? text.indexOf(':', end(tuple.getKeyNode())) + 1
          : end(tuple.getValueNode());
    }
    Node item = ((SequenceNode) all).getValue().get(index);
    return nothing(item) ? mark(all, index) + 1 : end(item);
  }

  /** Whether a name stands without a value, or a dash without an item. */
  private static boolean nothing(Node node) {
    return node instanceof ScalarNode
        && node.getStartMark().getIndex() == node.getEndMark().getIndex();
  }

  private int start(Node node) {
    return text.offsetByCodePoints(0, node.getStartMark().getIndex());
  }

  /** Where the last sign of it stands; what follows a block until the next entry is not its own. */
  private int end(Node node) {
    if (node instanceof CollectionNode<?> all && all.getFlowStyle() != FlowStyle.FLOW) {
      return end(all, all.getValue().size() - 1);
    }
    int end = text.offsetByCodePoints(0, node.getEndMark().getIndex());
    while (end > start(node) && Character.isWhitespace(text.charAt(end - 1))) {
      end--;
    }
    return end;
  }

  private String spliced(int from, int to, String with) {
    return text.substring(0, from) + with + text.substring(to);
  }
}
