package ellwand.nest.kernel;

/** What a unit of depth costs for each pair of bodies: dearer the longer the pair overlaps. */
final class Weights {

  /** What is left of a pair's weight when it no longer overlaps; Gardeyn et al. 2025. */
  private static final double FADE = 0.95;

  /**
   * What a weight grows by after a sweep.
   *
   * @param least of the shallowest pair
   * @param most of the deepest
   */
  record Growth(double least, double most) {

    /** While there is much to gain. */
    static final Growth GENTLE = new Growth(1.1, 1.5);

    /** For restarts at the least step; measured, at all times it costs short searches. */
    static final Growth STEEP = new Growth(1.2, 2);
  }

  private Growth growth = Growth.GENTLE;

  /** The cost just now, body by body, both halves kept; changed only here. */
  final double[] now;

  private final double[] base;
  private final int bodies;

  /** The pairs that cost more than at first, the lower body first: places in the arrays above. */
  private final int[] dear;

  private int count;

  Weights(double[] base, int bodies) {
    this.base = base;
    this.bodies = bodies;
    now = base.clone();
    dear = new int[bodies * bodies / 2 + 1];
  }

  /** Lets them grow so from now on. */
  void grow(Growth by) {
    growth = by;
  }

  /** Lets every pair cost what it does at first. */
  void calm() {
    for (int i = 0; i < count; i++) {
      set(dear[i], base[dear[i]]);
    }
    count = 0;
  }

  /**
   * Makes the pairs that overlap dearer, the deeper the more; the others come back towards what
   * they cost at first.
   *
   * @param depth of each pair, body by body
   * @param clashes with how many others each body overlaps
   * @param copies the bodies that can move, which come first
   */
  void shift(double[] depth, int[] clashes, int copies) {
    int kept = 0;
    for (int i = 0; i < count; i++) {
      int pair = dear[i];
      if (depth[pair] == 0) {
        set(pair, Math.max(base[pair], now[pair] * FADE));
      }
      if (depth[pair] > 0 || now[pair] > base[pair]) {
        dear[kept++] = pair;
      }
    }
    count = kept;
    double deepest = 0;
    for (int i = 0; i < copies; i++) {
      for (int k = i + 1; clashes[i] > 0 && k < bodies; k++) {
        deepest = Math.max(deepest, depth[i * bodies + k]);
      }
    }
    for (int i = 0; i < copies; i++) {
      for (int k = i + 1; clashes[i] > 0 && k < bodies; k++) {
        int pair = i * bodies + k;
        if (depth[pair] > 0) {
          if (now[pair] == base[pair]) {
            dear[count++] = pair;
          }
          double gain = growth.least + (growth.most - growth.least) * depth[pair] / deepest;
          set(pair, now[pair] * gain);
        }
      }
    }
  }

  private void set(int pair, double to) {
    now[pair] = to;
    now[pair % bodies * bodies + pair / bodies] = to;
  }
}
