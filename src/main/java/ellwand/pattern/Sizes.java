package ellwand.pattern;

import ellwand.geometry.Point;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The sizes of a style and how its points move between them.
 *
 * @param names in the user's order, from small to large
 * @param base the one of them that the pieces are drawn in
 * @param rules by piece, then by the name of a point or of an inner line
 * @param body measures that blocks are drafted from
 */
public record Sizes(
    List<String> names, String base, Map<String, Map<String, GradeRule>> rules, Body body) {

  /** What the only size of a style is called where its maker gives it no name. */
  public static final String ONE_SIZE = "one size";

  public Sizes {
    names = List.copyOf(names);
    Map<String, Map<String, GradeRule>> copy = new LinkedHashMap<>();
    rules.forEach(
        (piece, of) -> copy.put(piece, Collections.unmodifiableMap(new LinkedHashMap<>(of))));
    rules = Collections.unmodifiableMap(copy);
    if (!names.contains(base)) {
      throw new InputException(
          Problem.of(
              "the pieces are drawn in size " + base + ", which is not among the sizes",
              "Add it to names: of sizes:, or draw in one of " + String.join(", ", names)));
    }
  }

  /** Sizes of which no body is measured. */
  public Sizes(List<String> names, String base, Map<String, Map<String, GradeRule>> rules) {
    this(names, base, rules, Body.NONE);
  }

  /** A size in words, also where it is called "one size". */
  public static String words(String size) {
    return size.endsWith("size") ? size : "size " + size;
  }

  /** Several in words, one at least. */
  public static String words(List<String> sizes) {
    return sizes.size() == 1 ? words(sizes.get(0)) : "sizes " + String.join(", ", sizes);
  }

  /** A style in the one size that it is drawn in. */
  public static Sizes only(String size) {
    return new Sizes(List.of(size), size, Map.of());
  }

  /** The same with the rules of those pieces that are drawn point by point and no others. */
  public Sizes grading(List<Outlined> pieces) {
    Map<String, Map<String, GradeRule>> kept = new LinkedHashMap<>(rules);
    kept.keySet()
        .retainAll(
            pieces.stream()
                .filter(p -> p.start().draft().isPresent())
                .map(Outlined::name)
                .toList());
    return new Sizes(names, base, kept, body);
  }

  /**
   * The piece in one of the sizes, before its outline is tried.
   *
   * @throws InputException if the drawn piece cannot be made
   */
  public Draft graded(Draft drawn, String size) {
    Map<String, GradeRule> ofPiece = rules.getOrDefault(drawn.name(), Map.of());
    if (size.equals(base) || ofPiece.isEmpty()) {
      return drawn;
    }
    int steps = names.indexOf(size) - names.indexOf(base);
    Map<String, Point> shifts = new HashMap<>();
    ofPiece.forEach((point, rule) -> shifts.put(point, rule.shiftMm(size, steps)));
    return new Grading(drawn, shifts).draft();
  }
}
