package ellwand.nest.kernel;

/** Measures of rings kept as x0, y0, x1, y1, ... */
final class Rings {

  private Rings() {}

  /** Positive when counter-clockwise; the shoelace formula, about the first point. */
  static double area(double[] ring) {
    double twice = 0;
    for (int i = 2; i + 3 < ring.length; i += 2) {
      twice +=
          (ring[i] - ring[0]) * (ring[i + 3] - ring[1])
              - (ring[i + 2] - ring[0]) * (ring[i + 1] - ring[1]);
    }
    return twice / 2;
  }

  static double min(double[] ring, int axis) {
    double min = Double.POSITIVE_INFINITY;
    for (int i = axis; i < ring.length; i += 2) {
      min = Math.min(min, ring[i]);
    }
    return min;
  }

  static double max(double[] ring, int axis) {
    double max = Double.NEGATIVE_INFINITY;
    for (int i = axis; i < ring.length; i += 2) {
      max = Math.max(max, ring[i]);
    }
    return max;
  }

  /** An upright box, from its lower left corner. */
  static double[] box(double x0, double y0, double x1, double y1) {
    return new double[] {x0, y0, x1, y0, x1, y1, x0, y1};
  }

  static double[] shifted(double[] ring, double dx, double dy) {
    double[] shifted = new double[ring.length];
    for (int i = 0; i < ring.length; i += 2) {
      shifted[i] = ring[i] + dx;
      shifted[i + 1] = ring[i + 1] + dy;
    }
    return shifted;
  }

  /** Turned by a half turn about the origin. */
  static double[] turned(double[] ring) {
    double[] turned = new double[ring.length];
    for (int i = 0; i < ring.length; i++) {
      turned[i] = -ring[i];
    }
    return turned;
  }

  /** Whether the rings have the same points in the same order, from whichever start. */
  static boolean same(double[] a, double[] b, double tolerance) {
    if (a.length != b.length) {
      return false;
    }
    for (int shift = 0; shift < b.length; shift += 2) {
      int i = 0;
      while (i < a.length && Math.abs(a[i] - b[(i + shift) % b.length]) <= tolerance) {
        i++;
      }
      if (i == a.length) {
        return true;
      }
    }
    return false;
  }
}
