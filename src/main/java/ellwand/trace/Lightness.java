package ellwand.trace;

import ellwand.geometry.Point;

/**
 * How light part of a picture that is seen from straight above is.
 *
 * @param first where the centre of the first pixel lies, mm
 * @param of the logarithm of each pixel's light, row by row: a shadow is a step, whatever it lies
 *     on
 */
record Lightness(Point first, double pixelMm, int width, int height, float[] of) {

  /**
   * @param side so many of the picture's pixels each way become one
   * @param left the first column, as {@code top} the first row, counted as the pixels of which
   *     there are {@code width} by {@code height}
   */
  static Lightness of(View view, int side, int left, int top, int width, int height) {
    float[] of = new float[width * height];
    int[] rows = new int[width * side * side];
    for (int y = 0; y < height; y++) {
      view.picture()
          .getRGB(left * side, (top + y) * side, width * side, side, rows, 0, width * side);
      for (int i = 0; i < rows.length; i++) {
        int rgb = rows[i];
        of[y * width + i % (width * side) / side] +=
            Light.of(rgb >> 16 & 255) + 2 * Light.of(rgb >> 8 & 255) + Light.of(rgb & 255);
      }
      for (int i = y * width; i < (y + 1) * width; i++) {
        of[i] = (float) Math.log(of[i] / (4 * side * side) + Light.DARK);
      }
    }
    double middle = (side - 1) / 2.0;
    Mapping mapping = view.mapping();
    Point first = mapping.mmAt(new Point(left * side + middle, top * side + middle));
    double pixelMm = mapping.mmAt(new Point((left + 1) * side + middle, 0)).x() - first.x();
    return new Lightness(first, pixelMm, width, height, of);
  }

  /** All of a picture in pixels that are no finer, unless the picture's own are coarser. */
  static Lightness of(View view, double pixelMm) {
    int side =
        Math.max(1, (int) (pixelMm * view.pixelsPerMm(view.mapping().mmAt(new Point(0, 0)))));
    return of(
        view, side, 0, 0, view.picture().getWidth() / side, view.picture().getHeight() / side);
  }

  /** Where a place, in pixels, lies, mm. */
  Point mm(double x, double y) {
    return new Point(first.x() + x * pixelMm, first.y() - y * pixelMm);
  }
}
