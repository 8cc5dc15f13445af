package ellwand.nest.kernel;

import java.util.List;

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

  /** For each outline the first one that is the same but for a half turn, and 1 or -1. */
  private final int[] base;

  private final int[] turn;

  /** By still outline and moving outline; null until built. */
  private final PairTable[] tables;

  /** Goes with {@link #tables}: what to multiply a place by before asking. */
  private final double[] signs;

  private final Object[] locks;

  Tables(List<double[]> centred, NoFit noFit) {
    this.noFit = noFit;
    count = centred.size();
    outlines = centred.toArray(double[][]::new);
    base = new int[count];
    turn = new int[count];
    for (int i = 0; i < count; i++) {
      base[i] = i;
      turn[i] = 1;
      double size = Rings.max(outlines[i], 0) + Rings.max(outlines[i], 1);
      double[] turned = Rings.turned(outlines[i]);
      for (int k = 0; k < i && base[i] == i; k++) {
        if (Rings.same(outlines[i], outlines[k], 1e-12 * size)) {
          base[i] = base[k];
          turn[i] = turn[k];
        } else if (Rings.same(turned, outlines[k], 1e-12 * size)) {
          base[i] = base[k];
          turn[i] = -turn[k];
        }
      }
    }
    levels = distinct() > MANY ? 4 : 5;
    tables = new PairTable[count * count];
    signs = new double[count * count];
    for (int s = 0; s < count; s++) {
      for (int m = 0; m < count; m++) {
        boolean swapped = base[s] > base[m] && turn[s] == turn[m];
        signs[s * count + m] = swapped ? -turn[s] : turn[s];
      }
    }
    locks = new Object[64];
    for (int i = 0; i < locks.length; i++) {
      locks[i] = new Object();
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
    PairTable table = tables[still * count + moving];
    return table != null ? table : build(still, moving);
  }

  double sign(int still, int moving) {
    return signs[still * count + moving];
  }

  private PairTable build(int still, int moving) {
    int a = Math.min(base[still], base[moving]);
    int b = Math.max(base[still], base[moving]);
    boolean alike = turn[still] == turn[moving];
    synchronized (locks[Math.floorMod(a * 31 + b * 2 + (alike ? 1 : 0), locks.length)]) {
      for (int s = 0; s < count; s++) {
        for (int m = 0; m < count; m++) {
          PairTable known = tables[s * count + m];
          if (known != null && serves(s, m, a, b, alike)) {
            tables[still * count + moving] = known;
            return known;
          }
        }
      }
      double[] other = alike ? outlines[b] : Rings.turned(outlines[b]);
      PairTable table = PairTableBuilder.build(noFit.rings(outlines[a], other), levels);
      tables[still * count + moving] = table;
      return table;
    }
  }

  private boolean serves(int s, int m, int a, int b, boolean alike) {
    return Math.min(base[s], base[m]) == a
        && Math.max(base[s], base[m]) == b
        && (turn[s] == turn[m]) == alike;
  }
}
