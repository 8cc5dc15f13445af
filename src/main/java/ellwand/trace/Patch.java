package ellwand.trace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Cells that hang together, with what they enclose.
 *
 * @param has of each cell of the scene whether it belongs
 * @param count how many do
 * @param left the first column, as {@code top} the first row and {@code right}, {@code bottom} the
 *     last
 */
record Patch(boolean[] has, int count, int left, int top, int right, int bottom) {

  /** Fewer cells are no patch. */
  private static final int LEAST = 400;

  /** Nor is what has less than this share of the largest. */
  private static final double LEAST_SHARE = 0.04;

  private static final int MOST = 20;

  /** The groups of cells that are neighbours by their sides, the largest first. */
  static List<Patch> of(Cells cells, boolean[] those) {
    List<int[]> groups = new ArrayList<>();
    boolean[] done = new boolean[those.length];
    int[] stack = new int[those.length];
    for (int i = 0; i < those.length; i++) {
      if (those[i] && !done[i]) {
        int size = grown(cells, those, i, done, stack);
        if (size >= LEAST) {
          groups.add(Arrays.copyOf(stack, size));
        }
      }
    }
    groups.sort(Comparator.comparingInt((int[] g) -> -g.length));
    return groups.stream()
        .filter(g -> g.length >= LEAST_SHARE * groups.get(0).length)
        .limit(MOST)
        .map(g -> filled(cells, g))
        .toList();
  }

  /** Puts the cells that hang together with one into {@code stack}, and says how many. */
  private static int grown(Cells cells, boolean[] those, int start, boolean[] done, int[] stack) {
    int size = 0;
    stack[size++] = start;
    done[start] = true;
    for (int k = 0; k < size; k++) {
      int x = stack[k] % cells.width();
      int y = stack[k] / cells.width();
      for (int way = 0; way < 4; way++) {
        int nx = x + (way == 0 ? 1 : way == 1 ? -1 : 0);
        int ny = y + (way == 2 ? 1 : way == 3 ? -1 : 0);
        int next = ny * cells.width() + nx;
        if (nx >= 0
            && ny >= 0
            && nx < cells.width()
            && ny < cells.height()
            && those[next]
            && !done[next]) {
          done[next] = true;
          stack[size++] = next;
        }
      }
    }
    return size;
  }

  /** What cannot be reached from the border without crossing it belongs, too. */
  private static Patch filled(Cells cells, int[] members) {
    int width = cells.width();
    boolean[] group = new boolean[cells.size()];
    for (int i : members) {
      group[i] = true;
    }
    boolean[] outside = new boolean[group.length];
    int[] stack = new int[group.length];
    int size = 0;
    for (int i = 0; i < group.length; i++) {
      int x = i % width;
      int y = i / width;
      boolean border = x == 0 || y == 0 || x == width - 1 || y == cells.height() - 1;
      if (border && !group[i]) {
        outside[i] = true;
        stack[size++] = i;
      }
    }
    for (int k = 0; k < size; k++) {
      int x = stack[k] % width;
      int[] next = {
        x > 0 ? stack[k] - 1 : -1,
        x < width - 1 ? stack[k] + 1 : -1,
        stack[k] - width,
        stack[k] + width
      };
      for (int n : next) {
        if (n >= 0 && n < group.length && !group[n] && !outside[n]) {
          outside[n] = true;
          stack[size++] = n;
        }
      }
    }
    boolean[] has = new boolean[group.length];
    int count = 0;
    int left = width;
    int top = cells.height();
    int right = -1;
    int bottom = -1;
    for (int i = 0; i < has.length; i++) {
      if (!outside[i]) {
        has[i] = true;
        count++;
        left = Math.min(left, i % width);
        right = Math.max(right, i % width);
        top = Math.min(top, i / width);
        bottom = Math.max(bottom, i / width);
      }
    }
    return new Patch(has, count, left, top, right, bottom);
  }
}
