package ellwand.pattern;

import ellwand.problem.InputException;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * How wide a seam allowance is: one width, or another in some cloths.
 *
 * @param mmByCloth where a cloth has its own, mm, 0 or more
 * @param usualMm in every other cloth, mm, 0 or more; empty where nothing is said of them
 */
public record Allowance(Map<String, Double> mmByCloth, OptionalDouble usualMm) {

  public static final Allowance NONE = of(0);

  public Allowance {
    mmByCloth = Collections.unmodifiableMap(new LinkedHashMap<>(mmByCloth));
    if (!all(mmByCloth, usualMm).allMatch(mm -> mm >= 0 && Double.isFinite(mm))) {
      throw InputException.of("an allowance is less than nothing", "Write 0 or more");
    }
  }

  private static DoubleStream all(Map<String, Double> mmByCloth, OptionalDouble usualMm) {
    return DoubleStream.concat(mmByCloth.values().stream().mapToDouble(mm -> mm), usualMm.stream());
  }

  /** The same in every cloth. */
  public static Allowance of(double mm) {
    return new Allowance(Map.of(), OptionalDouble.of(mm));
  }

  /** One for each of these cloths, and none said for others. */
  public static Allowance byCloth(Map<String, Double> mmByCloth) {
    return new Allowance(mmByCloth, OptionalDouble.empty());
  }

  /** What is said of it in a cloth, mm. */
  public OptionalDouble in(String cloth) {
    return mmByCloth.containsKey(cloth) ? OptionalDouble.of(mmByCloth.get(cloth)) : usualMm;
  }

  /** The widest of any cloth, mm; 0 where nothing is said. */
  public double widestMm() {
    return all(mmByCloth, usualMm).max().orElse(0);
  }

  /** The narrowest of any cloth, mm; 0 where nothing is said. */
  public double narrowestMm() {
    return all(mmByCloth, usualMm).min().orElse(0);
  }

  /** This, and where it says nothing of a cloth, the other. */
  public Allowance or(Allowance other) {
    if (usualMm.isPresent()) {
      return this;
    }
    Map<String, Double> both = new LinkedHashMap<>(other.mmByCloth);
    both.putAll(mmByCloth);
    return new Allowance(both, other.usualMm);
  }

  /** What it says of these cloths, and no more; one width where they do not differ. */
  public Allowance only(Collection<String> cloths) {
    Map<String, Double> said = new LinkedHashMap<>();
    cloths.forEach(cloth -> in(cloth).ifPresent(mm -> said.put(cloth, mm)));
    boolean alike = said.values().stream().distinct().count() == 1;
    return mmByCloth.isEmpty()
        ? this
        : alike && said.size() == cloths.size()
            ? of(said.values().iterator().next())
            : byCloth(said);
  }
}
