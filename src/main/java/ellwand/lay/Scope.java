package ellwand.lay;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** What a lay holds of the job that it was made from. */
public sealed interface Scope {

  /** All that the job's garments want of the cloth. */
  Scope WHOLE = new Whole();

  /** Some of it, piece by piece; the rest comes from another bolt or remnant. */
  Scope PART = new Part();

  /** All that the job's garments want of the cloth. */
  record Whole() implements Scope {}

  /** Some of it, piece by piece. */
  record Part() implements Scope {}

  /**
   * Whole garments, other ones than the job's own: one of an order's lays, or what of the job goes
   * on one remnant.
   *
   * @param garments how many, by size
   */
  record Garments(Map<String, Integer> garments) implements Scope {
    public Garments {
      garments = Collections.unmodifiableMap(new LinkedHashMap<>(garments));
    }
  }
}
