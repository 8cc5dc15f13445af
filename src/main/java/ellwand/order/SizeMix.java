package ellwand.order;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The garments of one marker. Two mixes are equal if they hold the same garments, so that a marker
 * of a repeated mix is made once.
 *
 * @param garments by size, each 1 or more
 */
public record SizeMix(Map<String, Integer> garments) {

  public SizeMix {
    garments = Collections.unmodifiableMap(new LinkedHashMap<>(garments));
    if (garments.isEmpty() || garments.values().stream().anyMatch(n -> n < 1)) {
      throw new IllegalArgumentException("a marker holds garments, at least one of each size");
    }
  }

  /** One garment alone. */
  public static SizeMix one(String size) {
    return new SizeMix(Map.of(size, 1));
  }

  /** How many garments of one size. */
  public int count(String size) {
    return garments.getOrDefault(size, 0);
  }

  /** How many garments in all. */
  public int count() {
    return garments.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** The garments that another mix does not hold; empty if it holds them all. */
  public Optional<SizeMix> without(SizeMix other) {
    Map<String, Integer> left = new LinkedHashMap<>();
    garments.forEach((size, n) -> left.put(size, n - other.count(size)));
    left.values().removeIf(n -> n < 1);
    return left.isEmpty() ? Optional.empty() : Optional.of(new SizeMix(left));
  }

  /** {@code 2 x 12, 1 x 16}. */
  @Override
  public String toString() {
    return garments.entrySet().stream()
        .map(e -> e.getValue() + " x " + e.getKey())
        .collect(Collectors.joining(", "));
  }
}
