package ellwand.trace;

import ellwand.geometry.Point;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;

/**
 * Traces the border of a patch to a part of a pixel. Each pixel near it shows a share of paper,
 * between the colours that paper and ground have thereabouts; the border runs where the share is a
 * half. Dark lines on the paper, printed or torn, thinner than 2 mm are closed first.
 */
final class RimTracer {

  /** How far from the coarse border the true one is looked for, mm. */
  private static final double BAND_MM = 6;

  /** Colours are taken from so much round a place, mm. */
  private static final double ROUND_MM = 12;

  /** And from no nearer to the coarse border than this, cells. */
  private static final int CLEAR = 3;

  /** Half the width of lines that are closed, mm. */
  private static final double CLOSED_MM = 1;

  /** A border where paper differs from its ground by less cannot be told, spreads of both. */
  static final double LEAST_CONTRAST = 4;

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

  /** What is looked at beside the border, from and to, mm. */
  private static final double[] BESIDE_MM = {1.2, 5};

  private final Cells cells;
  private final Patch patch;
  private final BufferedImage picture;
  private final Point first;
  private final double pixelMm;
  private final int left;
  private final int top;
  private final int width;
  private final int height;
  private float[] share;
  private float[] unclosed;

  /** Of each pixel whether it is near the border. */
  private boolean[] near;

  private float[] contrast;

  /**
   * A traced border.
   *
   * @param places points of it, clockwise, mm; none if all of the patch is more like ground
   * @param contrasts of each the difference between paper and ground there, spreads of both
   * @param widthsMm over how many mm paper goes over into ground there, which blur makes
   * @param inside of each how much like paper it is beside it on the inside, 1 if all
   * @param outside the same on the outside, 0 if it is all like ground
   */
  record Border(
      List<Point> places,
      double[] contrasts,
      double[] widthsMm,
      double[] inside,
      double[] outside) {}

  private RimTracer(Straightened straight, Cells cells, Patch patch) {
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
  }

  static Border border(Straightened straight, Cells cells, Patch patch) {
    return new RimTracer(straight, cells, patch).border();
  }

  private Border border() {
    share = new float[width * height];
    near = new boolean[width * height];
    contrast = new float[cells.size()];
    look();
    int reach = (int) Math.round(CLOSED_MM / pixelMm);
    unclosed = share;
    share = spread(spread(share, reach, true), reach, false);
    List<Point> places = new ArrayList<>();
    List<double[]> found = new ArrayList<>();
    follow(places, found);
    return new Border(
        places,
        found.stream().mapToDouble(f -> f[0]).toArray(),
        found.stream().mapToDouble(f -> f[1]).toArray(),
        beside(places, -1),
        beside(places, 1));
  }

