package ellwand.trace;

import ellwand.geometry.Point;
import java.util.Arrays;

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

  private final Lightness light;
  private final boolean[] inside;
  private final float[] dark;

  /** On a piece. */
  Ink(Straightened straight, Cells cells, Patch patch) {
    View view = straight.picture();
    double pixelMm =
        view.mapping().mmAt(new Point(1, 0)).x() - view.mapping().mmAt(new Point(0, 0)).x();
    int pixels = (int) Math.round(cells.cellMm() / pixelMm);
    int left = patch.left() * pixels;
    int top = patch.top() * pixels;
    int width = (patch.right() + 1) * pixels - left;
    int height = (patch.bottom() + 1) * pixels - top;
    boolean[] not = new boolean[cells.size()];
    for (int i = 0; i < not.length; i++) {
      not[i] = !patch.has()[i];
    }
    int[] deep = Distances.to(cells.width(), not, true);
    light = Lightness.of(view, 1, left, top, width, height);
    inside = new boolean[width * height];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int cell = (top + y) / pixels * cells.width() + (left + x) / pixels;
        inside[y * width + x] = deep[cell] > CLEAR_CELLS;
      }
    }
    dark = dark();
  }

  /** In all of a picture, whatever it is on. */
  Ink(Lightness light) {
    this.light = light;
    inside = new boolean[light.of().length];
    Arrays.fill(inside, true);
    dark = dark();
  }

  private float[] dark() {
    float[] seen =
        Smoothing.gaussian(light.of(), width(), height(), Math.max(0.7, BLUR_MM / pixelMm()));
    int reach = (int) Math.ceil(WIDE_MM / pixelMm());
    float[] dark = Smoothing.closed(seen, width(), height(), reach);
    for (int i = 0; i < dark.length; i++) {
      dark[i] -= seen[i];
    }
    return dark;
  }

  int width() {
    return light.width();
  }

  int height() {
    return light.height();
  }

  double pixelMm() {
    return light.pixelMm();
  }

  boolean inside(int x, int y) {
    return x >= 0 && y >= 0 && x < width() && y < height() && inside[y * width() + x];
  }

  /** By how much a pixel is darker than its paper; 0 outside. */
  float at(int x, int y) {
    return inside(x, y) ? dark[y * width() + x] : 0;
  }

  /** How far off ink counts as near, mm. */
  double nearMm() {
    return reach() * pixelMm();
  }

  private int reach() {
    return Math.max(1, (int) Math.round(NEAR_MM / pixelMm()));
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
    return light.mm(x, y);
  }
}
