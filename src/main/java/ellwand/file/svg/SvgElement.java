package ellwand.file.svg;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** An element as it stands in the file, its names without their namespaces. */
final class SvgElement {

  final String name;
  final Map<String, String> attributes = new LinkedHashMap<>();

  /** What style sheets say of it. */
  final Map<String, String> ruled = new LinkedHashMap<>();

  final List<SvgElement> children = new ArrayList<>();
  final StringBuilder text = new StringBuilder();
  final int line;

  SvgElement(String name, int line) {
    this.name = name;
    this.line = line;
  }

  Optional<String> get(String attribute) {
    return Optional.ofNullable(attributes.get(attribute)).map(String::strip);
  }

  String get(String attribute, String otherwise) {
    return get(attribute).orElse(otherwise);
  }

  /** The first child of a name. */
  Optional<SvgElement> child(String called) {
    return children.stream().filter(c -> c.name.equals(called)).findFirst();
  }

  /** A property: the style attribute goes before style sheets, these before its attribute. */
  Optional<String> property(String called) {
    String own = StyleSheet.declarations(get("style", "")).get(called);
    return Optional.ofNullable(own == null ? ruled.get(called) : own).or(() -> get(called));
  }

  /** All words in it, those of its children too. */
  String words() {
    StringBuilder all = new StringBuilder(text);
    children.forEach(c -> all.append(' ').append(c.words()));
    return all.toString().strip();
  }
}
