package ellwand.file.drawn;

import ellwand.geometry.Point;
import ellwand.geometry.Segment;

/** {@code x' = a x + c y + e}, {@code y' = b x + d y + f}, as drawings nest their frames. */
public record Affine(double a, double b, double c, double d, double e, double f) {

  public static final Affine NONE = new Affine(1, 0, 0, 1, 0, 0);

  public static Affine scaled(double x, double y) {
    return new Affine(x, 0, 0, y, 0, 0);
  }

  public static Affine shifted(double x, double y) {
    return new Affine(1, 0, 0, 1, x, y);
  }

  /** Counter-clockwise where y is up. */
  public static Affine turned(double degrees) {
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    return new Affine(cos, sin, -sin, cos, 0, 0);
  }

  public Point apply(Point p) {
    return new Point(a * p.x() + c * p.y() + e, b * p.x() + d * p.y() + f);
  }

  public Segment apply(Segment segment) {
    return segment instanceof Segment.Cubic curve
        ? new Segment.Cubic(
            apply(curve.start()),
            apply(curve.control1()),
            apply(curve.control2()),
            apply(curve.end()))
        : new Segment.Line(apply(segment.start()), apply(segment.end()));
  }

  /** Both in one: the other first, then this. */
  public Affine after(Affine first) {
    Point shift = apply(new Point(first.e, first.f));
    return new Affine(
        a * first.a + c * first.b,
        b * first.a + d * first.b,
        a * first.c + c * first.d,
        b * first.c + d * first.d,
        shift.x(),
        shift.y());
  }

  /** How much longer it makes the line that it stretches most, at most; a bound. */
  public double stretch() {
    return Math.sqrt(a * a + b * b + c * c + d * d);
  }
}
