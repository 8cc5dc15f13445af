package ellwand.order;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A marker is as long as its garments laid one after another.
 *
 * @param bySize length of each garment, mm
 */
public record GarmentLengths(Map<String, Double> bySize) implements MarkerLengths {

  public GarmentLengths {
    bySize = Map.copyOf(bySize);
    List<Problem> problems =
        bySize.entrySet().stream()
            .filter(e -> !(e.getValue() > 0) || Double.isInfinite(e.getValue()))
            .map(
                e ->
                    Problem.of(
                        "size " + e.getKey() + " has a marker length of " + e.getValue() + " mm",
                        "Give the cloth that one garment takes, more than 0"))
            .toList();
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
  }

  @Override
  public Set<String> sizes() {
    return bySize.keySet();
  }

  @Override
  public double lengthMm(SizeMix mix) {
    return mix.garments().entrySet().stream()
        .mapToDouble(e -> e.getValue() * bySize.get(e.getKey()))
        .sum();
  }

  @Override
  public double leastMm(String size) {
    return bySize.get(size);
  }
}
