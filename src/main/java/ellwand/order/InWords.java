package ellwand.order;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** From numbers back to the sizes and colours of the order. */
final class InWords {

  private InWords() {}

  /** The lays of a plan, those that cut most first. */
  static List<PlannedLay> lays(Numbers numbers, List<Spread> plan) {
    return plan.stream()
        .map(spread -> lay(numbers, spread))
        .sorted(PlannedLay.MOST_CUT_FIRST)
        .toList();
  }

  private static PlannedLay lay(Numbers numbers, Spread spread) {
    Map<String, Integer> plies = new LinkedHashMap<>();
    for (int c = 0; c < numbers.colours.size(); c++) {
      if (spread.turns()[c] > 0) {
        plies.put(
            numbers.colours.get(c), spread.turns()[c] * numbers.order.spreading().pliesTogether());
      }
    }
    return new PlannedLay(numbers.sizeMix(spread.mix()), plies, numbers.lengthMm(spread.mix()));
  }

  /** What can't be cut within tolerance, whatever the plan. */
  static List<Miss> misses(Numbers numbers) {
    List<Miss> misses = new ArrayList<>();
    int together = numbers.order.spreading().garmentsTogether();
    for (int c = 0; c < numbers.colours.size(); c++) {
      for (int s = 0; s < numbers.sizes.size(); s++) {
        int wanted = numbers.wanted(c, s);
        int cut = numbers.least[c][s] * together;
        if (cut > numbers.order.tolerance().most(wanted)) {
          misses.add(
              new Miss(numbers.colours.get(c), numbers.sizes.get(s), wanted, cut, Miss.COUPLES));
        }
      }
    }
    return misses;
  }
}
