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
  private static final long MOST_CHANGES = 30_000;

  private static final int MOST_PLIES = 20;

  /** How often all colours are gone through again while there are plies over the limit. */
  private static final int PASSES = 3;

  /** What a ply over the limit weighs against thousandths of a mm of cloth. */
  private static final long TOO_MANY = 1L << 40;

  private final Numbers numbers;
  private final SplittableRandom random;
  private final PlanningBudget budget;
  private final long[] garment;

  PlyExchange(Numbers numbers, SplittableRandom random, PlanningBudget budget) {
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
    return numbers.outside(result) <= numbers.outside(plan) ? result : plan;
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
      for (int c : List.copyOf(colours)) {
        if (budget.over()) {
          break;
        }
        boolean lacks = !Arrays.equals(sets[c], numbers.least[c]);
        int[] lacking = new int[sets[c].length];
        Arrays.setAll(lacking, s -> numbers.least[c][s] - sets[c][s]);
        // Cloth can be saved once everything is cut.
        if ((lacks || !lacksAny) && !serve(c, garments(lacking), lacks ? Long.MAX_VALUE : 0)) {
          colours.remove((Integer) c);
        }
      }
      for (int pass = 0; pass < PASSES && tooMany() > 0; pass++) {
        for (int c : colours) {
          if (!budget.over()) {
            serve(c, 0, 0);
          }
        }
      }
      for (int k = 0; k < room.length; k++) {
        takeOff(k);
      }
    }

    /** Plies over the limit. */
    private long tooMany() {
      return Arrays.stream(room).mapToLong(r -> Math.max(0, -r)).sum();
    }

    private void takeOff(int lay) {
      int[] turns = lays.get(lay).turns();
      while (room[lay] < 0) {
        int most = 0;
        for (int c = 1; c < turns.length; c++) {
          most = turns[c] > turns[most] ? c : most;
        }
        turns[most]--;
        room[lay]++;
      }
    }

    /**
     * Takes the change that cuts what is lacking with fewest plies over the limit, then least
     * cloth; false if none rises by less than so much.
     */
    private boolean serve(int colour, long lacking, long most) {
      byte[][] best = null;
      long least = most;
      budget.use(1 + changes.size() / PlanningBudget.CHANGES);
      for (int i = 0; i < changes.size(); i++) {
        byte[] one = changes.get(i);
        long rest = lacking - sums.of(i);
        for (int j = sums.first(rest); j >= 0; j = sums.next(j)) {
          if (sums.of(j) == rest) {
            long rise = rise(colour, one, changes.get(j));
            if (rise < least) {
              least = rise;
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
      return best != null;
    }

    /** By how much plies over the limit and cloth rise; the highest number if it cannot be done. */
    private long rise(int colour, byte[] one, byte[] other) {
      long rise = 0;
      for (int k = 0; k < one.length; k++) {
        int more = one[k] + other[k];
        if (lays.get(k).turns()[colour] + more < 0) {
          return Long.MAX_VALUE;
        }
        rise += more * cloth[k];
        rise += TOO_MANY * (Math.max(0, more - room[k]) - Math.max(0, -room[k]));
      }
      return rise;
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
