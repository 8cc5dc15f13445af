package ellwand.file.svg;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The rules of a drawing's {@code style} elements, as far as drawing programs write them: selectors
 * of names, classes and ids, nested or not. Nothing is fetched; what is no such rule is passed over
 * and told.
 */
final class StyleSheet {

  /** More rules than any drawing program writes. */
  private static final int MOST_RULES = 5_000;

  /** Of rules for everything, each is tried on every element. */
  private static final int MOST_WIDE = 50;

  /** What is asked of an element. */
  private static final Set<String> ASKED =
      Set.of("display", "visibility", "opacity", "fill", "stroke", "transform", "transform-origin");

  private static final Pattern COMPOUND =
      Pattern.compile("(\\*|[A-Za-z][\\w-]*)?((?:[.#][\\w\\u0080-\\uFFFF-]+)*)");
  private static final Pattern PART = Pattern.compile("[.#][^.#]+");

  /** One part of a selector: a name, classes and an id, none of which need be there. */
  private record Compound(String name, Set<String> ids, Set<String> classes, boolean child) {

    boolean matches(SvgElement element) {
      return (name.isEmpty() || name.equals(element.name))
          && (ids.isEmpty() || ids.equals(Set.of(element.get("id", ""))))
          && (classes.isEmpty() || classesOf(element).containsAll(classes));
    }

    int weight() {
      return 10_000 * ids.size() + 100 * classes.size() + (name.isEmpty() ? 0 : 1);
    }
  }

  /**
   * A rule.
   *
   * @param parts from the outside in
   * @param order in the file
   */
  private record Rule(List<Compound> parts, Map<String, String> says, int order) {

    int weight() {
      return parts.stream().mapToInt(Compound::weight).sum();
    }

    Compound last() {
      return parts.get(parts.size() - 1);
    }

    boolean matches(SvgElement element, List<SvgElement> around) {
      return last().matches(element) && matches(parts.size() - 2, around, around.size() - 1);
    }

    private boolean matches(int part, List<SvgElement> around, int from) {
      if (part < 0) {
        return true;
      }
      boolean child = parts.get(part + 1).child;
      for (int i = from; i >= (child ? Math.max(0, from) : 0); i--) {
        if (parts.get(part).matches(around.get(i)) && matches(part - 1, around, i - 1)) {
          return true;
        }
      }
      return false;
    }
  }

  private final Map<String, List<Rule>> rules = new HashMap<>();
  private int count;
  private int notRead;

  /** Reads all style elements in a drawing and tells each element what they say of it. */
  static StyleSheet applied(SvgElement root) {
    StyleSheet sheet = new StyleSheet();
    sheet.collect(root);
    if (sheet.count > 0) {
      sheet.apply(root, new ArrayList<>());
    }
    return sheet;
  }

  /** How many rules could not be read. */
  int notRead() {
    return notRead;
  }

  private void collect(SvgElement element) {
    if (element.name.equals("style")) {
      read(element.text.toString());
    }
    element.children.forEach(this::collect);
  }

  private void read(String text) {
    String plain = text.replaceAll("(?s)/\\*.*?\\*/", " ").replaceAll("<!--|-->", " ");
    int at = 0;
    while (at < plain.length()) {
      int open = plain.indexOf('{', at);
      int end = plain.indexOf(';', at);
      String head = plain.substring(at, open < 0 ? plain.length() : open).strip();
      if (head.startsWith("@") && end >= 0 && (open < 0 || end < open)) {
        notRead++;
        at = end + 1;
        continue;
      }
      if (open < 0) {
        break;
      }
      int close = closing(plain, open);
      if (head.startsWith("@")) {
        notRead += head.startsWith("@font-face") ? 0 : 1;
      } else {
        rule(head, plain.substring(open + 1, close));
      }
      at = close + 1;
    }
  }

  private static int closing(String text, int open) {
    int depth = 0;
    for (int i = open; i < text.length(); i++) {
      depth += text.charAt(i) == '{' ? 1 : text.charAt(i) == '}' ? -1 : 0;
      if (depth == 0) {
        return i;
      }
    }
    return text.length();
  }

  private void rule(String selectors, String declarations) {
    Map<String, String> says = declarations(declarations);
    says.keySet().retainAll(ASKED);
    if (says.isEmpty()) {
      return;
    }
    for (String selector : selectors.split(",")) {
      List<Compound> parts = parts(selector.strip());
      if (parts.isEmpty() || ++count > MOST_RULES) {
        notRead++;
        continue;
      }
      Rule rule = new Rule(parts, says, count);
      List<Rule> alike = rules.computeIfAbsent(key(rule.last()), k -> new ArrayList<>());
      if (key(rule.last()).isEmpty() && alike.size() >= MOST_WIDE) {
        notRead++;
      } else {
        alike.add(rule);
      }
    }
  }

  /** The parts of a selector; none if it is of another kind. */
  private static List<Compound> parts(String selector) {
    List<Compound> parts = new ArrayList<>();
    boolean child = false;
    for (String word : selector.replace(">", " > ").strip().split("\\s+")) {
      Matcher matcher = COMPOUND.matcher(word);
      if (word.equals(">")) {
        child = true;
      } else if (word.isEmpty() || !matcher.matches()) {
        return List.of();
      } else {
        String name =
            matcher.group(1) == null || matcher.group(1).equals("*") ? "" : matcher.group(1);
        parts.add(
            new Compound(
                name, marked(matcher.group(2), '#'), marked(matcher.group(2), '.'), child));
        child = false;
      }
    }
    return parts;
  }

  private static Set<String> marked(String parts, char sign) {
    return PART.matcher(parts)
        .results()
        .map(r -> r.group())
        .filter(p -> p.charAt(0) == sign)
        .map(p -> p.substring(1))
        .collect(Collectors.toSet());
  }

  /** Where rules are looked up by what their last part asks for. */
  private static String key(Compound last) {
    return !last.ids.isEmpty()
        ? "#" + last.ids.iterator().next()
        : !last.classes.isEmpty() ? "." + last.classes.iterator().next() : last.name;
  }

  /** Declarations as a style attribute has them. */
  static Map<String, String> declarations(String text) {
    Map<String, String> says = new HashMap<>();
    for (String declaration : text.split(";")) {
      String[] parts = declaration.split(":", 2);
      if (parts.length == 2) {
        says.put(
            parts[0].strip().toLowerCase(Locale.ROOT),
            parts[1].replaceFirst("(?i)!\\s*important", "").strip());
      }
    }
    return says;
  }

  private static Set<String> classesOf(SvgElement element) {
    return Set.copyOf(Arrays.asList(element.get("class", "").split("\\s+")));
  }

  private void apply(SvgElement element, List<SvgElement> around) {
    List<Rule> found = new ArrayList<>();
    Deque<String> keys = new ArrayDeque<>(List.of("", element.name, "#" + element.get("id", "")));
    classesOf(element).forEach(c -> keys.add("." + c));
    for (String key : keys) {
      rules.getOrDefault(key, List.of()).stream()
          .filter(r -> r.matches(element, around))
          .forEach(found::add);
    }
    found.sort(Comparator.comparingInt(Rule::weight).thenComparingInt(Rule::order));
    found.forEach(r -> element.ruled.putAll(r.says));
    around.add(element);
    element.children.forEach(c -> apply(c, around));
    around.remove(around.size() - 1);
  }
}
