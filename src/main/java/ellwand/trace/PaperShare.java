package ellwand.trace;

import ellwand.geometry.Point;
import java.awt.image.BufferedImage;

/**
 * How much of each pixel near the border of a patch is paper: where its colour lies between those
 * that paper and ground have thereabouts.
 */
final class PaperShare {

  /** How far from the coarse border the true one is looked for, mm. */
  private static final double BAND_MM = 6;

  /** Colours are taken from so much round a place, mm. */
  private static final double ROUND_MM = 12;

  /** And from no nearer to the coarse border than this, cells. */
  private static final int CLEAR = 3;

  /** By how much of itself light varies that falls on ground, and on paper: soft shadows. */
  private static final double GROUND_SHADE = 0.2;

  private static final double PAPER_SHADE = 0.05;

  /**
   * Pictures are kept with hues coarser than lightness, which shifts a border that is told by hue:
   * by hue only where grain or shadow is worse than this share of the step.
   */
  private static final double HUE_BLUR = 0.15;

  /** Noise of a pixel that is always reckoned with, share of full light. */
  private static final double NOISE = 0.015;

  private final Cells cells;
  private final Patch patch;
  private final BufferedImage picture;
  private final Point first;
  private final double pixelMm;
  private final int left;
  private final int top;
  private final int width;
  private final int height;
  private final float[] share;
  private final boolean[] near;
  private final float[] contrast;

