package ellwand.trace;

import ellwand.geometry.Point;

/**
 * Of a photo whose camera is known as far as {@code open} leaves it.
 *
 * @param open covariance of the camera's numbers in the order of {@link Camera#changed}, row by row
 */
record CameraMapping(Camera camera, double[] open) implements Mapping {

  private static final int NUMBERS = 11;
  private static final double STEP = 1e-6;

  @Override
  public Point mmAt(Point pixel) {
    return camera.mmAt(pixel);
  }

  @Override
  public Point pixelAt(Point mm) {
    return camera.pixelAt(mm.x(), mm.y(), 0);
  }

  @Override
  public double errorMm(Point mm) {
    Point pixel = pixelAt(mm);
    double[] dx = new double[NUMBERS];
    double[] dy = new double[NUMBERS];
    for (int i = 0; i < NUMBERS; i++) {
      double[] by = new double[NUMBERS];
      by[i] = STEP;
      Point moved = camera.changed(by).mmAt(pixel);
      dx[i] = (moved.x() - mm.x()) / STEP;
      dy[i] = (moved.y() - mm.y()) / STEP;
    }
    return LeastSquares.farthest(dx, dy, open);
  }
}
