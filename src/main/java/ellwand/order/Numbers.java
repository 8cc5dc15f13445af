package ellwand.order;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;

/**
 * An order in plain numbers, sizes and colours by index.
 *
 * <p>Plies are counted in <i>turns</i>: the plies that must be spread together are one turn. So
 * every way of spreading looks the same here: a lay cuts mix x turns <i>sets</i>, and a set is the
 * {@link Spreading#garmentsTogether} garments that one turn makes.
 */
final class Numbers {

  final Order order;
  final List<String> sizes;
  final List<String> colours;

  /** Fewest and most sets by colour, then size. */
  final int[][] least;

  final int[][] most;
  final int maxTurns;
  final int maxGarments;

  private final long price;
  private final long layCost;
  private final long[] leastCloth;
  private final double longestGarment;
  private final double layWeight;

  private final MarkerLengths lengths;
  private final Map<MixKey, Long> known;

  Numbers(Order order, MarkerLengths lengths) {
    this.order = order;
    this.lengths = lengths;
    this.known = new ConcurrentHashMap<>();
    this.sizes = order.sizes();
    this.colours = order.colours();
    this.maxTurns = order.limits().maxPlies() / order.spreading().pliesTogether();
    this.maxGarments = order.limits().maxGarments();
    this.least = new int[colours.size()][sizes.size()];
    this.most = new int[colours.size()][sizes.size()];
    for (int c = 0; c < colours.size(); c++) {
      for (int s = 0; s < sizes.size(); s++) {
        limitSets(c, s);
      }
    }
    Checks.lengths(order, lengths);
    this.price = Math.round(order.cost().clothPerMetre() * 1e4);
    this.layCost = Math.round(order.cost().lay() * 1e10);
    this.leastCloth = sizes.stream().mapToLong(s -> floor(lengths.leastMm(s))).toArray();
    this.longestGarment =
        IntStream.range(0, sizes.size()).mapToDouble(s -> turnCloth(one(s))).max().orElseThrow();
    this.layWeight = reckonedLayWeight();
    Checks.costs(sets(), layCost + (double) price * bought(Math.round(longestGarment)));
  }

  private Numbers(Numbers of) {
    this.order = of.order;
    this.lengths = of.lengths;
    this.sizes = of.sizes;
    this.colours = of.colours;
    this.maxTurns = of.maxTurns;
    this.maxGarments = of.maxGarments;
    this.least = of.least;
    this.most = of.least;
    this.price = of.price;
    this.layCost = of.layCost;
    this.leastCloth = of.leastCloth;
    this.longestGarment = of.longestGarment;
    this.layWeight = of.layWeight;
    this.known = of.known;
  }

  /** The same without any set more than the least that the tolerance allows. */
  Numbers withoutSurplus() {
    return new Numbers(this);
  }

  /** Whether nothing but the least can be cut. */
  boolean exact() {
    return Arrays.deepEquals(least, most);
  }

  /** A lay that cuts nothing. */
  Spread nothing() {
    return new Spread(new int[sizes.size()], new int[colours.size()]);
  }

  /** The mix of one garment. */
  int[] one(int s) {
    int[] mix = new int[sizes.size()];
    mix[s] = 1;
    return mix;
  }

  private long sets() {
    return Arrays.stream(most).mapToLong(Spread::sum).sum();
  }

  private void limitSets(int c, int s) {
    int wanted = wanted(c, s);
    int garments = order.spreading().garmentsTogether();
    least[c][s] = ceilDiv(order.tolerance().least(wanted), garments);
    most[c][s] = order.tolerance().most(wanted) / garments;
    if (least[c][s] > most[c][s]) {
      // Nothing lies within tolerance: one garment too many is better than one too few.
      most[c][s] = least[c][s];
    }
  }

  int wanted(int c, int s) {
    return order.wanted(colours.get(c), sizes.get(s));
  }

  /** Cloth for one turn on this mix, with end loss, in thousandths of a mm. */
  long turnCloth(int[] mix) {
    return known.computeIfAbsent(
        new MixKey(mix),
        key ->
            Math.round(
                (lengthMm(mix) + order.limits().endLossMm())
                    * 1000
                    * order.spreading().lengthsTogether()));
  }

  /** Cloth that one set adds to a turn at least, in thousandths of a mm. */
  long leastCloth(int s) {
    return leastCloth[s];
  }

  /** End loss of one turn, in thousandths of a mm. */
  long endCloth() {
    return floor(order.limits().endLossMm());
  }

  /** Cloth for the garments of one turn that the table holds at most, in thousandths of a mm. */
  double clothOnTable() {
    return (order.limits().tableMm() - order.limits().endLossMm())
        * 1000
        * order.spreading().lengthsTogether();
  }

  private long floor(double mm) {
    return (long) (mm * 1000 * order.spreading().lengthsTogether() + 1e-6);
  }

  /** What is bought for so much cloth of one colour; both in thousandths of a mm. */
  long bought(long cloth) {
    return order.cost().goods().isEmpty()
        ? cloth
        : Math.round(order.cost().boughtMm(cloth / 1000.0) * 1000);
  }

