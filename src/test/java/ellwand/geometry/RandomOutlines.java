package ellwand.geometry;

import java.util.Arrays;
import java.util.SplittableRandom;

/** Outlines for random tests: flat, counter-clockwise, without crossings. */
public final class RandomOutlines {

  private RandomOutlines() {}

  /** A star round the origin; the deeper the bays, the less convex. */
  public static double[] star(SplittableRandom random, int points, double radius, double bays) {
    double[] ring = new double[2 * points];
    // Less than half a turn from one to the next, or three points would run the other way round.
    double uneven = Math.min(0.8, 0.49 * points - 1);
    for (int i = 0; i < points; i++) {
      double angle = 2 * Math.PI * (i + uneven * random.nextDouble()) / points;
      double r = radius * (1 - bays * random.nextDouble());
      ring[2 * i] = r * Math.cos(angle);
      ring[2 * i + 1] = r * Math.sin(angle);
    }
    return ring;
  }

  /** A comb with teeth upwards, on whole numbers: many parallel sides and exact fits. */
  public static double[] comb(SplittableRandom random, int teeth) {
    double[] ring = new double[8 * teeth + 4];
    int width = 4 * teeth;
    int at = 0;
    ring[at++] = 0;
    ring[at++] = 0;
    ring[at++] = width;
    ring[at++] = 0;
    for (int i = teeth - 1; i >= 0; i--) {
      int height = 3 + random.nextInt(4);
      int right = i == teeth - 1 ? width : 4 * i + 2 + random.nextInt(2);
      ring[at++] = right;
      ring[at++] = height;
      ring[at++] = 4 * i + (i == 0 ? 0 : 1);
      ring[at++] = height;
      if (i > 0) {
        int floor = 1 + random.nextInt(2);
        ring[at++] = 4 * i + 1;
        ring[at++] = floor;
        ring[at++] = 4 * (i - 1) + 3;
        ring[at++] = floor;
      }
    }
    return Arrays.copyOf(ring, at);
  }

  /** A smooth body of many points with one broad bay, like a garment's front. */
  public static double[] smooth(SplittableRandom random, int points, double radius) {
    double[] ring = new double[2 * points];
    double lean = random.nextDouble(6);
    double wave = 0.1 + 0.15 * random.nextDouble();
    for (int i = 0; i < points; i++) {
      double angle = 2 * Math.PI * i / points;
      double r = radius * (1 + wave * Math.sin(2 * angle + lean) + 0.1 * Math.cos(3 * angle));
      ring[2 * i] = 1.6 * r * Math.cos(angle);
      ring[2 * i + 1] = r * Math.sin(angle);
    }
    return ring;
  }
}
