package ellwand.trace;

import ellwand.geometry.Point;

/**
 * A pinhole behind a lens with radial distortion, where it was when the photo was taken. In its own
 * frame x is to the right, y down, z into the picture; in the plane's x is to the right, y up, z
 * towards those who look.
 *
 * @param lens focal length and the axis's place, pixels, then the distortion k1 and k2 by D. C.
 *     Brown (1971): a ray at the tangent r from the axis lands at {@code r (1 + k1 r^2 + k2 r^4)}
 * @param turn nine numbers row by row: from the plane's frame to the camera's
 * @param shift the plane's origin in the camera's frame, mm
 */
record Camera(double[] lens, double[] turn, double[] shift) {

  static final int FOCAL = 0;
  static final int AXIS_X = 1;
  static final int AXIS_Y = 2;
  static final int K1 = 3;
  static final int K2 = 4;

  /** Beyond the place where a lens would fold the picture back nothing is seen. */
  private static final double LEAST_SLOPE = 0.3;

  private static final int ROUNDS = 30;

  /** The pixel of a place so high over the plane, mm; not a number behind the camera. */
  Point pixelAt(double x, double y, double z) {
    double depth = turn[6] * x + turn[7] * y + turn[8] * z + shift[2];
    if (depth <= 0) {
      return new Point(Double.NaN, Double.NaN);
    }
    double u = (turn[0] * x + turn[1] * y + turn[2] * z + shift[0]) / depth;
    double v = (turn[3] * x + turn[4] * y + turn[5] * z + shift[1]) / depth;
    double s = u * u + v * v;
    if (slope(s) < LEAST_SLOPE) {
      return new Point(Double.NaN, Double.NaN);
    }
    double grown = 1 + s * (lens[K1] + s * lens[K2]);
    return new Point(
        lens[AXIS_X] + lens[FOCAL] * u * grown, lens[AXIS_Y] + lens[FOCAL] * v * grown);
  }

  /** By how much the distorted radius grows with the true one, whose square is given. */
  private double slope(double s) {
    return 1 + s * (3 * lens[K1] + 5 * s * lens[K2]);
  }

  /** Where on the plane a pixel lies; not a number if nowhere. */
  Point mmAt(Point pixel) {
    double x = (pixel.x() - lens[AXIS_X]) / lens[FOCAL];
    double y = (pixel.y() - lens[AXIS_Y]) / lens[FOCAL];
    double seen = Math.hypot(x, y);
    double r = seen;
    for (int round = 0; round < ROUNDS; round++) {
      double s = r * r;
      double slope = slope(s);
      if (slope < LEAST_SLOPE) {
        return new Point(Double.NaN, Double.NaN);
      }
      double step = (r * (1 + s * (lens[K1] + s * lens[K2])) - seen) / slope;
      r -= step;
      if (Math.abs(step) < 1e-12) {
        break;
      }
    }
    double shrunk = seen == 0 ? 1 : r / seen;
    double u = x * shrunk;
    double v = y * shrunk;
    // The ray in the plane's frame, and how far along it the plane is.
    double dx = turn[0] * u + turn[3] * v + turn[6];
    double dy = turn[1] * u + turn[4] * v + turn[7];
    double dz = turn[2] * u + turn[5] * v + turn[8];
    double[] eye = eye();
    double far = -eye[2] / dz;
    return far > 0
        ? new Point(eye[0] + far * dx, eye[1] + far * dy)
        : new Point(Double.NaN, Double.NaN);
  }

  /** Where the pinhole is in the plane's frame, mm. */
  double[] eye() {
    double[] eye = new double[3];
    for (int i = 0; i < 3; i++) {
      eye[i] = -(turn[i] * shift[0] + turn[3 + i] * shift[1] + turn[6 + i] * shift[2]);
    }
    return eye;
  }

