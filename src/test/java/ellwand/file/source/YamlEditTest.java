package ellwand.file.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import ellwand.problem.InputException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class YamlEditTest {

  private static final String JOB =
      """
      # A waistcoat.
      ellwand: 1
      style:
        name: Waistcoat   # for the shop
        pieces:
          front:
            edges:
              neck: {from: a, to: b, allowance: 1 cm} # bound later
              hem:
                from: c
                to: d
            notches:
              - {edge: neck, at: 2 cm}
              # the second
              - edge: hem
                at: 3 cm
          back: {cut: {main: 1 on fold}}

      # What it is cut from.
      cloths:
        main: {width: 140 cm}
      """;

  @Test
  void onlyTheValueChanges() {
    assertEquals(
        JOB.replace("allowance: 1 cm", "allowance: 2 cm"),
        set(JOB, "2 cm", "style", "pieces", "front", "edges", "neck", "allowance"));
  }

  @Test
  void anEntryIsAddedInTheWayOfItsNeighbours() {
    assertEquals(
        JOB.replace("          to: d\n", "          to: d\n          allowance: 4 cm\n"),
        set(JOB, "4 cm", "style", "pieces", "front", "edges", "hem", "allowance"));
    assertEquals(
        JOB.replace("{width: 140 cm}", "{width: 140 cm, fold: open}"),
        set(JOB, "open", "cloths", "main", "fold"));
  }

  @Test
  void groupsThatAnEntryNeedsAreMade() {
    assertEquals(
        JOB + "order: {sizes: '104'}\n", set(JOB.stripTrailing(), "104", "order", "sizes") + "\n");
  }

  @Test
  void anItemOfAListIsAddedAndRemoved() {
    String more = set(JOB, "x", "style", "pieces", "front", "notches", "2");
    assertEquals(JOB.replace("at: 3 cm\n", "at: 3 cm\n        - x\n"), more);
    assertEquals(JOB, YamlEdit.remove(more, List.of("style", "pieces", "front", "notches", "2")));
  }

  @Test
  void whatIsRemovedTakesItsLineAlong() {
    assertEquals(
        JOB.replace("          to: d\n", ""),
        YamlEdit.remove(JOB, List.of("style", "pieces", "front", "edges", "hem", "to")));
    assertEquals(
        JOB.replace(", allowance: 1 cm", ""),
        YamlEdit.remove(JOB, List.of("style", "pieces", "front", "edges", "neck", "allowance")));
  }

  @Test
  void lettersThatMeanSomethingInYamlAreQuoted() {
    String text = set(JOB, "a: [b, #c", "style", "name");
    assertTrue(text.contains("name: 'a: [b, #c'   # for the shop"), text);
  }

  @Test
  void aPlaceThatIsNotThereIsRefused() {
    assertThrows(InputException.class, () -> YamlEdit.remove(JOB, List.of("style", "size")));
    assertThrows(
        InputException.class, () -> set(JOB, "x", "style", "pieces", "front", "notches", "7"));
    assertThrows(InputException.class, () -> set(JOB, "x", "style", "name", "first"));
    assertThrows(InputException.class, () -> set("- a\n", "x", "0"));
    assertThrows(InputException.class, () -> set("a: [", "x", "a"));
  }

  private static String set(String text, String value, String... at) {
    return YamlEdit.set(text, List.of(at), TextNode.valueOf(value));
  }

  /** What comes out, read again, is what went in with the same change made to its tree. */
  @Property(tries = 2000)
  void theFileReadsAsItsTreeChanged(@ForAll long seed) throws Exception {
    Random dice = new Random(seed);
    ObjectNode tree = (ObjectNode) group(dice, 3, true);
    String text = commented(written(tree, 0, dice), dice);
    assertEquals(tree, read(text), text);
    for (int i = 0; i < 4; i++) {
      List<String> at = place(tree, dice);
      JsonNode parent = parent(tree, at);
      String last = at.get(at.size() - 1);
      String after;
      if (dice.nextInt(3) == 0 && parent.size() > 0 && has(parent, last)) {
        after = YamlEdit.remove(text, at);
        if (parent instanceof ObjectNode object) {
          object.remove(last);
        } else {
          ((ArrayNode) parent).remove(Integer.parseInt(last));
        }
      } else {
        JsonNode value = value(dice, 1);
        after = YamlEdit.set(text, at, value);
        if (parent instanceof ObjectNode object) {
          object.set(last, value);
        } else if (Integer.parseInt(last) < parent.size()) {
          ((ArrayNode) parent).set(Integer.parseInt(last), value);
        } else {
          ((ArrayNode) parent).add(value);
        }
      }
      assertEquals(tree, read(after), text + "\n--- " + at + "\n" + after);
      text = after;
    }
  }

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final YAMLMapper YAML = new YAMLMapper();

  private static JsonNode read(String text) throws Exception {
    return YAML.readTree(text);
  }

  private static boolean has(JsonNode parent, String name) {
    return parent.isObject() ? parent.has(name) : Integer.parseInt(name) < parent.size();
  }

  private static JsonNode group(Random dice, int depth, boolean map) {
    if (map) {
      ObjectNode object = JSON.createObjectNode();
      for (int i = 1 + dice.nextInt(3); i > 0; i--) {
        object.set("k" + dice.nextInt(50), value(dice, depth));
      }
      return object;
    }
    ArrayNode array = JSON.createArrayNode();
    for (int i = 1 + dice.nextInt(3); i > 0; i--) {
      array.add(value(dice, depth));
    }
    return array;
  }

  private static JsonNode value(Random dice, int depth) {
    if (depth > 0 && dice.nextBoolean()) {
      return group(dice, depth - 1, dice.nextInt(3) > 0);
    }
    String[] texts = {"2 cm", "1 on fold", "a, b", "x: y", "# no", "é𝄞", "12 ell", "'q'"};
    return TextNode.valueOf(texts[dice.nextInt(texts.length)]);
  }

  private static List<String> place(JsonNode tree, Random dice) {
    List<String> at = new ArrayList<>();
    JsonNode node = tree;
    while (true) {
      String name;
      if (node.isObject()) {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        name =
            names.isEmpty() || dice.nextInt(4) == 0
                ? "new" + dice.nextInt(1000)
                : names.get(dice.nextInt(names.size()));
      } else {
        name = Integer.toString(dice.nextInt(node.size() + 1));
      }
      at.add(name);
      JsonNode next = node.isObject() ? node.get(name) : node.get(Integer.parseInt(name));
      if (next == null || !next.isContainerNode() || dice.nextInt(3) == 0) {
        return at;
      }
      node = next;
    }
  }

  private static JsonNode parent(JsonNode tree, List<String> at) {
    JsonNode node = tree;
    for (String name : at.subList(0, at.size() - 1)) {
      node = node.isObject() ? node.get(name) : node.get(Integer.parseInt(name));
    }
    return node;
  }

  /** In blocks and brackets at random, as people mix them. */
  private static String written(JsonNode node, int indent, Random dice) {
    String pad = " ".repeat(indent);
    StringBuilder text = new StringBuilder();
    if (node instanceof ObjectNode object) {
      object
          .properties()
          .forEach(
              e ->
                  text.append(pad)
                      .append(e.getKey())
                      .append(":")
                      .append(inner(e.getValue(), indent, dice)));
    } else {
      node.forEach(item -> text.append(pad).append("-").append(inner(item, indent, dice)));
    }
    return text.toString();
  }

  private static String inner(JsonNode value, int indent, Random dice) {
    return value.isContainerNode() && value.size() > 0 && dice.nextBoolean()
        ? "\n" + written(value, indent + 2, dice)
        : " " + Yaml.line(value) + "\n";
  }

  private static String commented(String text, Random dice) {
    StringBuilder all = new StringBuilder("# top\n");
    for (String line : text.split("\n")) {
      all.append(line).append(dice.nextInt(4) == 0 ? "  # said, {so: [on" : "").append('\n');
      if (dice.nextInt(6) == 0) {
        all.append(dice.nextBoolean() ? "\n" : "   # between\n");
      }
    }
    return all.toString();
  }
}
