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
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (int i = 0; i < NUMBERS; i++) {
      for (int j = 0; j < NUMBERS; j++) {
        double c = open[i * NUMBERS + j];
        xx += dx[i] * c * dx[j];
        xy += dx[i] * c * dy[j];
        yy += dy[i] * c * dy[j];
      }
    }
    // The larger axis of the ellipse of one standard deviation, twice.
    double larger = (xx + yy) / 2 + Math.hypot((xx - yy) / 2, xy);
    return 2 * Math.sqrt(larger);
  }
}
