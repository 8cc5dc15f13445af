package ellwand.order;

/**
 * What no plan for an order can undercut.
 *
 * @param lays fewest lays
 * @param clothMm least cloth with end loss, mm
 * @param boughtMm the same as bought, mm
 * @param cost least cost, in the user's money
 */
public record LowerBounds(int lays, double clothMm, double boughtMm, double cost) {

  static LowerBounds of(Numbers numbers) {
    int fullest = fullestMarker(numbers);
    double roomCloth = numbers.clothOnTable();
    long turns = 0;
    long cloth = 0;
    long bought = 0;
    for (int[] least : numbers.least) {
      long ofColour = 0;
      for (int s = 0; s < least.length; s++) {
        ofColour += least[s] * numbers.leastCloth(s);
      }
      // A billionth less, lest rounding make a bound that a plan can undercut.
      int byLength = (int) Math.ceil(ofColour / roomCloth - 1e-9);
      long turnsOfColour = Math.max(Numbers.ceilDiv(Spread.sum(least), fullest), byLength);
      ofColour += turnsOfColour * numbers.endCloth();
      turns += turnsOfColour;
      cloth += ofColour;
      bought += numbers.bought(ofColour);
    }
    int lays =
        Math.max(
            Numbers.ceilDiv(turns, numbers.maxTurns),
            Numbers.ceilDiv(askedSizes(numbers), fullest));
    Cost cost = numbers.order.cost();
    double boughtMm = bought / 1000.0;
    return new LowerBounds(
        lays, cloth / 1000.0, boughtMm, lays * cost.lay() + boughtMm / 1000 * cost.clothPerMetre());
  }

  /** Most garments that any marker can hold. */
  private static int fullestMarker(Numbers numbers) {
    double shortest = Double.POSITIVE_INFINITY;
    for (int s = 0; s < numbers.sizes.size(); s++) {
      shortest = Math.min(shortest, numbers.leastCloth(s));
    }
    double byLength = numbers.clothOnTable() / shortest + 1e-9;
    return (int) Math.max(1, Math.min(numbers.maxGarments, byLength));
  }

  private static int askedSizes(Numbers numbers) {
    int asked = 0;
    for (int s = 0; s < numbers.sizes.size(); s++) {
      boolean any = false;
      for (int[] least : numbers.least) {
        any |= least[s] > 0;
      }
      asked += any ? 1 : 0;
    }
    return asked;
  }

  /** The best that a plan of so many lays could be worth; a plan must be better to matter. */
  Value best(Numbers numbers, int lays) {
    return best(numbers, lays, Math.round(clothMm * 1000), Math.round(boughtMm * 1000));
  }

  /** The best that a plan of so many lays and at least so much cloth could be worth. */
  static Value best(Numbers numbers, int lays, long cloth, long bought) {
    // Deviation never decides: plans that differ in it alone count as equally good.
    return new Value(numbers.cost(bought, lays), cloth, lays, Long.MAX_VALUE);
  }
}
