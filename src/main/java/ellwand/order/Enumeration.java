package ellwand.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Tries every plan of a small order, from the fewest lays upwards: all sets of mixes, and for each
 * all plies, colour by colour, leaving out what can't become better than the best plan found.
 */
final class Enumeration {

  private static final int MOST_MIXES = 2_000;

  /**
   * With more sets of mixes than this (as a power of ten) there is no hope, whatever is left out.
   */
  private static final double MOST_SETS = 12;

  private final Numbers numbers;
  private final LowerBounds bounds;
  private final PlanningBudget budget;
  private final List<int[]> mixes = new ArrayList<>();
  private final int[][] sets;

  private List<Spread> best;
  private Value bestValue;
  private long looks;
  private boolean overdrawn;

  /** The lays being tried: their mixes, turns by lay and colour, and room for further turns. */
  private int[][] mix;

  private int[][] turns;
  private int[] room;

  /** Cloth of the turns by colour, in thousandths of a mm. */
  private final long[] cloth;

  Enumeration(Numbers numbers, LowerBounds bounds, List<Spread> start, PlanningBudget budget) {
    this.numbers = numbers;
    this.bounds = bounds;
    this.budget = budget;
    this.best = start;
    this.bestValue = numbers.value(start);
    this.sets = new int[numbers.colours.size()][numbers.sizes.size()];
    this.cloth = new long[sets.length];
  }

  /** The best plan found, perhaps the one it started with. */
  List<Spread> best() {
    return best;
  }

  /** Whether every plan was tried or left out with reason, so that none is better. */
  boolean run() {
    if (!collectMixes(new int[numbers.sizes.size()], 0)) {
      return false;
    }
    for (int lays = bounds.lays(); promising(lays); lays++) {
      if (setsOfMixes(lays) > MOST_SETS) {
        return false;
      }
      mix = new int[lays][];
      turns = new int[lays][sets.length];
      room = new int[lays];
      Arrays.fill(room, numbers.maxTurns);
      chooseMixes(0, 0);
      if (overdrawn) {
        return false;
      }
    }
    return true;
  }

  private boolean promising(int lays) {
    return bounds.best(numbers, lays).compareTo(bestValue) < 0;
  }

  /** The number of ways to choose so many mixes, as a power of ten. */
  private double setsOfMixes(int lays) {
    return IntStream.rangeClosed(1, lays)
        .mapToDouble(k -> Math.log10((mixes.size() + k - 1.0) / k))
        .sum();
  }

  /** Counts a look; false if there is no time for another. */
  private boolean look() {
    if (++looks % PlanningBudget.LOOKS == 0) {
      budget.use();
      overdrawn |= budget.fifthUsed();
    }
    return !overdrawn;
  }

  private boolean collectMixes(int[] so, int size) {
    if (size == so.length) {
      if (Spread.sum(so) > 0 && numbers.fits(so)) {
        mixes.add(so.clone());
      }
      return mixes.size() <= MOST_MIXES;
    }
    int most = Arrays.stream(numbers.most).mapToInt(row -> row[size]).max().orElse(0);
    boolean fewEnough = true;
    for (so[size] = 0; so[size] <= most && fewEnough; so[size]++) {
      if (Spread.sum(so) > numbers.maxGarments || leastCloth(so) > numbers.clothOnTable()) {
        break;
      }
      fewEnough = collectMixes(so, size + 1);
    }
    so[size] = 0;
    return fewEnough;
  }

  private long leastCloth(int[] so) {
    long cloth = 0;
    for (int s = 0; s < so.length; s++) {
      cloth += so[s] * numbers.leastCloth(s);
    }
    return cloth;
  }

  private void chooseMixes(int lay, int from) {
    if (lay == mix.length) {
      chooseTurns(0, 0);
      return;
    }
    for (int i = from; i < mixes.size() && look() && promising(mix.length); i++) {
      mix[lay] = mixes.get(i);
      if (coverable(lay + 1)) {
        chooseMixes(lay + 1, i);
      }
    }
  }

  /** Whether the lays still to be chosen can hold what the chosen ones can't cut. */
  private boolean coverable(int chosen) {
    int missingSizes = 0;
    long missing = 0;
    for (int s = 0; s < sets[0].length; s++) {
      int perTurn = 0;
      for (int k = 0; k < chosen; k++) {
        perTurn += mix[k][s];
      }
      int asked = 0;
      for (int[] least : numbers.least) {
        asked += least[s];
      }
      missing += Math.max(0, asked - (long) perTurn * numbers.maxTurns);
      missingSizes += perTurn == 0 && asked > 0 ? 1 : 0;
    }
    long places = (long) (mix.length - chosen) * numbers.maxGarments;
    return missingSizes <= places && missing <= places * numbers.maxTurns;
  }

  private void chooseTurns(int colour, int lay) {
    if (!look()) {
      return;
    }
    if (colour == sets.length) {
      compare();
      return;
    }
    if (lay == mix.length) {
      chooseTurns(colour + 1, 0);
      return;
    }
    if (!worthwhile(colour)) {
      return;
    }
    int fewest = fewestTurns(colour, lay);
    int most = mostTurns(colour, lay);
    for (int t = fewest; t <= most && !overdrawn; t++) {
      add(colour, lay, t);
      chooseTurns(colour, lay + 1);
      add(colour, lay, -t);
    }
  }

  /** Whether the cloth used and the least that is still needed may become a better plan. */
  private boolean worthwhile(int colour) {
    long atLeast = 0;
    long bought = 0;
    for (int c = 0; c < sets.length; c++) {
      long ofColour = cloth[c];
      for (int s = 0; c >= colour && s < sets[c].length; s++) {
        ofColour += Math.max(0, numbers.least[c][s] - sets[c][s]) * numbers.leastCloth(s);
      }
      atLeast += ofColour;
      bought += numbers.bought(ofColour);
    }
    return LowerBounds.best(numbers, mix.length, atLeast, bought).compareTo(bestValue) < 0;
  }

  /** What the sizes ask for that the later lays can't cut; more than any number if impossible. */
  private int fewestTurns(int colour, int lay) {
    int fewest = 0;
    for (int s = 0; s < sets[colour].length; s++) {
      long missing = numbers.least[colour][s] - sets[colour][s];
      for (int k = lay + 1; k < mix.length; k++) {
        missing -= (long) mix[k][s] * room[k];
      }
      if (missing > 0) {
        int asked = mix[lay][s] == 0 ? Integer.MAX_VALUE : Numbers.ceilDiv(missing, mix[lay][s]);
        fewest = Math.max(fewest, asked);
      }
    }
    return fewest;
  }

  private int mostTurns(int colour, int lay) {
    int most = room[lay];
    for (int s = 0; s < sets[colour].length; s++) {
      if (mix[lay][s] > 0) {
        most = Math.min(most, (numbers.most[colour][s] - sets[colour][s]) / mix[lay][s]);
      }
    }
    return most;
  }

  private void add(int colour, int lay, int more) {
    turns[lay][colour] += more;
    room[lay] -= more;
    cloth[colour] += more * numbers.turnCloth(mix[lay]);
    for (int s = 0; s < sets[colour].length; s++) {
      sets[colour][s] += more * mix[lay][s];
    }
  }

  private void compare() {
    List<Spread> plan = new ArrayList<>();
    for (int k = 0; k < mix.length; k++) {
      Spread spread = new Spread(mix[k], turns[k].clone());
      if (!spread.empty()) {
        plan.add(spread);
      }
    }
    Value value = numbers.value(plan);
    if (value.compareTo(bestValue) < 0) {
      best = plan;
      bestValue = value;
    }
  }
}
