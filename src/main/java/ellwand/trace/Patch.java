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

  /** What cannot be reached from outside without crossing it belongs, too. */
  private static Patch filled(Cells cells, int[] members) {
    int width = cells.width();
    int left = width;
    int top = cells.height();
    int right = -1;
    int bottom = -1;
    for (int i : members) {
      left = Math.min(left, i % width);
      right = Math.max(right, i % width);
      top = Math.min(top, i / width);
      bottom = Math.max(bottom, i / width);
    }
    // The box of it, with a cell all round.
    int wide = right - left + 3;
    int high = bottom - top + 3;
    boolean[] closed = new boolean[wide * high];
    for (int i : members) {
      closed[(i / width - top + 1) * wide + i % width - left + 1] = true;
    }
    int[] stack = new int[closed.length];
    int size = 1;
    int count = closed.length - 1;
    boolean[] outside = new boolean[closed.length];
    outside[0] = true;
    while (size > 0) {
      int at = stack[--size];
      int x = at % wide;
      int[] next = {x > 0 ? at - 1 : -1, x < wide - 1 ? at + 1 : -1, at - wide, at + wide};
      for (int n : next) {
        if (n >= 0 && n < closed.length && !closed[n] && !outside[n]) {
          outside[n] = true;
          stack[size++] = n;
          count--;
        }
      }
    }
    boolean[] has = new boolean[cells.size()];
    for (int y = top; y <= bottom; y++) {
      for (int x = left; x <= right; x++) {
        has[y * width + x] = !outside[(y - top + 1) * wide + x - left + 1];
      }
    }
    return new Patch(has, count, left, top, right, bottom);
  }
}
