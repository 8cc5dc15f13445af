package ellwand.trace;

import ellwand.geometry.Box;
import ellwand.geometry.Point;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.ArrayList;
import java.util.List;

/** Makes one picture, seen from straight above, of all views of a plane. */
final class Straightening {

  /** Larger pictures are made of coarser pixels. */
  private static final double MOST_PIXELS = 12e6;

  /** So far from a sheet nothing is looked at, mm. */
  private static final double FARTHEST_MM = 1500;

  /** What is seen with fewer pixels to the mm is left out. */
  private static final double LEAST_PIXELS_PER_MM = 0.5;

  private static final double STEP_MM = 25;

  /** Mappings are worked out at every so many pixels each way, and between them by halves. */
  private static final int CELL = 16;

  private static final int OPAQUE = 0xFF000000;

  private final List<View> views;
  private final List<double[]> gains;
  private final FlatMapping flat;
  private final int width;
  private final int height;

  private Straightening(List<View> views, List<double[]> gains, Box area, double perMm) {
    this.views = views;
    this.gains = gains;
    flat = new FlatMapping(new Point(area.minX(), area.maxY()), perMm, 0);
    width = (int) (area.length() * perMm);
    height = (int) (area.width() * perMm);
  }

  /**
   * The picture.
   *
   * @param sheets the sheets' places
   * @param gains for each view, by what its red, green and blue are multiplied so that white is the
   *     same in all
   */
  static View picture(List<View> views, List<double[]> gains, Box sheets) {
    double perMm =
        views.stream()
            .filter(v -> v.shows(sheets.centre()))
            .mapToDouble(v -> v.pixelsPerMm(sheets.centre()))
            .max()
            .orElse(2);
    return picture(views, gains, sheets, perMm);
  }

  /** The same with so many pixels to the mm, or fewer of a large area. */
  static View picture(List<View> views, List<double[]> gains, Box sheets, double perMm) {
    Box area = area(views, sheets);
    double most = Math.sqrt(MOST_PIXELS / area.area());
    Straightening made = new Straightening(views, gains, area, Math.min(perMm, most));
    return new View("straightened", made.filled(), made.flat);
  }

  /** What the views show well enough. */
  private static Box area(List<View> views, Box sheets) {
    Box most = sheets.grown(FARTHEST_MM);
    List<Point> seen = new ArrayList<>();
    for (double y = most.minY(); y <= most.maxY(); y += STEP_MM) {
      for (double x = most.minX(); x <= most.maxX(); x += STEP_MM) {
        Point mm = new Point(x, y);
        if (views.stream().anyMatch(v -> clear(v, mm))) {
          seen.add(mm);
        }
      }
    }
    return Box.around(seen).union(sheets).grown(STEP_MM);
  }

  private static boolean clear(View view, Point mm) {
    return view.shows(mm) && view.pixelsPerMm(mm) >= LEAST_PIXELS_PER_MM;
  }

  private BufferedImage filled() {
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    int[] pixels = ((DataBufferInt) picture.getRaster().getDataBuffer()).getData();
    for (int top = 0; top < height; top += CELL) {
      for (int left = 0; left < width; left += CELL) {
        fill(pixels, left, top);
      }
    }
    return picture;
  }

  /** One cell, of all views that show it: each counts by how near to its middle it shows it. */
  private void fill(int[] pixels, int left, int top) {
    int right = Math.min(width, left + CELL);
    int below = Math.min(height, top + CELL);
    int area = (right - left) * (below - top);
    double[] weights = new double[area];
    double[] sums = new double[3 * area];
    for (int v = 0; v < views.size(); v++) {
      add(views.get(v), gains.get(v), new int[] {left, top, right, below}, weights, sums);
    }
    int at = 0;
    for (int y = top; y < below; y++) {
      for (int x = left; x < right; x++, at++) {
        if (weights[at] > 0) {
          int rgb = OPAQUE;
          for (int c = 0; c < 3; c++) {
            long level = Math.round(sums[3 * at + c] / weights[at]);
            rgb |= (int) Math.min(255, level) << (16 - 8 * c);
          }
          pixels[y * width + x] = rgb;
        }
      }
    }
  }

  private void add(View view, double[] gain, int[] cell, double[] weights, double[] sums) {
    Point a = at(view, cell[0], cell[1]);
    Point b = at(view, cell[0] + CELL, cell[1]);
    Point c = at(view, cell[0], cell[1] + CELL);
    Point d = at(view, cell[0] + CELL, cell[1] + CELL);
    if (Double.isNaN(a.x() + b.x() + c.x() + d.x())
        || !clear(view, flat.mmAt(new Point(cell[0] + CELL / 2.0, cell[1] + CELL / 2.0)))) {
      return;
    }
    int pictureWidth = view.picture().getWidth();
    int pictureHeight = view.picture().getHeight();
    int[] rgb = ((DataBufferInt) view.picture().getRaster().getDataBuffer()).getData();
    int at = 0;
    for (int y = cell[1]; y < cell[3]; y++) {
      Point from = a.towards(c, (y - cell[1]) / (double) CELL);
      Point to = b.towards(d, (y - cell[1]) / (double) CELL);
      for (int x = cell[0]; x < cell[2]; x++, at++) {
        double share = (x - cell[0]) / (double) CELL;
        double px = from.x() + (to.x() - from.x()) * share;
        double py = from.y() + (to.y() - from.y()) * share;
        if (px >= 0 && py >= 0 && px < pictureWidth - 1 && py < pictureHeight - 1) {
          double inside =
              Math.min(
                  Math.min(px, pictureWidth - 1 - px) / pictureWidth,
                  Math.min(py, pictureHeight - 1 - py) / pictureHeight);
          double weight = 1e-4 + inside * inside;
          weights[at] += weight;
          int i = (int) py * pictureWidth + (int) px;
          double u = px - (int) px;
          double v = py - (int) py;
          for (int channel = 0; channel < 3; channel++) {
            int shift = 16 - 8 * channel;
            double level =
                (1 - v) * ((1 - u) * (rgb[i] >> shift & 255) + u * (rgb[i + 1] >> shift & 255))
                    + v
                        * ((1 - u) * (rgb[i + pictureWidth] >> shift & 255)
                            + u * (rgb[i + pictureWidth + 1] >> shift & 255));
            sums[3 * at + channel] += weight * gain[channel] * level;
          }
        }
      }
    }
  }

  private Point at(View view, int x, int y) {
    return view.mapping().pixelAt(flat.mmAt(new Point(x, y)));
  }
}
