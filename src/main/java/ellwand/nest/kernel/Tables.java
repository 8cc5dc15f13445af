package ellwand.nest.kernel;

import ellwand.work.TooLittleMemory;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;

/**
 * The pair tables of a set of centred outlines, built when first asked for, by whichever thread
 * asks. Pairs that differ by a half turn of both, or by who is still and who moves, share one.
 */
final class Tables {

  /** Above so many outlines the tables have fewer cells, to keep them in the cache. */
  private static final int MANY = 50;

  private final NoFit noFit;
  private final int count;
  private final int levels;
  private final double[][] outlines;

  /** What of the outlines may not overlap an obstacle. */
  private final double[][] bare;

  private final boolean[] fixed;

  /** For each outline the first one that is the same but for a half turn, and 1 or -1. */
  private final int[] base;

  private final int[] turn;

  /** By moving outline and still outline; null until built. */
  final PairTable[] tables;

  /** Goes with {@link #tables}: what to multiply a place by before asking. */
  final double[] signs;

  /** By the two outlines, the lower first, and whether both are turned alike. */
  private final Map<Integer, PairTable> built = new ConcurrentHashMap<>();

  /**
   * @param bare for each outline what of it may not overlap an obstacle
   * @param obstacles which outlines are of obstacles
   * @param levels how often a table's box is quartered at the most
   */
  Tables(
      List<double[]> centred,
      List<double[]> bare,
      Set<Integer> obstacles,
      NoFit noFit,
      int levels) {
    this.noFit = noFit;
    count = centred.size();
    outlines = centred.toArray(double[][]::new);
    this.bare = bare.toArray(double[][]::new);
    fixed = new boolean[count];
    obstacles.forEach(i -> fixed[i] = true);
    base = new int[count];
    turn = new int[count];
    for (int i = 0; i < count; i++) {
      base[i] = i;
      turn[i] = 1;
      double size = Rings.max(outlines[i], 0) + Rings.max(outlines[i], 1);
      double[] turned = Rings.turned(outlines[i]);
      for (int k = 0; k < i && base[i] == i; k++) {
        if (fixed[i] != fixed[k]) {
          continue;
        }
        if (Rings.same(outlines[i], outlines[k], 1e-12 * size)
            && Rings.same(this.bare[i], this.bare[k], 1e-12 * size)) {
          base[i] = base[k];
          turn[i] = turn[k];
        } else if (Rings.same(turned, outlines[k], 1e-12 * size)
            && Rings.same(Rings.turned(this.bare[i]), this.bare[k], 1e-12 * size)) {
          base[i] = base[k];
          turn[i] = -turn[k];
        }
      }
    }
    this.levels = Math.min(levels, distinct() > MANY ? 4 : 5);
    tables = new PairTable[count * count];
    signs = new double[count * count];
    for (int s = 0; s < count; s++) {
      for (int m = 0; m < count; m++) {
        boolean swapped = base[s] > base[m] && turn[s] == turn[m];
        signs[m * count + s] = swapped ? -turn[s] : turn[s];
      }
    }
  }

  private int distinct() {
    int distinct = 0;
    for (int i = 0; i < count; i++) {
      distinct += base[i] == i ? 1 : 0;
    }
    return distinct;
  }

  /**
   * The table to ask for {@code moving} seen from {@code still}, with the place multiplied by
   * {@link #sign}.
   */
  PairTable table(int still, int moving) {
    PairTable table = tables[moving * count + still];
    return table != null ? table : build(still, moving);
  }

  /** The same, but null where it isn't built yet and there is no time left for that. */
  PairTable table(int still, int moving, ThreadBudget budget) {
    PairTable table = tables[moving * count + still];
    return table != null || budget.late() ? table : build(still, moving);
  }

  /** How long it takes to build them all, in pairs of corners. */
  double work() {
    double corners = 0;
    for (int i = 0; i < count; i++) {
      corners += base[i] == i ? outlines[i].length / 2 : 0;
    }
    return corners * corners;
  }

  /** Builds every table that isn't there yet, until told that it is enough. */
  void buildAll(BooleanSupplier enough) {
    for (int s = 0; s < count; s++) {
      for (int m = 0; m <= s; m++) {
        if (enough.getAsBoolean()) {
          return;
        }
        table(s, m);
        table(m, s);
      }
    }
  }

  double sign(int still, int moving) {
    return signs[moving * count + still];
  }

  private PairTable build(int still, int moving) {
    int a = Math.min(base[still], base[moving]);
    int b = Math.max(base[still], base[moving]);
    boolean alike = turn[still] == turn[moving];
    try {
      PairTable table =
          built.computeIfAbsent(
              2 * (a * count + b) + (alike ? 1 : 0),
              pair -> {
                double[][] of = fixed[a] || fixed[b] ? bare : outlines;
                return noFit.table(of[a], alike ? of[b] : Rings.turned(of[b]), levels);
              });
      tables[moving * count + still] = table;
      return table;
    } catch (TooLittleMemory e) {
      throw e;
    } catch (OutOfMemoryError e) {
      throw built.isEmpty() ? e : tooMany(e);
    }
  }

  /** As if every two outlines met, in tables as large as those that are built are on average. */
  private TooLittleMemory tooMany(OutOfMemoryError e) {
    long bytes = 0;
    int number = 0;
    for (PairTable table : built.values()) {
      bytes += table.bytes();
      number++;
    }
    long distinct = distinct();
    boolean turned = Arrays.stream(turn).anyMatch(t -> t < 0);
    long pairs = distinct * (distinct + 1) / 2 * (turned ? 2 : 1);
    return new TooLittleMemory(
        "the %d different shapes to be laid, which meet in %d pairs,".formatted(distinct, pairs),
        bytes / number * pairs,
        e);
  }
}
