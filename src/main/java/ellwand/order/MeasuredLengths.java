package ellwand.order;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * True lengths of the markers that were made; other markers are estimated, corrected by how far the
 * estimate was off for as many garments, since three may fill a width that four do not. Where none
 * of as many was made, the estimate is not made longer, so that it is tried whether they do better.
 *
 * @param estimate the lengths first planned with
 * @param measured true lengths, mm
 */
public record MeasuredLengths(MarkerLengths estimate, Map<SizeMix, Double> measured)
    implements MarkerLengths {

  public MeasuredLengths {
    // In a lasting order, so that sums come out the same each time.
    measured = Collections.unmodifiableMap(new LinkedHashMap<>(measured));
  }

  /** True length over estimated length, all measured markers together; 1 if there are none. */
  public double ratio() {
    return ratio(measured.keySet()).orElse(1);
  }

  private OptionalDouble ratio(Collection<SizeMix> of) {
    double guessed = of.stream().mapToDouble(estimate::lengthMm).sum();
    double found = of.stream().mapToDouble(measured::get).sum();
    return guessed > 0 ? OptionalDouble.of(found / guessed) : OptionalDouble.empty();
  }

  @Override
  public Set<String> sizes() {
    return estimate.sizes();
  }

  @Override
  public double lengthMm(SizeMix mix) {
    Double found = measured.get(mix);
    return found != null ? found : estimate.lengthMm(mix) * ratio(mix.count());
  }

  private double ratio(int garments) {
    return ratio(measured.keySet().stream().filter(m -> m.count() == garments).toList())
        .orElseGet(() -> Math.min(1, ratio()));
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
