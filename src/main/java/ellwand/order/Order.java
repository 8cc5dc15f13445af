package ellwand.order;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Garments wanted, and what their cutting is bound by.
 *
 * @param wanted garments by colour, then size; 0 and left out are the same
 */
public record Order(
    Map<String, Map<String, Integer>> wanted,
    Limits limits,
    Tolerance tolerance,
    Cost cost,
    Spreading spreading) {

  /** The most garments that one order may hold. */
  public static final int MOST_GARMENTS = 1_000_000;

  public Order {
    Map<String, Map<String, Integer>> copy = new LinkedHashMap<>();
    wanted.forEach((c, sizes) -> copy.put(c, frozen(sizes)));
    wanted = frozen(copy);
    List<Problem> problems = new ArrayList<>();
    long total = 0;
    for (var colour : wanted.entrySet()) {
      for (var size : colour.getValue().entrySet()) {
        total += Math.max(0, size.getValue());
        if (size.getValue() < 0) {
          problems.add(
              Problem.of(
                  "%d garments are wanted in colour %s, size %s"
                      .formatted(size.getValue(), colour.getKey(), size.getKey()),
                  "Write 0 or more"));
        }
      }
    }
    if (problems.isEmpty() && total == 0) {
      problems.add(
          Problem.of(
              "no garment is wanted in any size or colour", "Give a quantity for at least one"));
    }
    if (total > MOST_GARMENTS) {
      problems.add(
          Problem.of(
              total + " garments are too many for one order",
              "Split it into orders of at most " + MOST_GARMENTS));
    }
    if (limits.maxPlies() < spreading.pliesTogether()) {
      problems.add(
          Problem.of(
              "this spreading takes plies two by two, but a lay may have only one",
              "Set max-plies: to 2 or more, or spread otherwise"));
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
  }

  private static <V> Map<String, V> frozen(Map<String, V> map) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(map));
  }

  /** The colours with something wanted, in the order's own sequence. */
  public List<String> colours() {
    return wanted.keySet().stream()
        .filter(c -> wanted.get(c).values().stream().anyMatch(n -> n > 0))
        .toList();
  }

  /** The sizes with something wanted, as they first appear. */
  public List<String> sizes() {
    Set<String> sizes = new LinkedHashSet<>();
    wanted.values().forEach(m -> m.forEach((size, n) -> addIfWanted(sizes, size, n)));
    return List.copyOf(sizes);
  }

  private static void addIfWanted(Set<String> sizes, String size, int garments) {
    if (garments > 0) {
      sizes.add(size);
    }
  }

  /**
   * The same garments out of another cloth, after the first cloth's plan: what that cuts is wanted,
   * and nothing less.
   *
   * @param cut garments by colour, then size, that the first cloth gives
   * @param colours this cloth's colour by that of the garment; its own name unless said
   * @param sizes those that this cloth has pieces for
   */
  public Order following(
      Map<String, Map<String, Integer>> cut, Map<String, String> colours, Set<String> sizes) {
    Map<String, Map<String, Integer>> followed = new LinkedHashMap<>();
    cut.forEach(
        (colour, bySize) ->
            bySize.forEach(
                (size, garments) -> {
                  if (sizes.contains(size)) {
                    followed
                        .computeIfAbsent(
                            colours.getOrDefault(colour, colour), c -> new LinkedHashMap<>())
                        .merge(size, garments, Integer::sum);
                  }
                }));
    return new Order(followed, limits, new Tolerance(tolerance.over(), 0), cost, spreading);
  }

  /** The same without tolerance. */
  Order exactly() {
    return new Order(wanted, limits, Tolerance.NONE, cost, spreading);
  }

  public int wanted(String colour, String size) {
    return wanted.getOrDefault(colour, Map.of()).getOrDefault(size, 0);
  }
}
