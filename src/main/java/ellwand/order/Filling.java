package ellwand.order;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Adds lays, one after another, until everything is cut: each grows size by size to the mix that
 * costs least for each set it cuts. Always ends within the limits, since a marker of one garment
 * can cut any number.
 */
final class Filling {

  private static final int TRIES = 12;

  private final Numbers numbers;
  private final SplittableRandom random;

  Filling(Numbers numbers, SplittableRandom random) {
    this.numbers = numbers;
    this.random = random;
  }

  /** Adds to a plan that cuts nothing too often. */
  void complete(List<Spread> plan) {
    int[][] sets = numbers.sets(plan);
    for (Spread next = best(sets); next != null; next = best(sets)) {
      plan.add(next);
      for (int c = 0; c < sets.length; c++) {
        for (int s = 0; s < sets[c].length; s++) {
          sets[c][s] += next.turns()[c] * next.mix()[s];
        }
      }
    }
  }

  private Spread best(int[][] sets) {
    Spread best = null;
    double lowest = Double.POSITIVE_INFINITY;
    int[] open = openSizes(sets);
    for (int t = 0; open.length > 0 && t < TRIES; t++) {
      int[] mix = new int[numbers.sizes.size()];
      mix[open[random.nextInt(open.length)]] = 1;
      do {
        Spread spread = new Spread(mix.clone(), turns(mix, sets));
        double price = priceOfASet(spread, sets);
        if (price < lowest) {
          lowest = price;
          best = spread;
        }
      } while (grow(mix, open, sets));
    }
    return best;
  }

  private int[] openSizes(int[][] sets) {
    return IntStream.range(0, numbers.sizes.size())
        .filter(
            s -> {
              for (int c = 0; c < sets.length; c++) {
                if (sets[c][s] < numbers.least[c][s]) {
                  return true;
                }
              }
              return false;
            })
        .toArray();
  }

  /** Adds the garment after which most plies can still be spread; false if none can be added. */
  private boolean grow(int[] mix, int[] open, int[][] sets) {
    int best = -1;
    double most = 0;
    for (int s : open) {
      mix[s]++;
      if (numbers.fits(mix)) {
        double turns = Spread.sum(turns(mix, sets)) * (1 + 0.3 * random.nextDouble());
        if (turns > most) {
          most = turns;
          best = s;
        }
      }
      mix[s]--;
    }
    if (best >= 0) {
      mix[best]++;
    }
    return best >= 0;
  }

  /** As many turns as the tolerance leaves room for and the missing sets ask for. */
  private int[] turns(int[] mix, int[][] sets) {
    int[] turns = new int[sets.length];
    int total = 0;
    for (int c = 0; c < sets.length; c++) {
      int room = Integer.MAX_VALUE;
      int asked = 0;
      for (int s = 0; s < mix.length; s++) {
        if (mix[s] > 0) {
          room = Math.min(room, (numbers.most[c][s] - sets[c][s]) / mix[s]);
          int missing = Math.max(0, numbers.least[c][s] - sets[c][s]);
          asked = Math.max(asked, Numbers.ceilDiv(missing, mix[s]));
        }
      }
      turns[c] = Math.min(room, asked);
      total += turns[c];
    }
    shorten(turns, total);
    return turns;
  }

  /** Takes off what is beyond the ply limit, from the colours with fewest plies first. */
  private void shorten(int[] turns, int total) {
    int tooMany = total - numbers.maxTurns;
    while (tooMany > 0) {
      int fewest = -1;
      for (int c = 0; c < turns.length; c++) {
        if (turns[c] > 0 && (fewest < 0 || turns[c] < turns[fewest])) {
          fewest = c;
        }
      }
      int off = Math.min(tooMany, turns[fewest]);
      turns[fewest] -= off;
      tooMany -= off;
    }
  }

  private double priceOfASet(Spread spread, int[][] sets) {
    int turns = spread.totalTurns();
    long useful = 0;
    for (int c = 0; c < sets.length; c++) {
      for (int s = 0; s < numbers.sizes.size(); s++) {
        int missing = Math.max(0, numbers.least[c][s] - sets[c][s]);
        useful += Math.min(missing, spread.turns()[c] * spread.mix()[s]);
      }
    }
    return useful == 0 ? Double.POSITIVE_INFINITY : numbers.weight(spread.mix(), turns) / useful;
  }
}
