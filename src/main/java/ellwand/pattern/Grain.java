package ellwand.pattern;

import java.util.List;
import java.util.Locale;

/** How a piece's drawn x axis must lie to the warp. */
public enum Grain {
  ALONG(0, 180),
  ACROSS(90, 270),
  EITHER(0, 180, 90, 270),
  /** At 45 degrees, either way. */
  BIAS(45, 225, 135, 315);

  private final List<Integer> turns;

  Grain(Integer... turns) {
    this.turns = List.of(turns);
  }

  /** The turns that are on grain, degrees; those that head up the warp come first in each pair. */
  public List<Integer> turns() {
    return turns;
  }

  /** The word in a job file. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