  /**
   * The camera that sees a plane as a homography from mm to pixels says, without distortion.
   *
   * @param focal length and axis in pixels
   */
  static Camera of(Homography seen, double focal, double axisX, double axisY) {
    double[] h = seen.matrix().data;
    double[][] columns = new double[3][3];
    for (int c = 0; c < 3; c++) {
      columns[c][0] = (h[c] - axisX * h[6 + c]) / focal;
      columns[c][1] = (h[3 + c] - axisY * h[6 + c]) / focal;
      columns[c][2] = h[6 + c];
    }
    double scale = Math.sqrt(norm(columns[0]) * norm(columns[1]));
    // The plane is in front of the camera.
    double sign = columns[2][2] < 0 ? -1 : 1;
    for (double[] column : columns) {
      for (int i = 0; i < 3; i++) {
        column[i] *= sign / scale;
      }
    }
    // The two directions made square to one another, each giving way as much.
    double[] a = unit(columns[0]);
    double[] b = unit(columns[1]);
    double[] sum = unit(combined(a, 1, b, 1));
    double[] difference = unit(combined(a, 1, b, -1));
    double half = Math.sqrt(0.5);
    double[] right = combined(sum, half, difference, half);
    double[] up = combined(sum, half, difference, -half);
    double[] out = {
      right[1] * up[2] - right[2] * up[1],
      right[2] * up[0] - right[0] * up[2],
      right[0] * up[1] - right[1] * up[0]
    };
    double[] turn = {right[0], up[0], out[0], right[1], up[1], out[1], right[2], up[2], out[2]};
    return new Camera(new double[] {focal, axisX, axisY, 0, 0}, turn, columns[2]);
  }

  private static double norm(double[] a) {
    return Math.sqrt(a[0] * a[0] + a[1] * a[1] + a[2] * a[2]);
  }

  private static double[] unit(double[] a) {
    double length = norm(a);
    return new double[] {a[0] / length, a[1] / length, a[2] / length};
  }

  private static double[] combined(double[] a, double s, double[] b, double t) {
    return new double[] {s * a[0] + t * b[0], s * a[1] + t * b[1], s * a[2] + t * b[2]};
  }

  /**
   * The same moved a little.
   *
   * @param by changes of the lens (focal length as its logarithm, axis as shares of the focal
   *     length, k1, k2), then a turn of the camera in radians about its x, y and z, then a shift in
   *     metres
   */
  Camera changed(double[] by) {
    double[] changed = {
      lens[FOCAL] * Math.exp(by[FOCAL]),
      lens[AXIS_X] + lens[FOCAL] * by[AXIS_X],
      lens[AXIS_Y] + lens[FOCAL] * by[AXIS_Y],
      lens[K1] + by[K1],
      lens[K2] + by[K2]
    };
    double[] small = rotation(by[5], by[6], by[7]);
    double[] turned = new double[9];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        for (int k = 0; k < 3; k++) {
          turned[3 * i + j] += small[3 * i + k] * turn[3 * k + j];
        }
      }
    }
    double[] shifted = {shift[0] + 1000 * by[8], shift[1] + 1000 * by[9], shift[2] + 1000 * by[10]};
    return new Camera(changed, turned, shifted);
  }

  /** By O. Rodrigues: about the axis x, y, z by its length in radians. */
  private static double[] rotation(double x, double y, double z) {
    double angle = Math.sqrt(x * x + y * y + z * z);
    double a = angle < 1e-9 ? 1 : Math.sin(angle) / angle;
    double b = angle < 1e-9 ? 0.5 : (1 - Math.cos(angle)) / (angle * angle);
    return new double[] {
      1 - b * (y * y + z * z),
      b * x * y - a * z,
      b * x * z + a * y,
      b * x * y + a * z,
      1 - b * (x * x + z * z),
      b * y * z - a * x,
      b * x * z - a * y,
      b * y * z + a * x,
      1 - b * (x * x + y * y)
    };
  }
}
