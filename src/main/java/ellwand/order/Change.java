package ellwand.order;

import java.util.random.RandomGenerator;

/** Small changes of one lay that keep to the limits of marker, table and plies. */
final class Change {

  private Change() {}

  /** The changed lay, or null if what was drawn can't be done. */
  static Spread of(Spread spread, Numbers numbers, RandomGenerator random) {
    return random.nextInt(4) == 0
        ? otherMix(spread, numbers, random)
        : otherTurns(spread, numbers, random);
  }

  /** A garment more, a garment less, or one size instead of another. */
  private static Spread otherMix(Spread spread, Numbers numbers, RandomGenerator random) {
    int[] mix = spread.mix().clone();
    int out = random.nextInt(mix.length);
    int in = random.nextInt(mix.length);
    int kind = random.nextInt(12);
    boolean takes = kind >= 4;
    boolean puts = kind < 4 || kind >= 6;
    if (takes && (mix[out] == 0 || (puts && in == out))) {
      return null;
    }
    mix[out] -= takes ? 1 : 0;
    mix[in] += puts ? 1 : 0;
    return puts && !numbers.fits(mix) ? null : new Spread(mix, spread.turns());
  }

  /** More or fewer plies of a colour, or some of one colour instead of another. */
  private static Spread otherTurns(Spread spread, Numbers numbers, RandomGenerator random) {
    int[] turns = spread.turns().clone();
    int step = 1 + random.nextInt(random.nextInt(4) == 0 ? 20 : 2);
    int change = random.nextBoolean() ? step : -step;
    shift(turns, random.nextInt(turns.length), change);
    if (random.nextInt(3) == 0) {
      shift(turns, random.nextInt(turns.length), -change);
    }
    return Spread.sum(turns) > numbers.maxTurns ? null : new Spread(spread.mix(), turns);
  }

  private static void shift(int[] turns, int colour, int change) {
    turns[colour] = Math.max(0, turns[colour] + change);
  }
}
