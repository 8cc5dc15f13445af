package ellwand.trace;

import java.util.function.IntPredicate;

/**
 * The mean colour of certain cells near to any place: of the paper inside, of the ground outside.
 */
final class Nearby {

  private final Cells cells;

  /** Sums from the top left: three colours, and how many cells. */
  private final double[][] sums = new double[4][];

  Nearby(Cells cells, IntPredicate those) {
    this.cells = cells;
    int wide = cells.width() + 1;
    for (int c = 0; c < 4; c++) {
      sums[c] = new double[wide * (cells.height() + 1)];
    }
    for (int y = 0; y < cells.height(); y++) {
      for (int x = 0; x < cells.width(); x++) {
        int i = y * cells.width() + x;
        boolean in = those.test(i);
        int to = (y + 1) * wide + x + 1;
        for (int c = 0; c < 4; c++) {
          double own = !in ? 0 : c < 3 ? cells.light()[c][i] : 1;
          sums[c][to] = own + sums[c][to - 1] + sums[c][to - wide] - sums[c][to - wide - 1];
        }
      }
    }
  }

  /**
   * Puts the mean of those in a square round a cell into {@code colour}.
   *
   * @param reach to each side, cells; grown until there are enough
   * @return whether there are any
   */
  boolean mean(int x, int y, int reach, float[] colour) {
    for (int r = reach; r <= 8 * reach; r *= 2) {
      int left = Math.max(0, x - r);
      int top = Math.max(0, y - r);
      int right = Math.min(cells.width(), x + r + 1);
      int bottom = Math.min(cells.height(), y + r + 1);
      double count = sum(3, left, top, right, bottom);
      if (count >= reach) {
        for (int c = 0; c < 3; c++) {
          colour[c] = (float) (sum(c, left, top, right, bottom) / count);
        }
        return true;
      }
    }
    return false;
  }

  private double sum(int c, int left, int top, int right, int bottom) {
    int wide = cells.width() + 1;
    double[] s = sums[c];
    return s[bottom * wide + right]
        - s[top * wide + right]
        - s[bottom * wide + left]
        + s[top * wide + left];
  }
}
