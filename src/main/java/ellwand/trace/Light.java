package ellwand.trace;

/**
 * How much light the numbers of a picture stand for, by the sRGB curve (IEC 61966-2-1): what a lens
 * blurs is light, so that a border lies where half of it is reached, not half of the number.
 */
final class Light {

  /** Added before logarithms, so that noise in the dark does not count for much. */
  static final double DARK = 0.01;

  private static final float[] OF = new float[256];

  static {
    for (int i = 0; i < OF.length; i++) {
      double v = i / 255.0;
      OF[i] = (float) (v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4));
    }
  }

  private Light() {}

  /** As a share of full light, of a number from 0 to 255. */
  static float of(int number) {
    return OF[number];
  }
}
