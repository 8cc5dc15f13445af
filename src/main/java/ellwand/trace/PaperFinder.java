package ellwand.trace;

import java.util.Arrays;
import java.util.List;

/**
 * Tells paper from the ground it lies on, in coarse cells. What runs along the border of what is
 * seen is ground; what differs from it and hangs together is paper at first; then the tones of both
 * are learned anew from what each was taken for, a few times.
 */
final class PaperFinder {

  /** As many tones as a wooden floor, and as paper with a shadow on it and print, have. */
  private static final int GROUND_TONES = 5;

  private static final int PAPER_TONES = 3;

  /** How far from the border of what is seen ground is looked for, mm. */
  private static final double BORDER_MM = 12;

  /** What differs from the ground by more spreads is no ground at first. */
  private static final double STRANGE = 3.5;

  /** What does not count is none. */
  private static final float NONE = -3;

  private static final int ROUNDS = 3;

  /** A tone of the ground shows in as many parts of the border, of 24. */
  private static final int PARTS = 24;

  private static final double LEAST_PARTS = 0.25;

  private final Cells cells;
  private final float[][] tones;
  private final int[] fromBorder;

  private PaperFinder(Cells cells) {
    this.cells = cells;
    this.tones = cells.tones();
    boolean[] unseen = new boolean[cells.size()];
    for (int i = 0; i < unseen.length; i++) {
      unseen[i] = !cells.seen()[i];
    }
    this.fromBorder = Distances.to(cells.width(), unseen, true);
  }

  /** What may be paper pieces, the largest first; their holes are filled. */
  static List<Patch> patches(Cells cells) {
    return new PaperFinder(cells).found();
  }

  private List<Patch> found() {
    int border = (int) Math.ceil(BORDER_MM / cells.cellMm());
    byte[] kind = new byte[cells.size()];
    Arrays.fill(kind, (byte) -1);
    for (int i = 0; i < kind.length; i++) {
      if (cells.counts(i) && fromBorder[i] <= border) {
        kind[i] = 0;
      }
    }
    leaveOutWhatIsOnOneSide(kind);
    Evenness.out(cells, tones[0], kind);
    Tones ground = Tones.of(tones, of(kind, 0), GROUND_TONES);
    float[] strange = new float[cells.size()];
    for (int i = 0; i < strange.length; i++) {
      strange[i] = cells.counts(i) ? (float) (ground.off(tones, i) - STRANGE) : NONE;
    }
    List<Patch> patches = above(strange);
    for (int k = 0; k < ROUNDS && !patches.isEmpty(); k++) {
      learn(kind, patches);
      if (of(kind, 1).length == 0 || of(kind, 0).length == 0) {
        return List.of();
      }
      Evenness.out(cells, tones[0], kind);
      ground = Tones.of(tones, of(kind, 0), GROUND_TONES);
      Tones papers = Tones.of(tones, of(kind, 1), PAPER_TONES);
      for (int i = 0; i < strange.length; i++) {
        strange[i] =
            cells.counts(i)
                ? (float) (papers.likelihood(tones, i) - ground.likelihood(tones, i))
                : NONE;
      }
      patches = above(strange);
    }
    return patches;
  }

  private static int[] of(byte[] kind, int wanted) {
    int[] found = new int[kind.length];
    int count = 0;
    for (int i = 0; i < kind.length; i++) {
      if (kind[i] == wanted) {
        found[count++] = i;
      }
    }
    return Arrays.copyOf(found, count);
  }

  /** A tone that shows on one side of the border only is a piece that is cut off there. */
  private void leaveOutWhatIsOnOneSide(byte[] kind) {
    int[] seeds = of(kind, 0);
    if (seeds.length == 0) {
      return;
    }
    Tones all = Tones.of(tones, seeds, GROUND_TONES + 1);
    boolean[][] parts = new boolean[GROUND_TONES + 1][PARTS];
    int[] tone = new int[seeds.length];
    boolean[] any = new boolean[PARTS];
    for (int i = 0; i < seeds.length; i++) {
      int x = seeds[i] % cells.width() - cells.width() / 2;
      int y = seeds[i] / cells.width() - cells.height() / 2;
      int part = (int) ((Math.atan2(y, x) / (2 * Math.PI) + 0.5) * PARTS) % PARTS;
      tone[i] = all.nearest(tones, seeds[i]);
      parts[tone[i]][part] = true;
      any[part] = true;
    }
    for (int i = 0; i < seeds.length; i++) {
      int shown = 0;
      int of = 0;
      for (int p = 0; p < PARTS; p++) {
        shown += parts[tone[i]][p] ? 1 : 0;
        of += any[p] ? 1 : 0;
      }
      if (shown < LEAST_PARTS * of) {
        kind[seeds[i]] = -1;
      }
    }
  }

  /** Takes the insides of patches for paper and what lies well outside for ground. */
  private void learn(byte[] kind, List<Patch> patches) {
    boolean[] any = new boolean[cells.size()];
    for (Patch patch : patches) {
      for (int y = patch.top(); y <= patch.bottom(); y++) {
        for (int i = y * cells.width() + patch.left();
            i <= y * cells.width() + patch.right();
            i++) {
          any[i] |= patch.has()[i];
        }
      }
    }
    boolean[] none = new boolean[any.length];
    for (int i = 0; i < any.length; i++) {
      none[i] = !any[i];
    }
    int[] in = Distances.to(cells.width(), none, true);
    int[] out = Distances.to(cells.width(), any, false);
    for (int i = 0; i < kind.length; i++) {
      kind[i] = -1;
      if (cells.counts(i)) {
        if (in[i] > 3) {
          kind[i] = 1;
        } else if (out[i] > 3) {
          kind[i] = 0;
        }
      }
    }
  }

  /** What is above 0 when each cell is seen with its neighbours, where it hangs together. */
  private List<Patch> above(float[] value) {
    int width = cells.width();
    boolean[] above = new boolean[value.length];
    float[] threes = new float[value.length];
    for (int i = 1; i < value.length - 1; i++) {
      threes[i] = limited(value[i - 1]) + limited(value[i]) + limited(value[i + 1]);
    }
    for (int y = 1; y < cells.height() - 1; y++) {
      for (int x = 1; x < width - 1; x++) {
        int i = y * width + x;
        above[i] = threes[i - width] + threes[i] + threes[i + width] > 0 && cells.counts(i);
      }
    }
    opened(above);
    return Patch.of(cells, above);
  }

  private static float limited(float value) {
    return Math.max(-20, Math.min(20, value));
  }

  /** Takes off threads of a cell or two, which would tie a piece to what lies near it. */
  private void opened(boolean[] above) {
    boolean[] not = new boolean[above.length];
    for (int i = 0; i < above.length; i++) {
      not[i] = !above[i];
    }
    int[] deep = Distances.to(cells.width(), not, false);
    boolean[] core = new boolean[above.length];
    for (int i = 0; i < above.length; i++) {
      core[i] = deep[i] > 2;
    }
    int[] off = Distances.to(cells.width(), core, false);
    for (int i = 0; i < above.length; i++) {
      above[i] &= off[i] <= 3;
    }
  }
}
