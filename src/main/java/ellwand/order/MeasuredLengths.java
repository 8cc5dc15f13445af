package ellwand.order;

import java.util.Map;
import java.util.Set;

/**
 * True lengths of the markers that were made; other markers are estimated, corrected by how far the
 * estimate was off on average.
 *
 * @param estimate the lengths first planned with
 * @param measured true lengths, mm
 */
public record MeasuredLengths(MarkerLengths estimate, Map<SizeMix, Double> measured)
    implements MarkerLengths {

  public MeasuredLengths {
    measured = Map.copyOf(measured);
  }

  /** True length over estimated length, all measured markers together; 1 if there are none. */
  public double ratio() {
    double guessed = measured.keySet().stream().mapToDouble(estimate::lengthMm).sum();
    double found = measured.values().stream().mapToDouble(Double::doubleValue).sum();
    return guessed > 0 ? found / guessed : 1;
  }

  @Override
  public Set<String> sizes() {
    return estimate.sizes();
  }

  @Override
  public double lengthMm(SizeMix mix) {
    Double found = measured.get(mix);
    return found != null ? found : estimate.lengthMm(mix) * ratio();
  }

  @Override
  public double leastMm(String size) {
    double shortest =
        measured.entrySet().stream()
            .mapToDouble(e -> e.getValue() / estimate.lengthMm(e.getKey()))
            .reduce(1, Math::min);
    return estimate.leastMm(size) * shortest;
  }
}
