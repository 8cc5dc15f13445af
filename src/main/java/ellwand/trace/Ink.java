package ellwand.trace;

import ellwand.geometry.Point;
import java.awt.image.BufferedImage;

/**
 * What is drawn or printed on a piece: by how much each pixel well inside of it is darker than the
 * paper round it, a logarithm, so that shadows do not count. What is wider than a few millimetres
 * is no ink.
 */
final class Ink {

  /** So near to the border of the paper nothing is looked at, cells. */
  private static final int CLEAR_CELLS = 5;

  /** Half of what ink is wide at most, mm: the head of an arrow is. */
  private static final double WIDE_MM = 4;

  /** What a pen's line is blurred by before it is looked at, mm. */
  private static final double BLUR_MM = 0.3;

  private static final double NEAR_MM = 0.5;

  private final Point first;
  private final double pixelMm;
  private final int left;
  private final int top;
  private final int width;
  private final int height;
  private final boolean[] inside;
  private final float[] dark;

  Ink(Straightened straight, Cells cells, Patch patch) {
    BufferedImage picture = straight.picture().picture();
    first = straight.picture().mapping().mmAt(new Point(0, 0));
    pixelMm = straight.picture().mapping().mmAt(new Point(1, 0)).x() - first.x();
    int pixels = (int) Math.round(cells.cellMm() / pixelMm);
    left = patch.left() * pixels;
    top = patch.top() * pixels;
    width = (patch.right() + 1) * pixels - left;
    height = (patch.bottom() + 1) * pixels - top;
    inside = new boolean[width * height];
    boolean[] not = new boolean[cells.size()];
    for (int i = 0; i < not.length; i++) {
      not[i] = !patch.has()[i];
    }
    int[] deep = Distances.to(cells.width(), not, true);
    float[] lightness = new float[width * height];
    int[] row = new int[width];
    for (int y = 0; y < height; y++) {
      picture.getRGB(left, top + y, width, 1, row, 0, width);
      for (int x = 0; x < width; x++) {
        int rgb = row[x];
        float light =
            Light.of(rgb >> 16 & 255) + 2 * Light.of(rgb >> 8 & 255) + Light.of(rgb & 255);
        lightness[y * width + x] = (float) Math.log(light / 4 + Light.DARK);
        int cell = (top + y) / pixels * cells.width() + (left + x) / pixels;
        inside[y * width + x] = deep[cell] > CLEAR_CELLS;
      }
    }
    float[] seen = Smoothing.gaussian(lightness, width, height, Math.max(0.7, BLUR_MM / pixelMm));
    int reach = (int) Math.ceil(WIDE_MM / pixelMm);
    dark = Smoothing.closed(seen, width, height, reach);
    for (int i = 0; i < dark.length; i++) {
      dark[i] -= seen[i];
    }
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }

  double pixelMm() {
    return pixelMm;
  }

  boolean inside(int x, int y) {
    return x >= 0 && y >= 0 && x < width && y < height && inside[y * width + x];
  }

  /** By how much a pixel is darker than its paper; 0 outside. */
  float at(int x, int y) {
    return inside(x, y) ? dark[y * width + x] : 0;
  }

  /** How far off ink counts as near, mm. */
  double nearMm() {
    return reach() * pixelMm;
  }

  private int reach() {
    return Math.max(1, (int) Math.round(NEAR_MM / pixelMm));
  }

  /** The most near to a place, pixels. */
  float near(double x, double y) {
    int reach = reach();
    int cx = (int) Math.round(x);
    int cy = (int) Math.round(y);
    float most = 0;
    for (int dy = -reach; dy <= reach; dy++) {
      for (int dx = -reach; dx <= reach; dx++) {
        most = Math.max(most, at(cx + dx, cy + dy));
      }
    }
    return most;
  }

  /** Where a place, in pixels, lies on the plane, mm. */
  Point mm(double x, double y) {
    return new Point(first.x() + (left + x) * pixelMm, first.y() - (top + y) * pixelMm);
  }
}
