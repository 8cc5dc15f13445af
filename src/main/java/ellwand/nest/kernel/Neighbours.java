package ellwand.nest.kernel;

import java.util.Arrays;

/**
 * Finds bodies whose boxes may meet a given box: for each column the bodies that begin by it and
 * those that end from it on, for each row likewise, as bits. Four words ANDed answer for 64 bodies.
 */
final class Neighbours {

  private static final int COLUMNS = 128;
  private static final int ROWS = 32;

  final int words;
  private final long[] beginBy;
  private final long[] endFrom;
  private final long[] lowBy;
  private final long[] highFrom;

  /** First and last column and row of each body; -1 when it isn't in. */
  private final int[] spans;

  private double perX;
  private double lowY;
  private double perY;

  Neighbours(int bodies) {
    words = (bodies + 63) / 64;
    beginBy = new long[COLUMNS * words];
    endFrom = new long[COLUMNS * words];
    lowBy = new long[ROWS * words];
    highFrom = new long[ROWS * words];
    spans = new int[4 * bodies];
  }

  /** Empties it and spreads the grid over a strip. */
  void begin(double length, double low, double high) {
    perX = COLUMNS / length;
    lowY = low;
    perY = ROWS / (high - low);
    Arrays.fill(beginBy, 0);
    Arrays.fill(endFrom, 0);
    Arrays.fill(lowBy, 0);
    Arrays.fill(highFrom, 0);
    Arrays.fill(spans, -1);
  }

  int column(double x) {
    return Math.max(0, Math.min(COLUMNS - 1, (int) (x * perX)));
  }

  int row(double y) {
    return Math.max(0, Math.min(ROWS - 1, (int) ((y - lowY) * perY)));
  }

  void put(int body, double x, double y, double halfX, double halfY) {
    int s = 4 * body;
    by(beginBy, body, spans[s], spans[s] = column(x - halfX), COLUMNS);
    from(endFrom, body, spans[s + 1], spans[s + 1] = column(x + halfX));
    by(lowBy, body, spans[s + 2], spans[s + 2] = row(y - halfY), ROWS);
    from(highFrom, body, spans[s + 3], spans[s + 3] = row(y + halfY));
  }

  /** The bit is to stand from {@code to} upwards; it stood from {@code was} upwards. */
  private void by(long[] bits, int body, int was, int to, int count) {
    long bit = 1L << body;
    int word = body >> 6;
    int stood = was < 0 ? count : was;
    for (int c = to; c < stood; c++) {
      bits[c * words + word] |= bit;
    }
    for (int c = stood; c < to; c++) {
      bits[c * words + word] &= ~bit;
    }
  }

  /** The bit is to stand from {@code to} downwards; it stood from {@code was} downwards. */
  private void from(long[] bits, int body, int was, int to) {
    long bit = 1L << body;
    int word = body >> 6;
    for (int c = was + 1; c <= to; c++) {
      bits[c * words + word] |= bit;
    }
    for (int c = to + 1; c <= was; c++) {
      bits[c * words + word] &= ~bit;
    }
  }

  /**
   * Bodies of one word that may meet the box between two columns and two rows, each given times
   * {@link #words}.
   */
  long near(int word, int left, int right, int bottom, int top) {
    return beginBy[right + word]
        & endFrom[left + word]
        & lowBy[top + word]
        & highFrom[bottom + word];
  }
}
