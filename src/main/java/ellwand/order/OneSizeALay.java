package ellwand.order;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The plain plan: every lay has garments of one size only. For each size up to three markers of
 * different numbers of garments are chosen, and each colour is cut with the least cloth that these
 * allow, as change is given with the fewest coins.
 */
final class OneSizeALay {

  /** Numbers of garments that are tried for a marker: up to this one, and as many as fit. */
  private static final int MOST_TRIED = 8;

  private static final long NEVER = Long.MAX_VALUE / 2;

  private final Numbers numbers;

  OneSizeALay(Numbers numbers) {
    this.numbers = numbers;
  }

  List<Spread> plan() {
    List<Spread> plan = new ArrayList<>();
    for (int s = 0; s < numbers.sizes.size(); s++) {
      plan.addAll(plan(s));
    }
    return plan;
  }

  private List<Spread> plan(int size) {
    List<Integer> counts = counts(size);
    List<Spread> best = null;
    for (int i = 0; i < counts.size(); i++) {
      for (int j = i; j < counts.size(); j++) {
        for (int k = j; k < counts.size(); k++) {
          List<Spread> plan =
              plan(
                  size,
                  IntStream.of(counts.get(i), counts.get(j), counts.get(k)).distinct().toArray());
          if (plan != null
              && (best == null
                  || numbers.valueAsCut(plan).compareTo(numbers.valueAsCut(best)) < 0)) {
            best = plan;
          }
        }
      }
    }
    return best;
  }

  /** Numbers of garments that a marker may hold, the most first. */
  private List<Integer> counts(int size) {
    List<Integer> counts = new ArrayList<>();
    for (int n = 1; n <= numbers.maxGarments && numbers.fits(mix(size, n)); n++) {
      if (n > MOST_TRIED) {
        counts.remove(0);
      }
      counts.add(0, n);
    }
    return counts;
  }

  private int[] mix(int size, int garments) {
    int[] mix = new int[numbers.sizes.size()];
    mix[size] = garments;
    return mix;
  }

  /** With markers of these numbers of garments, the most first; null if they cannot cut it. */
  private List<Spread> plan(int size, int[] counts) {
    long[] cloth = IntStream.of(counts).mapToLong(n -> numbers.turnCloth(mix(size, n))).toArray();
    int[][] turns = new int[counts.length][numbers.colours.size()];
    for (int c = 0; c < numbers.colours.size(); c++) {
      if (!change(numbers.least[c][size], numbers.most[c][size], counts, cloth, turns, c)) {
        return null;
      }
    }
    List<Spread> plan = new ArrayList<>();
    for (int i = 0; i < counts.length; i++) {
      spread(mix(size, counts[i]), turns[i], plan);
    }
    return plan;
  }

  /** Finds the turns of each marker that cut one colour; false if there are none. */
  private static boolean change(
      int least, int most, int[] counts, long[] cloth, int[][] turns, int colour) {
    // Beyond that, as many turns of the largest marker do the same in turn of any other.
    int full = Math.max(0, least / counts[0] - 2 * counts[0]);
    int rest = least - full * counts[0];
    int end = rest + Math.min(most - least, counts[0]);
    long[] needs = new long[end + 1];
    int[] last = new int[end + 1];
    for (int n = 1; n <= end; n++) {
      needs[n] = NEVER;
      for (int i = 0; i < counts.length; i++) {
        if (counts[i] <= n && needs[n - counts[i]] + cloth[i] < needs[n]) {
          needs[n] = needs[n - counts[i]] + cloth[i];
          last[n] = i;
        }
      }
    }
    int best = rest;
    for (int n = rest; n <= end; n++) {
      best = needs[n] < needs[best] ? n : best;
    }
    if (needs[best] >= NEVER) {
      return false;
    }
    turns[0][colour] = full;
    for (int n = best; n > 0; n -= counts[last[n]]) {
      turns[last[n]][colour]++;
    }
    return true;
  }

  /** In as many lays as the ply limit asks for. */
  private void spread(int[] mix, int[] turns, List<Spread> plan) {
    int[] now = new int[turns.length];
    int room = numbers.maxTurns;
    for (int c = 0; c < turns.length; c++) {
      for (int left = turns[c]; left > 0; left -= now[c]) {
        if (room == 0) {
          plan.add(new Spread(mix, now));
          now = new int[turns.length];
          room = numbers.maxTurns;
        }
        now[c] = Math.min(left, room);
        room -= now[c];
      }
    }
    if (Spread.sum(now) > 0) {
      plan.add(new Spread(mix, now));
    }
  }
}
