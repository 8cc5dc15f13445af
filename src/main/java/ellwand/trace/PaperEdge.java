package ellwand.trace;

import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How large a sheet was printed: its squares say how long a millimetre is, and the edge of its
 * paper, where the ground is darker, how long it ought to be.
 */
final class PaperEdge {

  /** The edge is looked for from so far within where it should be to so far outside, mm. */
  private static final double WITHIN_MM = 6;

  private static final double OUTSIDE_MM = 13;

  private static final double STEP_MM = 0.25;
  private static final int RAYS = 15;

  /** Least difference of paper and ground, of 255. */
  private static final double LEAST_CONTRAST = 30;

  /** How far edges found on one side may be from each other, mm. */
  private static final double STRAIGHT_MM = 0.6;

  private final Grey grey;
  private final Camera camera;
  private final LaidSheet sheet;

  PaperEdge(Grey grey, Camera camera, LaidSheet sheet) {
    this.grey = grey;
    this.camera = camera;
    this.sheet = sheet;
  }

  /**
   * The share of its true size at which the sheet was printed, if both of its directions say the
   * same; paper is cut to within 2 mm (ISO 216, from memory), so a hundredth cannot be told.
   */
  OptionalDouble printedAt() {
    double width = sheet.sheet().paper().widthMm();
    double height = sheet.sheet().paper().heightMm();
    OptionalDouble left = side(new Point(0, 0), new Point(0, height), new Point(-1, 0));
    OptionalDouble right = side(new Point(width, 0), new Point(width, height), new Point(1, 0));
    OptionalDouble top = side(new Point(0, height), new Point(width, height), new Point(0, 1));
    OptionalDouble foot = side(new Point(0, 0), new Point(width, 0), new Point(0, -1));
    if (left.isEmpty() || right.isEmpty() || top.isEmpty() || foot.isEmpty()) {
      return OptionalDouble.empty();
    }
    double across = width / (width + left.getAsDouble() + right.getAsDouble());
    double along = height / (height + top.getAsDouble() + foot.getAsDouble());
    return Math.abs(across - along) < 0.012
        ? OptionalDouble.of((across + along) / 2)
        : OptionalDouble.empty();
  }

  /** How far outside of where it should be one side of the paper is, mm. */
  private OptionalDouble side(Point from, Point to, Point outward) {
    List<Double> found = new ArrayList<>();
    for (int ray = 0; ray < RAYS; ray++) {
      Point on = from.towards(to, 0.1 + 0.8 * ray / (RAYS - 1));
      edge(on, outward).ifPresent(found::add);
    }
    if (found.size() < RAYS / 2) {
      return OptionalDouble.empty();
    }
    double[] sorted = found.stream().mapToDouble(d -> d).sorted().toArray();
    double middle = sorted[sorted.length / 2];
    long near = found.stream().filter(d -> Math.abs(d - middle) < STRAIGHT_MM).count();
    return near * 3 >= found.size() * 2L ? OptionalDouble.of(middle) : OptionalDouble.empty();
  }

  private OptionalDouble edge(Point on, Point outward) {
    int count = (int) ((WITHIN_MM + OUTSIDE_MM) / STEP_MM);
    double[] levels = new double[count];
    for (int i = 0; i < count; i++) {
      levels[i] = level(on.plus(outward.times(i * STEP_MM - WITHIN_MM)));
    }
    double[] sorted = levels.clone();
    Arrays.sort(sorted);
    // What is not a number is sorted last: the picture ends there.
    double white = sorted[count - 1 - count / 10];
    double ground = Arrays.stream(levels, count * 7 / 8, count).average().orElse(white);
    if (!(white - ground >= LEAST_CONTRAST)) {
      return OptionalDouble.empty();
    }
    double middle = (white + ground) / 2;
    int last = count - 1;
    while (last > 0 && levels[last] < middle) {
      last--;
    }
    if (last == count - 1) {
      return OptionalDouble.empty();
    }
    double share = (levels[last] - middle) / (levels[last] - levels[last + 1]);
    return OptionalDouble.of((last + share) * STEP_MM - WITHIN_MM);
  }

  private double level(Point paper) {
    Point mm = sheet.onPlane(paper);
    return grey.at(camera.pixelAt(mm.x(), mm.y(), sheet.height(paper)));
  }
}
