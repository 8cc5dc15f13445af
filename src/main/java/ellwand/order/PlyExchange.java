package ellwand.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Exchanges plies between lays, whose mixes stay, until every colour cuts just the least that its
 * tolerance allows, with as little cloth as can be.
 *
 * <p>Small changes of up to three lays are listed once for all colours. Then two of them are
 * combined by looking up, for each, the one that cuts what it still lacks (meeting in the middle:
 * Horowitz and Sahni, Journal of the ACM 21, 1974). What a change cuts is known by one number, the
 * sum of a random number for each garment, so that the sums of two changes add up too.
 */
final class PlyExchange {

  /** Lays that exchange plies at one time. */
  private static final int MOST_LAYS = 24;

  private static final int LAYS_IN_A_CHANGE = 3;

  /** Changes listed at the most, unless even a single ply more or less makes more. */
  private static final long MOST_CHANGES = 100_000;

  private static final int MOST_PLIES = 20;

  private final Numbers numbers;
  private final SplittableRandom random;
  private final Budget budget;
  private final long[] garment;

  PlyExchange(Numbers numbers, SplittableRandom random, Budget budget) {
    this.numbers = numbers;
    this.random = random;
    this.budget = budget;
    this.garment = random.longs(numbers.sizes.size()).toArray();
  }

  /** The same lays with other plies, where that brings a colour nearer to what is wanted. */
  List<Spread> exchange(List<Spread> plan) {
    List<Spread> result = new ArrayList<>();
    plan.forEach(spread -> result.add(new Spread(spread.mix(), spread.turns().clone())));
    List<Spread> some =
        new ArrayList<>(result.stream().filter(spread -> spread.garments() > 0).toList());
    Collections.shuffle(some, new Random(random.nextLong()));
    new Exchange(some.subList(0, Math.min(MOST_LAYS, some.size()))).run(numbers.sets(result));
    return result;
  }

  /** Among the lays chosen. */
  private final class Exchange {

    private final List<Spread> lays;
    private final long[] marker;
    private final long[] cloth;
    private final int[] room;
    private final List<byte[]> changes = new ArrayList<>();
    private final Sums sums;

    Exchange(List<Spread> lays) {
      this.lays = lays;
      this.marker = lays.stream().mapToLong(spread -> garments(spread.mix())).toArray();
      this.cloth = lays.stream().mapToLong(spread -> numbers.turnCloth(spread.mix())).toArray();
      this.room = lays.stream().mapToInt(s -> numbers.maxTurns - s.totalTurns()).toArray();
      list(new byte[lays.size()], 0, LAYS_IN_A_CHANGE, plies());
      this.sums = new Sums(changes.stream().mapToLong(this::cuts).toArray());
    }

    /** The most by which one lay's plies may change. */
    private int plies() {
      int plies = 1;
      while (plies < MOST_PLIES && changes(plies + 1) <= MOST_CHANGES) {
        plies++;
      }
      return plies;
    }

    private double changes(int plies) {
      double ways = 2 * plies;
      double n = lays.size();
      return n * ways
          + n * (n - 1) / 2 * ways * ways
          + n * (n - 1) * (n - 2) / 6 * ways * ways * ways;
    }

    private void list(byte[] change, int from, int more, int plies) {
      changes.add(change.clone());
      for (int k = from; more > 0 && k < change.length; k++) {
        for (int n = -plies; n <= plies; n++) {
          change[k] = (byte) n;
          if (n != 0) {
            list(change, k + 1, more - 1, plies);
          }
        }
        change[k] = 0;
      }
    }

    private long cuts(byte[] change) {
      long cuts = 0;
      for (int k = 0; k < change.length; k++) {
        cuts += change[k] * marker[k];
      }
      return cuts;
    }

    void run(int[][] sets) {
      boolean lacksAny = !Arrays.deepEquals(sets, numbers.least);
      List<Integer> colours = new ArrayList<>(IntStream.range(0, sets.length).boxed().toList());
      Collections.shuffle(colours, new Random(random.nextLong()));
      for (int c : colours) {
        boolean lacks = !Arrays.equals(sets[c], numbers.least[c]);
        // Cloth can be saved once everything is cut.
        if (lacks || !lacksAny) {
          int[] lacking = new int[sets[c].length];
          Arrays.setAll(lacking, s -> numbers.least[c][s] - sets[c][s]);
          serve(c, garments(lacking), lacks ? Long.MAX_VALUE : 0);
        }
      }
    }

    /** Takes the change of least cloth that cuts what is lacking, if it takes less than so much. */
    private void serve(int colour, long lacking, long mostCloth) {
      byte[][] best = null;
      long least = mostCloth;
      budget.use(1 + changes.size() / Budget.CHANGES);
      for (int i = 0; i < changes.size(); i++) {
        byte[] one = changes.get(i);
        long rest = lacking - sums.of(i);
        for (int j = sums.first(rest); j >= 0; j = sums.next(j)) {
          if (sums.of(j) == rest && possible(colour, one, changes.get(j))) {
            long taken = cloth(one) + cloth(changes.get(j));
            if (taken < least) {
              least = taken;
              best = new byte[][] {one, changes.get(j)};
            }
          }
        }
      }
      for (int k = 0; best != null && k < room.length; k++) {
        int more = best[0][k] + best[1][k];
        lays.get(k).turns()[colour] += more;
        room[k] -= more;
      }
    }

    private boolean possible(int colour, byte[] one, byte[] other) {
      for (int k = 0; k < one.length; k++) {
        int more = one[k] + other[k];
        if (more > room[k] || lays.get(k).turns()[colour] + more < 0) {
          return false;
        }
      }
      return true;
    }

    private long cloth(byte[] change) {
      long taken = 0;
      for (int k = 0; k < change.length; k++) {
        taken += change[k] * cloth[k];
      }
      return taken;
    }
  }

  private long garments(int[] counts) {
    long sum = 0;
    for (int s = 0; s < counts.length; s++) {
      sum += counts[s] * garment[s];
    }
    return sum;
  }

  /** Numbers to be found again by their value. */
  private static final class Sums {

    private final long[] sums;
    private final int[] first;
    private final int[] next;

    Sums(long[] sums) {
      this.sums = sums;
      this.first = new int[Integer.highestOneBit(2 * sums.length)];
      this.next = new int[sums.length];
      Arrays.fill(first, -1);
      for (int i = 0; i < sums.length; i++) {
        next[i] = first[place(sums[i])];
        first[place(sums[i])] = i;
      }
    }

    long of(int i) {
      return sums[i];
    }

    /** The first that may be of this value, -1 if there is none. */
    int first(long sum) {
      return first[place(sum)];
    }

    int next(int i) {
      return next[i];
    }

    private int place(long sum) {
      return (int) ((sum * 0x9E3779B97F4A7C15L) >>> 33) & (first.length - 1);
    }
  }
}