  /** The mean share beside each place, to the left of the way round (1), outside, or right (-1). */
  private double[] beside(List<Point> places, int way) {
    double[] mean = new double[places.size()];
    int ahead = Math.max(1, (int) Math.round(2 / pixelMm));
    for (int i = 0; i < mean.length; i++) {
      Point before = places.get(Math.floorMod(i - ahead, mean.length));
      Point after = places.get((i + ahead) % mean.length);
      Point off = after.minus(before);
      if (off.norm() == 0) {
        mean[i] = way > 0 ? 0 : 1;
        continue;
      }
      Point normal = off.unit().left().times(way);
      double sum = 0;
      int count = 0;
      for (double mm = BESIDE_MM[0]; mm <= BESIDE_MM[1]; mm += pixelMm) {
        Point at = places.get(i).plus(normal.times(mm));
        int x = (int) Math.round((at.x() - first.x()) / pixelMm) - left;
        int y = (int) Math.round((first.y() - at.y()) / pixelMm) - top;
        if (x >= 0 && y >= 0 && x < width && y < height) {
          sum += unclosed[y * width + x];
          count++;
        }
      }
      mean[i] = count == 0 ? 0 : sum / count;
    }
    return mean;
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

  private int cell(int x, int y) {
    double pixels = cells.cellMm() / pixelMm;
    int column = Math.min(cells.width() - 1, (int) ((left + x) / pixels));
    int line = Math.min(cells.height() - 1, (int) ((top + y) / pixels));
    return line * cells.width() + column;
  }

  /** Of each pixel in the band the most, or least, share in a disc round it. */
  private float[] spread(float[] from, int reach, boolean most) {
    float[] to = from.clone();
    int[] half = new int[2 * reach + 1];
    for (int dy = -reach; dy <= reach; dy++) {
      half[dy + reach] = (int) Math.sqrt(reach * reach - dy * dy + 0.5);
    }
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        if (!near[y * width + x]) {
          continue;
        }
        float best = from[y * width + x];
        for (int dy = Math.max(-reach, -y); dy <= Math.min(reach, height - 1 - y); dy++) {
          int h = half[dy + reach];
          int start = (y + dy) * width + Math.max(0, x - h);
          int end = (y + dy) * width + Math.min(width - 1, x + h);
          for (int i = start; i <= end; i++) {
            best = most ? Math.max(best, from[i]) : Math.min(best, from[i]);
          }
        }
        to[y * width + x] = best;
      }
    }
    return to;
  }

  private boolean in(int x, int y) {
    return x >= 0 && y >= 0 && x < width && y < height && share[y * width + x] > 0.5f;
  }

  /** Goes round the largest group of pixels that are paper by more than half. */
  private void follow(List<Point> places, List<double[]> found) {
    boolean[] above = new boolean[share.length];
    int startX = -1;
    int startY = -1;
    int[] stack = new int[share.length];
    int best = 0;
    boolean[] done = new boolean[share.length];
    for (int i = 0; i < share.length; i++) {
      above[i] = share[i] > 0.5f;
    }
    for (int i = 0; i < share.length; i++) {
      if (above[i] && !done[i]) {
        int size = 0;
        stack[size++] = i;
        done[i] = true;
        for (int k = 0; k < size; k++) {
          int x = stack[k] % width;
          if (x > 0) {
            size = push(stack, size, stack[k] - 1, above, done);
          }
          if (x < width - 1) {
            size = push(stack, size, stack[k] + 1, above, done);
          }
          size = push(stack, size, stack[k] - width, above, done);
          size = push(stack, size, stack[k] + width, above, done);
        }
        if (size > best) {
          // The first of a group is in its topmost row, so what lies above it is outside.
          best = size;
          startX = i % width;
          startY = i / width;
        }
      }
    }
    if (startX >= 0) {
      walk(startX, startY, places, found);
    }
  }

  private static int push(int[] stack, int size, int next, boolean[] above, boolean[] done) {
    if (next < 0 || next >= above.length || done[next] || !above[next]) {
      return size;
    }
    done[next] = true;
    stack[size] = next;
    return size + 1;
  }

  private static final int[] DX = {1, 0, -1, 0};
  private static final int[] DY = {0, 1, 0, -1};

  /** With what is inside on the right hand, along the sides of pixels. */
  private void walk(int startX, int startY, List<Point> places, List<double[]> found) {
    // At the upper left corner of the pixel, heading right; corners count like pixels.
    int x = startX;
    int y = startY;
    int way = 0;
    do {
      int inX = x + (way == 1 || way == 2 ? -1 : 0);
      int inY = y + (way == 2 || way == 3 ? -1 : 0);
      int outX = inX - DX[(way + 1) % 4];
      int outY = inY - DY[(way + 1) % 4];
      place(inX, inY, outX, outY, places, found);
      x += DX[way];
      y += DY[way];
      int aheadX = inX + DX[way];
      int aheadY = inY + DY[way];
      boolean ahead = in(aheadX, aheadY);
      boolean aheadOut = in(outX + DX[way], outY + DY[way]);
      if (!ahead) {
        way = (way + 1) % 4;
      } else if (aheadOut) {
        way = (way + 3) % 4;
      }
    } while (x != startX || y != startY || way != 0);
  }

  private void place(
      int inX, int inY, int outX, int outY, List<Point> places, List<double[]> found) {
    double inside = share[inY * width + inX];
    boolean there = outX >= 0 && outY >= 0 && outX < width && outY < height;
    double outside = there ? share[outY * width + outX] : 0;
    double t = (inside - 0.5) / Math.max(1e-6, inside - outside);
    double px = left + inX + (outX - inX) * t;
    double py = top + inY + (outY - inY) * t;
    places.add(new Point(first.x() + px * pixelMm, first.y() - py * pixelMm));
    found.add(new double[] {contrast[cell(inX, inY)], pixelMm / steepness(inX, inY)});
  }

  /** How much the share changes from pixel to pixel, at most. */
  private double steepness(int x, int y) {
    double most = 1e-3;
    for (int dy = -1; dy <= 1; dy++) {
      for (int dx = -1; dx <= 1; dx++) {
        int ax = x + dx;
        int ay = y + dy;
        if (ax > 0 && ay > 0 && ax < width - 1 && ay < height - 1) {
          double sx = share[ay * width + ax + 1] - share[ay * width + ax - 1];
          double sy = share[(ay + 1) * width + ax] - share[(ay - 1) * width + ax];
          most = Math.max(most, Math.hypot(sx, sy) / 2);
        }
      }
    }
    return most;
  }
}
