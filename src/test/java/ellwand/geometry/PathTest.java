package ellwand.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.CubicCurve2D;
import java.awt.geom.PathIterator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class PathTest {

  /**
   * Handles that bring a cubic curve nearest to a quarter of the unit circle, by the usual rule.
   */
  private static final double K = 4 * (Math.sqrt(2) - 1) / 3;

  private static Segment.Cubic quarter(double r) {
    return new Segment.Cubic(
        new Point(r, 0), new Point(r, K * r), new Point(K * r, r), new Point(0, r));
  }

  private static Path half(double r) {
    return new Path(List.of(quarter(r), quarter(r).moved(new Motion(false, 90, 0, 0))));
  }

  @Test
  void halfACircleIsPiTimesItsRadiusLong() {
    // The radius of such a curve is up to 0.027 % too long, never too short [geometry].
    assertEquals(Math.PI * 100, half(100).length(), 0.0003 * Math.PI * 100);
    assertTrue(half(100).length() > Math.PI * 100 - 0.01);
  }

  @Test
  void marksAreMeasuredAlongTheLine() {
    Path.Tangent top = half(100).tangent(half(100).length() / 2);
    assertTrue(top.at().distance(new Point(0, 100)) < 0.01);
    assertTrue(top.direction().distance(new Point(-1, 0)) < 0.01);
    assertEquals(new Point(100, 0), half(100).tangent(-5).at());
    assertTrue(half(100).tangent(1e6).at().distance(new Point(-100, 0)) < 1e-9);
  }

  @Test
  void aLineIsMeasuredFromPointToPoint() {
    Path line =
        joined(
            Path.line(new Point(0, 0), new Point(30, 40)),
            Path.line(new Point(30, 40), new Point(30, 100)));
    assertEquals(110, line.length(), 1e-12);
    assertEquals(new Point(15, 20), line.tangent(25).at());
    assertEquals(new Point(30, 60), line.tangent(70).at());
    assertEquals(new Point(0, 1), line.tangent(70).direction());
  }

  @Test
  void flattenedCurvesStayWithinTheirTolerance() {
    Segment.Cubic curve = quarter(100);
    for (double tolerance : new double[] {1, 0.1, 0.01}) {
      List<Point> line = new Path(List.of(curve)).flattened(tolerance);
      for (int i = 0; i <= 1000; i++) {
        Point p = curve.at(i / 1000.0);
        assertTrue(nearest(line, p) <= tolerance);
      }
    }
  }

  @Test
  void theJdkFlattensToTheSameLine() {
    List<Point> ours = new Path(List.of(quarter(100))).flattened(0.01);
    CubicCurve2D jdk = new CubicCurve2D.Double(100, 0, 100, 100 * K, 100 * K, 100, 0, 100);
    double[] c = new double[6];
    for (PathIterator i = jdk.getPathIterator(null, 0.01); !i.isDone(); i.next()) {
      i.currentSegment(c);
      assertTrue(nearest(ours, new Point(c[0], c[1])) < 0.02);
    }
  }

  private static double nearest(List<Point> line, Point p) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 1; i < line.size(); i++) {
      least = Math.min(least, Offset.distance(p, line.get(i - 1), line.get(i)));
    }
    return least;
  }

  @Test
  void splitCurvesAreTheCurve() {
    Segment part = quarter(100).between(0.2, 0.7);
    for (int i = 0; i <= 10; i++) {
      Point wanted = quarter(100).at(0.2 + 0.5 * i / 10.0);
      assertTrue(part.at(i / 10.0).distance(wanted) < 1e-9);
    }
    assertEquals(quarter(100), quarter(100).between(0, 1));
  }

  @Test
  void aCurveWhoseHandleLiesOnItsEndStillHasADirection() {
    Segment.Cubic curve =
        new Segment.Cubic(new Point(0, 0), new Point(0, 0), new Point(50, 50), new Point(100, 50));
    assertTrue(curve.direction(0).distance(new Point(1, 1).unit()) < 1e-3);
  }

  @Test
  void straightMeansNoPointAsFarFromTheLineAsTheTolerance() {
    Path bent =
        joined(
            Path.line(new Point(0, 0), new Point(50, 0.04)),
            Path.line(new Point(50, 0.04), new Point(100, 0)));
    assertTrue(bent.straight(0.05));
    assertTrue(!bent.straight(0.03));
    assertTrue(!Path.line(new Point(1, 1), new Point(1, 1)).straight(0.05));
  }

  @Test
  void aPathHasNoBreakAndIsNotEmpty() {
    assertThrows(IllegalArgumentException.class, () -> new Path(List.of()));
    Path first = Path.line(new Point(0, 0), new Point(1, 0));
    Path apart = Path.line(new Point(2, 0), new Point(3, 0));
    assertThrows(IllegalArgumentException.class, () -> joined(first, apart));
  }

  @Test
  void reversedItRunsBack() {
    Path back = half(100).reversed();
    assertEquals(half(100).end(), back.start());
    assertEquals(half(100).length(), back.length(), 1e-9);
    assertTrue(back.startDirection().plus(half(100).endDirection()).norm() < 1e-9);
  }

  private static Path joined(Path one, Path next) {
    return new Path(Stream.concat(one.segments().stream(), next.segments().stream()).toList());
  }
}
