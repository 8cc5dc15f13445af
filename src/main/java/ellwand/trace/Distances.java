package ellwand.trace;

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
    int[] off = new int[those.length];
    int beyond = outside ? 1 : FAR;
    for (int i = 0, x = 0; i < off.length; i++, x = x + 1 == width ? 0 : x + 1) {
      int beside = x > 0 ? off[i - 1] + 1 : beyond;
      int above = i >= width ? off[i - width] + 1 : beyond;
      int least = beside < above ? beside : above;
      off[i] = those[i] ? 0 : least < FAR ? least : FAR;
    }
    for (int i = off.length - 1, x = width - 1; i >= 0; i--, x = x == 0 ? width - 1 : x - 1) {
      int beside = x < width - 1 ? off[i + 1] + 1 : beyond;
      int below = i < off.length - width ? off[i + width] + 1 : beyond;
      int least = beside < below ? beside : below;
      off[i] = least < off[i] ? least : off[i];
    }
    return off;
  }
}
