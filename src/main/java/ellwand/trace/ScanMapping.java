package ellwand.trace;

import ellwand.geometry.Motion;
import ellwand.geometry.Point;

/**
 * Of a scan that lies turned and shifted beside others.
 *
 * @param own of the scan by itself
 * @param laid from there to its place
 * @param open covariance of its turn, radians about the origin, and its shift, mm; row by row
 */
record ScanMapping(FlatMapping own, Motion laid, double[] open) implements Mapping {

  @Override
  public Point mmAt(Point pixel) {
    return laid.apply(own.mmAt(pixel));
  }

  @Override
  public Point pixelAt(Point mm) {
    return own.pixelAt(laid.inverse().apply(mm));
  }

  @Override
  public double errorMm(Point mm) {
    double joint =
        LeastSquares.farthest(new double[] {-mm.y(), 1, 0}, new double[] {mm.x(), 0, 1}, open);
    return Math.hypot(own.errorMm(mm), joint);
  }
}
