package ellwand.order;

import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * One lay of a plan: a marker on a stepped spread of one or more colours.
 *
 * @param mix the garments of the marker
 * @param plies by colour, each 1 or more; a folded ply counts as two
 * @param lengthMm marker length that was planned with, without end loss
 */
public record PlannedLay(SizeMix mix, Map<String, Integer> plies, double lengthMm) {

  /** In the sequence in which a plan is shown. */
  static final Comparator<PlannedLay> MOST_CUT_FIRST =
      Comparator.comparingInt((PlannedLay lay) -> lay.totalPlies() * lay.mix().count())
          .reversed()
          .thenComparing(PlannedLay::toString);

  public PlannedLay {
    plies = Collections.unmodifiableMap(new LinkedHashMap<>(plies));
    if (plies.isEmpty() || plies.values().stream().anyMatch(n -> n < 1)) {
      throw new IllegalArgumentException("a lay has plies, at least one of each colour");
    }
  }

  /** Plies of all colours. */
  public int totalPlies() {
    return plies.values().stream().mapToInt(Integer::intValue).sum();
  }
}