  /** What so much cloth that is paid and so many lays cost, in {@link Value}'s unit. */
  long cost(long cloth, long lays) {
    return cloth * price + lays * layCost;
  }

  /**
   * Cost and cloth of a lay as one number, for searches that need one; 1 is the cloth of the
   * longest garment. Without costs a lay weighs so little that cloth decides.
   */
  double weight(int[] mix, int turns) {
    return layWeight + turns * turnWeight(mix);
  }

  /** The part of {@link #weight} that each turn adds. */
  double turnWeight(int[] mix) {
    return turnCloth(mix) / longestGarment;
  }

  /** What a lay costs, in the cloth of the longest garment. */
  double layWeight() {
    return layWeight;
  }

  private double reckonedLayWeight() {
    double clothCost = longestGarment * price / 1e10;
    if (clothCost > 0) {
      return order.cost().lay() / clothCost;
    }
    return order.cost().lay() > 0 ? 1000 : 0.01;
  }

  /** Length of the marker without end loss, mm. */
  double lengthMm(int[] mix) {
    return lengths.lengthMm(sizeMix(mix));
  }

  SizeMix sizeMix(int[] mix) {
    Map<String, Integer> garments = new LinkedHashMap<>();
    for (int s = 0; s < mix.length; s++) {
      if (mix[s] > 0) {
        garments.put(sizes.get(s), mix[s]);
      }
    }
    return new SizeMix(garments);
  }

  /** How much too long the marker is for the table, with end loss; 0 if it fits; whole mm, up. */
  long tooLong(int[] mix) {
    double clothMm = turnCloth(mix) / 1000.0 / order.spreading().lengthsTogether();
    // Half a thousandth of a mm lies within the rounding of turnCloth.
    return (long) Math.max(0, Math.ceil(clothMm - order.limits().tableMm() - 0.0005));
  }

  /** Whether a marker may hold this mix. */
  boolean fits(int[] mix) {
    return Spread.sum(mix) <= maxGarments && tooLong(mix) == 0;
  }

  /** Sets cut by colour, then size. */
  int[][] sets(List<Spread> plan) {
    int[][] sets = new int[colours.size()][sizes.size()];
    for (Spread spread : plan) {
      for (int c = 0; c < colours.size(); c++) {
        for (int s = 0; s < sizes.size(); s++) {
          sets[c][s] += spread.turns()[c] * spread.mix()[s];
        }
      }
    }
    return sets;
  }

  /** How many sets lie outside the tolerance when so many are cut. */
  int outside(int c, int s, int sets) {
    return Math.max(0, Math.max(least[c][s] - sets, sets - most[c][s]));
  }

  /** Whether a plan cuts everything within the tolerance. */
  boolean within(List<Spread> plan) {
    return outside(plan) == 0;
  }

  /** How many sets of all sizes and colours lie outside the tolerance. */
  long outside(List<Spread> plan) {
    int[][] sets = sets(plan);
    long outside = 0;
    for (int c = 0; c < sets.length; c++) {
      for (int s = 0; s < sets[c].length; s++) {
        outside += outside(c, s, sets[c][s]);
      }
    }
    return outside;
  }

  /** Garments between what so many sets make and what is wanted. */
  int deviation(int c, int s, int sets) {
    return Math.abs(sets * order.spreading().garmentsTogether() - wanted(c, s));
  }

  /** Cloth of a plan with end loss, in thousandths of a mm. */
  long cloth(List<Spread> plan) {
    return Arrays.stream(clothByColour(plan)).sum();
  }

  private long[] clothByColour(List<Spread> plan) {
    long[] cloth = new long[colours.size()];
    for (Spread spread : plan) {
      long turn = spread.empty() ? 0 : turnCloth(spread.mix());
      for (int c = 0; c < cloth.length; c++) {
        cloth[c] += spread.turns()[c] * turn;
      }
    }
    return cloth;
  }

  /** The value of a plan whose spreads all cut something, by the cloth that is bought for it. */
  Value value(List<Spread> plan) {
    return value(plan, Arrays.stream(clothByColour(plan)).map(this::bought).sum());
  }

  /** The same by the cloth that is cut, for parts of a plan: only the whole is rounded up. */
  Value valueAsCut(List<Spread> plan) {
    return value(plan, cloth(plan));
  }

  private Value value(List<Spread> plan, long paid) {
    int[][] sets = sets(plan);
    long deviation = 0;
    for (int c = 0; c < colours.size(); c++) {
      for (int s = 0; s < sizes.size(); s++) {
        deviation += deviation(c, s, sets[c][s]);
      }
    }
    return new Value(cost(paid, plan.size()), cloth(plan), plan.size(), deviation);
  }

  static int ceilDiv(long amount, long by) {
    return Math.toIntExact((amount + by - 1) / by);
  }

  /** A mix as the key of a map. */
  private static final class MixKey {

    private final int[] mix;
    private final int hash;

    MixKey(int[] mix) {
      this.mix = mix.clone();
      this.hash = Arrays.hashCode(mix);
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof MixKey key && Arrays.equals(mix, key.mix);
    }

    @Override
    public int hashCode() {
      return hash;
    }
  }
}
