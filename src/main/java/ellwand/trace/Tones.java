package ellwand.trace;

import java.util.Arrays;
import java.util.Random;

/** The few tones that something consists of, each with its spread. */
final class Tones {

  /** Nothing is more even than this: lightness and two hues, logarithms. */
  private static final double[] LEAST_SPREAD = {0.06, 0.03, 0.03};

  /** So many cells are enough to tell tones by. */
  private static final int SAMPLES = 20_000;

  private static final int ROUNDS = 12;

  /** What fits no tone is no less likely than this, so that printed lines do not decide. */
  private static final double STRANGE = -14;

  private static final double[] EVEN =
      Arrays.stream(LEAST_SPREAD).map(spread -> 1 / spread).toArray();

  private final double[][] means;
  private final double[][] spreads;
  private final double[][] sharpness;
  private final double[] shares;

  /** What is known of a cell before its tone is seen: the share's logarithm less the spread's. */
  private final double[] before;

  private Tones(int count) {
    before = new double[count];
    means = new double[count][3];
    spreads = new double[count][3];
    sharpness = new double[count][3];
    shares = new double[count];
  }

  /**
   * Found by k-means.
   *
   * @param tones by kind, then cell
   * @param cells of which they are looked for; at least one
   */
  static Tones of(float[][] tones, int[] cells, int count) {
    Random dice = new Random(1);
    int[] samples =
        cells.length <= SAMPLES
            ? cells
            : dice.ints(SAMPLES, 0, cells.length).map(i -> cells[i]).toArray();
    Tones found = new Tones(count);
    found.start(tones, samples);
    int[] nearest = new int[samples.length];
    for (int round = 0; round < ROUNDS; round++) {
      for (int i = 0; i < samples.length; i++) {
        nearest[i] = found.nearest(tones, samples[i]);
      }
      found.settle(tones, samples, nearest);
    }
    for (int k = 0; k < count; k++) {
      found.before[k] = Math.log(found.shares[k]);
      for (int c = 0; c < 3; c++) {
        found.before[k] -= Math.log(found.spreads[k][c] / LEAST_SPREAD[c]);
        found.sharpness[k][c] = 1 / found.spreads[k][c];
      }
    }
    return found;
  }

  /** At cells evenly spread from the darkest to the lightest. */
  private void start(float[][] tones, int[] samples) {
    int[] sorted =
        Arrays.stream(samples)
            .boxed()
            .sorted((a, b) -> Float.compare(tones[0][a], tones[0][b]))
            .mapToInt(i -> i)
            .toArray();
    for (int k = 0; k < means.length; k++) {
      int cell = sorted[(int) ((k + 0.5) / means.length * sorted.length)];
      for (int c = 0; c < 3; c++) {
        means[k][c] = tones[c][cell];
        spreads[k][c] = LEAST_SPREAD[c];
      }
      shares[k] = 1.0 / means.length;
    }
  }

  int nearest(float[][] tones, int cell) {
    int nearest = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int k = 0; k < means.length; k++) {
      double a = (tones[0][cell] - means[k][0]) * EVEN[0];
      double b = (tones[1][cell] - means[k][1]) * EVEN[1];
      double c = (tones[2][cell] - means[k][2]) * EVEN[2];
      double sum = a * a + b * b + c * c;
      if (sum < least) {
        least = sum;
        nearest = k;
      }
    }
    return nearest;
  }

  private void settle(float[][] tones, int[] samples, int[] nearest) {
    for (int k = 0; k < means.length; k++) {
      int count = 0;
      double[] sums = new double[3];
      double[] squares = new double[3];
      for (int i = 0; i < samples.length; i++) {
        if (nearest[i] == k) {
          count++;
          for (int c = 0; c < 3; c++) {
            sums[c] += tones[c][samples[i]];
            squares[c] += tones[c][samples[i]] * tones[c][samples[i]];
          }
        }
      }
      shares[k] = (double) count / samples.length;
      for (int c = 0; c < 3 && count > 0; c++) {
        means[k][c] = sums[c] / count;
        double variance = squares[c] / count - means[k][c] * means[k][c];
        spreads[k][c] = Math.max(LEAST_SPREAD[c], Math.sqrt(Math.max(0, variance)));
      }
    }
  }

  /** How likely a cell shows one of them, a logarithm. */
  double likelihood(float[][] tones, int cell) {
    double best = STRANGE;
    for (int k = 0; k < means.length; k++) {
      if (shares[k] > 0.01) {
        double a = (tones[0][cell] - means[k][0]) * sharpness[k][0];
        double b = (tones[1][cell] - means[k][1]) * sharpness[k][1];
        double c = (tones[2][cell] - means[k][2]) * sharpness[k][2];
        best = Math.max(best, before[k] - (a * a + b * b + c * c) / 2);
      }
    }
    return best;
  }

  /** By how many of its spreads a cell is off the nearest of them. */
  double off(float[][] tones, int cell) {
    double least = Double.POSITIVE_INFINITY;
    for (int k = 0; k < means.length; k++) {
      if (shares[k] > 0.01) {
        double sum = 0;
        for (int c = 0; c < 3; c++) {
          double off = (tones[c][cell] - means[k][c]) / spreads[k][c];
          sum += off * off;
        }
        least = Math.min(least, sum);
      }
    }
    return Math.sqrt(least);
  }
}