  PaperShare(Straightened straight, Cells cells, Patch patch) {
    this.cells = cells;
    this.patch = patch;
    this.picture = straight.picture().picture();
    this.first = straight.picture().mapping().mmAt(new Point(0, 0));
    this.pixelMm = straight.picture().mapping().mmAt(new Point(1, 0)).x() - first.x();
    double pixels = cells.cellMm() / pixelMm;
    int band = (int) Math.ceil((BAND_MM + 3) / pixelMm);
    this.left = Math.max(0, (int) (patch.left() * pixels) - band);
    this.top = Math.max(0, (int) (patch.top() * pixels) - band);
    this.width = Math.min(picture.getWidth(), (int) ((patch.right() + 1) * pixels) + band) - left;
    this.height = Math.min(picture.getHeight(), (int) ((patch.bottom() + 1) * pixels) + band) - top;
    share = new float[width * height];
    near = new boolean[width * height];
    contrast = new float[cells.size()];
    look();
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

  /** Of each pixel, row by row; 1 or 0 away from the border. */
  float[] share() {
    return share;
  }

  /** Of each pixel whether it is near the border. */
  boolean[] near() {
    return near;
  }

  /** The difference between paper and ground round a pixel, spreads of both. */
  double contrast(int x, int y) {
    return contrast[cell(x, y)];
  }

  /** Where a pixel lies, mm. */
  Point mm(double x, double y) {
    return new Point(first.x() + (left + x) * pixelMm, first.y() - (top + y) * pixelMm);
  }

  /** The pixel at a place; perhaps outside. */
  int column(Point mm) {
    return (int) Math.round((mm.x() - first.x()) / pixelMm) - left;
  }

  int row(Point mm) {
    return (int) Math.round((first.y() - mm.y()) / pixelMm) - top;
  }

  private int cell(int x, int y) {
    double pixels = cells.cellMm() / pixelMm;
    int column = Math.min(cells.width() - 1, (int) ((left + x) / pixels));
    int line = Math.min(cells.height() - 1, (int) ((top + y) / pixels));
    return line * cells.width() + column;
  }

  /** Fills the shares of paper. */
  private void look() {
    boolean[] not = new boolean[cells.size()];
    for (int i = 0; i < not.length; i++) {
      not[i] = !patch.has()[i];
    }
    int[] deep = Distances.to(cells.width(), not, false);
    int[] off = Distances.to(cells.width(), patch.has(), false);
    Nearby paper = new Nearby(cells, i -> deep[i] > CLEAR && deep[i] < 4 * ROUND_MM);
    Nearby ground = new Nearby(cells, i -> off[i] > CLEAR && cells.counts(i));
    int band = (int) Math.ceil(BAND_MM / cells.cellMm());
    float[][] within = new float[3][cells.size()];
    float[][] without = new float[3][cells.size()];
    boolean[] known = new boolean[cells.size()];
    float[] colour = new float[3];
    int reach = (int) Math.round(ROUND_MM / cells.cellMm());
    for (int i = 0; i < not.length; i++) {
      if (deep[i] <= band + 3 && off[i] <= band + 3) {
        int x = i % cells.width();
        int y = i / cells.width();
        known[i] = paper.mean(x, y, reach, colour);
        for (int c = 0; c < 3; c++) {
          within[c][i] = colour[c];
        }
        known[i] &= ground.mean(x, y, reach, colour);
        for (int c = 0; c < 3; c++) {
          without[c][i] = colour[c];
        }
      }
    }
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int cell = cell(x, y);
        near[y * width + x] = deep[cell] <= band && off[cell] <= band && known[cell];
        share[y * width + x] = patch.has()[cell] ? 1 : 0;
      }
    }
    double[][] spread = spread(deep, off, within, without);
    double[] axis = axis(spread, known, within, without);
    double unsure = Math.sqrt(product(axis, spread, axis));
    int[] row = new int[width];
    for (int y = 0; y < height; y++) {
      picture.getRGB(left, top + y, width, 1, row, 0, width);
      for (int x = 0; x < width; x++) {
        int i = y * width + x;
        if (near[i]) {
          int cell = cell(x, y);
          double over = 0;
          double under = 0;
          for (int c = 0; c < 3; c++) {
            over += axis[c] * (Light.of(row[x] >> 16 - 8 * c & 255) - without[c][cell]);
            under += axis[c] * (within[c][cell] - without[c][cell]);
          }
          contrast[cell] = (float) (under / unsure);
          share[i] = (float) Math.max(-0.5, Math.min(1.5, over / Math.max(1e-6, under)));
        }
      }
    }
  }

  /** How pixels of paper and of ground differ from the means round them: a covariance. */
  private double[][] spread(int[] deep, int[] off, float[][] within, float[][] without) {
    double[][] sums = new double[3][3];
    int count = 1;
    int[] row = new int[width];
    double[] rest = new double[3];
    for (int y = 0; y < height; y += 2) {
      picture.getRGB(left, top + y, width, 1, row, 0, width);
      for (int x = 0; x < width; x++) {
        int cell = cell(x, y);
        boolean clear = deep[cell] > CLEAR || off[cell] > CLEAR && cells.counts(cell);
        if (near[y * width + x] && clear) {
          double most = 0;
          for (int c = 0; c < 3; c++) {
            float mean = deep[cell] > 0 ? within[c][cell] : without[c][cell];
            rest[c] = Light.of(row[x] >> 16 - 8 * c & 255) - mean;
            most = Math.max(most, Math.abs(rest[c]));
          }
          // Print on paper is no part of how it varies.
          if (most < 0.3) {
            count++;
            for (int r = 0; r < 3; r++) {
              for (int c = 0; c < 3; c++) {
                sums[r][c] += rest[r] * rest[c];
              }
            }
          }
        }
      }
    }
    for (int r = 0; r < 3; r++) {
      for (int c = 0; c < 3; c++) {
        sums[r][c] /= count;
      }
      sums[r][r] += NOISE * NOISE;
    }
    return sums;
  }

  /**
   * The mix of colours that tells paper from ground best (R. A. Fisher, The use of multiple
   * measurements in taxonomic problems, 1936), soft shadows and grain left out as far as they go.
   */
  private double[] axis(double[][] spread, boolean[] known, float[][] within, float[][] without) {
    double[] paper = new double[3];
    double[] ground = new double[3];
    int count = 1;
    for (int i = 0; i < known.length; i++) {
      if (known[i]) {
        count++;
        for (int c = 0; c < 3; c++) {
          paper[c] += within[c][i];
          ground[c] += without[c][i];
        }
      }
    }
    double squares = 0;
    for (int c = 0; c < 3; c++) {
      squares += Math.pow((paper[c] - ground[c]) / count, 2);
    }
    double[][] rows = new double[3][4];
    for (int r = 0; r < 3; r++) {
      for (int c = 0; c < 3; c++) {
        rows[r][c] =
            spread[r][c]
                + Math.pow(GROUND_SHADE / count, 2) * ground[r] * ground[c]
                + Math.pow(PAPER_SHADE / count, 2) * paper[r] * paper[c];
      }
      rows[r][r] += HUE_BLUR * HUE_BLUR * squares;
      rows[r][3] = (paper[r] - ground[r]) / count;
    }
    return Equations.solved(rows);
  }

  private static double product(double[] a, double[][] by, double[] b) {
    double sum = 0;
    for (int r = 0; r < 3; r++) {
      for (int c = 0; c < 3; c++) {
        sum += a[r] * by[r][c] * b[c];
      }
    }
    return sum;
  }
}
