package ellwand.trace;

import java.util.Arrays;

/** How many cells off the nearest of some cells lies, going straight across sides. */
final class Distances {

  private static final int FAR = Integer.MAX_VALUE / 2;

  private Distances() {}

  /**
   * Of every cell; 0 for those cells themselves.
   *
   * @param outside whether what lies beyond the border is among them
   */
  static int[] to(int width, boolean[] those, boolean outside) {
    int height = those.length / width;
    int[] off = new int[those.length];
    Arrays.fill(off, FAR);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int i = y * width + x;
        int before = outside ? 0 : FAR;
        int least = Math.min(x > 0 ? off[i - 1] : before, y > 0 ? off[i - width] : before);
        off[i] = those[i] ? 0 : Math.min(FAR, least + 1);
      }
    }
    for (int y = height - 1; y >= 0; y--) {
      for (int x = width - 1; x >= 0; x--) {
        int i = y * width + x;
        int before = outside ? 0 : FAR;
        int least =
            Math.min(x < width - 1 ? off[i + 1] : before, y < height - 1 ? off[i + width] : before);
        off[i] = Math.min(off[i], Math.min(FAR, least + 1));
      }
    }
    return off;
  }
}
