package ellwand.pattern;

import ellwand.problem.InputException;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * Body measures by size and name, mm, as far as they are given.
 *
 * @param mmBySize sizes and measures in the user's order
 */
public record Body(Map<String, Map<String, Double>> mmBySize) {

  /** Nothing measured. */
  public static final Body NONE = new Body(Map.of());

  public Body {
    Map<String, Map<String, Double>> copy = new LinkedHashMap<>();
    mmBySize.forEach(
        (size, of) -> copy.put(size, Collections.unmodifiableMap(new LinkedHashMap<>(of))));
    mmBySize = Collections.unmodifiableMap(copy);
  }

  /** The names of all measures. */
  public List<String> measures() {
    TreeSet<String> names = new TreeSet<>();
    mmBySize.values().forEach(of -> names.addAll(of.keySet()));
    return List.copyOf(names);
  }

  /** Those of the sizes that a measure is not given for. */
  public List<String> without(String measure, List<String> sizes) {
    return sizes.stream()
        .filter(size -> !mmBySize.getOrDefault(size, Map.of()).containsKey(measure))
        .toList();
  }

  /**
   * A measure in a size, mm.
   *
   * @throws InputException if it is not given
   */
  public double mm(String measure, String size) {
    Double mm = mmBySize.getOrDefault(size, Map.of()).get(measure);
    if (mm == null) {
      throw InputException.of(
          "no " + measure + " is given for size " + size, "Add it to body: of sizes:");
    }
    return mm;
  }
}
