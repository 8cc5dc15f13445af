package ellwand.order;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;

/**
 * True lengths of the markers that were made; what is taken for other markers is never longer than
 * a row of those that were made.
 */
public final class MeasuredLengths implements MarkerLengths {

  /** What is taken for a marker that was not made. */
  public enum Unmade {
    /**
     * The estimate, corrected by how far it was off for as many garments, since three may fill a
     * width that four do not. Where none of as many was made, the estimate is not made longer, so
     * that it is tried whether they do better.
     */
    HOPED,
    /** The same, corrected by all markers where none of as many was made. */
    LIKELY,
    /** Nothing but a row of those that were made. */
    SURE
  }

  private final MarkerLengths estimate;
  private final Map<SizeMix, Double> measured;
  private final Rows rows;
  private final Unmade unmade;

  /**
   * @param estimate the lengths first planned with
   * @param measured true lengths, mm
   * @param nextMm where the next may begin behind a marker of a length, mm
   */
  public MeasuredLengths(
      MarkerLengths estimate,
      Map<SizeMix, Double> measured,
      DoubleUnaryOperator nextMm,
      Unmade unmade) {
    this.estimate = estimate;
    // In a lasting order, so that sums come out the same each time.
    this.measured = Collections.unmodifiableMap(new LinkedHashMap<>(measured));
    this.rows = new Rows(measured, nextMm);
    this.unmade = unmade;
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
    double row = rows.lengthMm(mix);
    return unmade == Unmade.SURE || measured.containsKey(mix)
        ? row
        : Math.min(row, estimate.lengthMm(mix) * ratio(mix.count()));
  }

  private double ratio(int garments) {
    double all = unmade == Unmade.HOPED ? Math.min(1, ratio()) : ratio();
    return ratio(measured.keySet().stream().filter(m -> m.count() == garments).toList())
        .orElse(all);
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
