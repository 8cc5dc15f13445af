package ellwand.trace;

import boofcv.struct.image.GrayU8;
import ellwand.geometry.Point;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.Optional;

/** A picture in shades of grey, and what is measured in it to fractions of a pixel. */
final class Grey {

  private static final int ROUNDS = 30;

  /** How little a corner moves when it is found, pixels. */
  private static final double STILL = 1e-3;

  private final int[] rgb;
  private final int width;
  private final int height;

  /**
   * @param picture of type {@link BufferedImage#TYPE_INT_RGB}
   */
  Grey(BufferedImage picture) {
    rgb = ((DataBufferInt) picture.getRaster().getDataBuffer()).getData();
    width = picture.getWidth();
    height = picture.getHeight();
  }

  /** For the vision library. */
  GrayU8 image() {
    GrayU8 image = new GrayU8(width, height);
    for (int i = 0; i < rgb.length; i++) {
      image.data[i] = (byte) at(i);
    }
    return image;
  }

  /** ITU-R BT.601 luma, 0 to 255. */
  private int at(int i) {
    int c = rgb[i];
    return (299 * (c >> 16 & 255) + 587 * (c >> 8 & 255) + 114 * (c & 255)) / 1000;
  }

  /** Between the centres of four pixels; not a number outside. */
  double at(Point p) {
    if (!(p.x() >= 0 && p.y() >= 0 && p.x() < width - 1 && p.y() < height - 1)) {
      return Double.NaN;
    }
    int x = (int) p.x();
    int y = (int) p.y();
    double a = p.x() - x;
    double b = p.y() - y;
    int i = y * width + x;
    return (1 - b) * ((1 - a) * at(i) + a * at(i + 1))
        + b * ((1 - a) * at(i + width) + a * at(i + width + 1));
  }

  /**
   * The place near {@code start} where four squares meet: the one that all gradients round it point
   * past, by least squares. It turns half round onto itself, so blur and ink that spreads do not
   * move it.
   *
   * @param reach half the side of the window looked at, pixels
   * @return empty where there is no such place within the window
   */
  Optional<Point> corner(Point start, double reach) {
    Point at = start;
    int side = (int) Math.ceil(reach);
    for (int round = 0; round < ROUNDS; round++) {
      double xx = 0;
      double xy = 0;
      double yy = 0;
      double bx = 0;
      double by = 0;
      for (int dy = -side; dy <= side; dy++) {
        for (int dx = -side; dx <= side; dx++) {
          Point p = new Point(at.x() + dx, at.y() + dy);
          double gx = at(new Point(p.x() + 1, p.y())) - at(new Point(p.x() - 1, p.y()));
          double gy = at(new Point(p.x(), p.y() + 1)) - at(new Point(p.x(), p.y() - 1));
          double far = (dx * dx + dy * dy) / (reach * reach);
          double weight = Math.exp(-2 * far);
          xx += weight * gx * gx;
          xy += weight * gx * gy;
          yy += weight * gy * gy;
          bx += weight * (gx * gx * dx + gx * gy * dy);
          by += weight * (gx * gy * dx + gy * gy * dy);
        }
      }
      double determinant = xx * yy - xy * xy;
      // Gradients in one direction only are an edge; not a number is the picture's border.
      if (!(determinant > 0.02 * (xx + yy) * (xx + yy))) {
        return Optional.empty();
      }
      Point step = new Point((yy * bx - xy * by) / determinant, (xx * by - xy * bx) / determinant);
      at = at.plus(step);
      if (at.distance(start) > reach) {
        return Optional.empty();
      }
      if (step.norm() < STILL) {
        return Optional.of(at);
      }
    }
    return Optional.empty();
  }
}
