package ellwand.trace;

import ellwand.geometry.Point;

/**
 * A true pinhole behind a lens with radial distortion, written without the program's camera: what
 * it sees is the truth that straightening is judged by.
 *
 * @param widthPx of its picture
 * @param focalPx distance of the picture from the pinhole
 * @param k1 to {@code k3} the distortion: a ray at the tangent r from the axis lands at {@code r (1
 *     + k1 r^2 + k2 r^4 + k3 r^6)}
 * @param target what the middle of the picture shows, mm on the plane
 * @param distanceMm from the pinhole to the target
 * @param tiltDegrees from straight down
 * @param headingDegrees which way the upper edge of the picture points, counter-clockwise from x
 */
record SimulatedCamera(
    int widthPx,
    int heightPx,
    double focalPx,
    double k1,
    double k2,
    double k3,
    Point target,
    double distanceMm,
    double tiltDegrees,
    double headingDegrees) {

  /** 12 megapixels, as wide as usual phones see (26 mm on 35 mm film), straight down. */
  static SimulatedCamera phone(Point target, double distanceMm) {
    return new SimulatedCamera(4000, 3000, 3000, 0, 0, 0, target, distanceMm, 0, 90);
  }

  SimulatedCamera lens(double first, double second, double third) {
    return new SimulatedCamera(
        widthPx,
        heightPx,
        focalPx,
        first,
        second,
        third,
        target,
        distanceMm,
        tiltDegrees,
        headingDegrees);
  }

  SimulatedCamera tilted(double degrees, double heading) {
    return new SimulatedCamera(
        widthPx, heightPx, focalPx, k1, k2, k3, target, distanceMm, degrees, heading);
  }

  /** The same with fewer pixels: 0.5 makes 3 of 12 megapixels. */
  SimulatedCamera scaled(double share) {
    return new SimulatedCamera(
        (int) (widthPx * share),
        (int) (heightPx * share),
        focalPx * share,
        k1,
        k2,
        k3,
        target,
        distanceMm,
        tiltDegrees,
        headingDegrees);
  }

  /** Towards the target; x, y and z up. */
  private double[] forward() {
    double tilt = Math.toRadians(tiltDegrees);
    double heading = Math.toRadians(headingDegrees);
    return new double[] {
      Math.sin(tilt) * Math.cos(heading), Math.sin(tilt) * Math.sin(heading), -Math.cos(tilt)
    };
  }

  private double[] down() {
    double tilt = Math.toRadians(tiltDegrees);
    double heading = Math.toRadians(headingDegrees);
    return new double[] {
      -Math.cos(tilt) * Math.cos(heading), -Math.cos(tilt) * Math.sin(heading), -Math.sin(tilt)
    };
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  /** Where the pinhole is, mm. */
  double[] pinhole() {
    double[] forward = forward();
    return new double[] {
      target.x() - forward[0] * distanceMm,
      target.y() - forward[1] * distanceMm,
      -forward[2] * distanceMm
    };
  }

  private double distorted(double r) {
    double s = r * r;
    return r * (1 + s * (k1 + s * (k2 + s * k3)));
  }

  /** The pixel that shows a place, mm, so high over the plane. */
  Point pixelOf(Point mm, double heightMm) {
    double[] from = pinhole();
    double[] ray = {mm.x() - from[0], mm.y() - from[1], heightMm - from[2]};
    double[] forward = forward();
    double[] down = down();
    double depth = dot(ray, forward);
    double x = dot(ray, cross(down, forward)) / depth;
    double y = dot(ray, down) / depth;
    double r = Math.hypot(x, y);
    double grown = r == 0 ? 1 : distorted(r) / r;
    return new Point(
        (widthPx - 1) / 2.0 + focalPx * x * grown, (heightPx - 1) / 2.0 + focalPx * y * grown);
  }

  /** The ray that makes a pixel: its direction, x, y and z up. */
  double[] ray(double column, double row) {
    double x = (column - (widthPx - 1) / 2.0) / focalPx;
    double y = (row - (heightPx - 1) / 2.0) / focalPx;
    double seen = Math.hypot(x, y);
    double r = seen;
    for (int i = 0; i < 20; i++) {
      double s = r * r;
      double slope = 1 + s * (3 * k1 + s * (5 * k2 + s * 7 * k3));
      double step = (distorted(r) - seen) / slope;
      r -= step;
      if (Math.abs(step) < 1e-10) {
        break;
      }
    }
    double shrunk = seen == 0 ? 1 : r / seen;
    double[] forward = forward();
    double[] down = down();
    double[] right = cross(down, forward);
    double[] ray = new double[3];
    for (int i = 0; i < 3; i++) {
      ray[i] = forward[i] + right[i] * x * shrunk + down[i] * y * shrunk;
    }
    return ray;
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }
}
