package ellwand.trace;

/** A picture of one number a pixel, smoothed. */
final class Smoothing {

  private Smoothing() {}

  /** Blurred with a Gaussian of so many pixels. */
  static float[] gaussian(float[] from, int width, int height, double sigma) {
    int reach = (int) Math.ceil(2.5 * sigma);
    float[] weights = new float[2 * reach + 1];
    float sum = 0;
    for (int i = -reach; i <= reach; i++) {
      weights[i + reach] = (float) Math.exp(-i * i / (2 * sigma * sigma));
      sum += weights[i + reach];
    }
    float[] rows = new float[from.length];
    float[] both = new float[from.length];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        float mean = 0;
        for (int i = -reach; i <= reach; i++) {
          int at = Math.min(width - 1, Math.max(0, x + i));
          mean += weights[i + reach] * from[y * width + at];
        }
        rows[y * width + x] = mean / sum;
      }
    }
    for (int y = 0; y < height; y++) {
      for (int i = -reach; i <= reach; i++) {
        int at = Math.min(height - 1, Math.max(0, y + i)) * width;
        float weight = weights[i + reach] / sum;
        for (int x = 0; x < width; x++) {
          both[y * width + x] += weight * rows[at + x];
        }
      }
    }
    return both;
  }

  /** With what is dark and narrower than twice the reach made as light as what is round it. */
  static float[] closed(float[] from, int width, int height, int reach) {
    float[] most = extreme(from, width, height, reach, 1);
    return extreme(most, width, height, reach, -1);
  }

  /** The most (sign 1) or least (-1) in the square round each pixel. */
  private static float[] extreme(float[] from, int width, int height, int reach, int sign) {
    float[] rows = new float[from.length];
    int[] queue = new int[Math.max(width, height)];
    for (int y = 0; y < height; y++) {
      slide(from, rows, y * width, 1, width, reach, sign, queue);
    }
    float[] both = new float[from.length];
    for (int x = 0; x < width; x++) {
      slide(rows, both, x, width, height, reach, sign, queue);
    }
    return both;
  }

  /** Along one row or column; the queue keeps what may yet be the most. */
  private static void slide(
      float[] from, float[] to, int start, int step, int count, int reach, int sign, int[] queue) {
    int head = 0;
    int tail = 0;
    for (int i = 0; i < count + reach; i++) {
      if (i < count) {
        float value = sign * from[start + i * step];
        while (tail > head && sign * from[start + queue[tail - 1] * step] <= value) {
          tail--;
        }
        queue[tail++] = i;
      }
      int at = i - reach;
      if (at >= 0) {
        while (queue[head] < at - reach) {
          head++;
        }
        to[start + at * step] = from[start + queue[head] * step];
      }
    }
  }
}
