package ellwand.trace;

import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Traces the border of a patch to a part of a pixel: it runs where half of a pixel is paper. Dark
 * lines on the paper, printed or torn, thinner than 2 mm are closed first.
 */
final class RimTracer {

  /** Half the width of lines that are closed, mm. */
  private static final double CLOSED_MM = 1;

  /** A border where paper differs from its ground by less cannot be told, spreads of both. */
  static final double LEAST_CONTRAST = 4;

  /** What is looked at beside the border, from and to, mm. */
  private static final double[] BESIDE_MM = {1.2, 5};

  private final PaperShare seen;
  private final double pixelMm;
  private final int width;
  private final int height;

  /** The shares with lines closed. */
  private final float[] share;

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

  private RimTracer(PaperShare seen) {
    this.seen = seen;
    pixelMm = seen.pixelMm();
    width = seen.width();
    height = seen.height();
    int reach = (int) Math.round(CLOSED_MM / pixelMm);
    share = spread(spread(seen.share(), reach, true), reach, false);
  }

  static Border border(Straightened straight, Cells cells, Patch patch) {
    return new RimTracer(new PaperShare(straight, cells, patch)).border();
  }

  private Border border() {
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
        int x = seen.column(at);
        int y = seen.row(at);
        if (x >= 0 && y >= 0 && x < width && y < height) {
          sum += seen.share()[y * width + x];
          count++;
        }
      }
      mean[i] = count == 0 ? 0 : sum / count;
    }
    return mean;
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
        if (!seen.near()[y * width + x]) {
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
    places.add(seen.mm(inX + (outX - inX) * t, inY + (outY - inY) * t));
    found.add(new double[] {seen.contrast(inX, inY), pixelMm / steepness(inX, inY)});
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
