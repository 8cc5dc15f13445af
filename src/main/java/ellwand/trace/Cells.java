package ellwand.trace;

import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;

/**
 * What lies on the plane, in coarse cells: enough to tell paper from ground. Cells count from the
 * top left, row by row.
 *
 * @param cellMm how wide a cell is
 * @param corner the centre of the first cell, mm
 * @param light red, green and blue of each cell, as shares of full light
 * @param seen whether a photo shows it
 * @param sheet whether a reference sheet lies there, or next to it
 */
record Cells(
    int width,
    int height,
    double cellMm,
    Point corner,
    float[][] light,
    boolean[] seen,
    boolean[] sheet) {

  /** Paper curls and prints shift: so much round a sheet is left out, mm. */
  private static final double BESIDE_SHEET_MM = 3;

  /** A cell is as wide, or wider by less than a pixel: there are millions of them on a table. */
  private static final double CELL_MM = 0.8;

  /** Of a table seen from far off or aslant cells are wider, for the memory that they take. */
  private static final double MOST_CELLS = 2.5e6;

  static Cells of(Straightened straight) {
    BufferedImage picture = straight.picture().picture();
    Point first = straight.picture().mapping().mmAt(new Point(0, 0));
    double pixelMm = straight.picture().mapping().mmAt(new Point(1, 0)).x() - first.x();
    double many = (double) picture.getWidth() * picture.getHeight() / MOST_CELLS;
    int pixels = (int) Math.ceil(Math.max(CELL_MM / pixelMm, Math.sqrt(many)));
    int width = picture.getWidth() / pixels;
    int height = picture.getHeight() / pixels;
    double middle = (pixels - 1) / 2.0 * pixelMm;
    Point corner = new Point(first.x() + middle, first.y() - middle);
    Cells cells =
        new Cells(
            width,
            height,
            pixels * pixelMm,
            corner,
            new float[3][width * height],
            new boolean[width * height],
            new boolean[width * height]);
    cells.look(picture, pixels);
    cells.mark(straight.sheets());
    return cells;
  }

  private void look(BufferedImage picture, int pixels) {
    int[] row = new int[width * pixels];
    int[] shown = new int[width];
    for (int y = 0; y < height; y++) {
      Arrays.fill(shown, 0);
      for (int k = 0; k < pixels; k++) {
        picture.getRGB(0, y * pixels + k, row.length, 1, row, 0, row.length);
        for (int x = 0; x < row.length; x++) {
          if (row[x] >>> 24 != 0) {
            int cell = y * width + x / pixels;
            shown[x / pixels]++;
            for (int c = 0; c < 3; c++) {
              light[c][cell] += Light.of(row[x] >> 16 - 8 * c & 255);
            }
          }
        }
      }
      for (int x = 0; x < width; x++) {
        int cell = y * width + x;
        seen[cell] = shown[x] == pixels * pixels;
        for (int c = 0; c < 3; c++) {
          light[c][cell] /= Math.max(1, shown[x]);
        }
      }
    }
  }

  private void mark(List<Outline> sheets) {
    for (Outline paper : sheets) {
      Box box = paper.box().grown(BESIDE_SHEET_MM);
      int left = Math.max(0, column(box.minX()));
      int right = Math.min(width - 1, column(box.maxX()) + 1);
      int top = Math.max(0, row(box.maxY()));
      int bottom = Math.min(height - 1, row(box.minY()) + 1);
      for (int y = top; y <= bottom; y++) {
        for (int x = left; x <= right; x++) {
          Point at = mm(x, y);
          if (paper.contains(at) || paper.distance(at) <= BESIDE_SHEET_MM) {
            sheet[y * width + x] = true;
          }
        }
      }
    }
  }

  private int column(double mm) {
    return (int) Math.floor((mm - corner.x()) / cellMm);
  }

  private int row(double mm) {
    return (int) Math.floor((corner.y() - mm) / cellMm);
  }

  int size() {
    return width * height;
  }

  /** The centre of a cell. */
  Point mm(double x, double y) {
    return new Point(corner.x() + x * cellMm, corner.y() - y * cellMm);
  }

  /** Whether a cell shows something that is no sheet. */
  boolean counts(int cell) {
    return seen[cell] && !sheet[cell];
  }

  /** Lightness and two hues of every cell, logarithms: a shadow changes the first alone. */
  float[][] tones() {
    float[][] tones = new float[3][size()];
    for (int i = 0; i < size(); i++) {
      double red = Math.log(light[0][i] + Light.DARK);
      double green = Math.log(light[1][i] + Light.DARK);
      double blue = Math.log(light[2][i] + Light.DARK);
      tones[0][i] = (float) ((red + 2 * green + blue) / 4);
      tones[1][i] = (float) (red - green);
      tones[2][i] = (float) (blue - green);
    }
    return tones;
  }
}
