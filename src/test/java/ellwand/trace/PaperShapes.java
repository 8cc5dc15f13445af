package ellwand.trace;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Paper pieces of known shape, mm, and what a trace of them looks like. */
public final class PaperShapes {

  private PaperShapes() {}

  /** A patch pocket with two corners of radius 20 mm; 7 edges by its sharp corners: 3. */
  public static List<Path> pocket() {
    double k = 20 * 0.5523;
    Path round =
        new Path(
            List.of(
                line(0, 180, 0, 20),
                new Segment.Cubic(p(0, 20), p(0, 20 - k), p(20 - k, 0), p(20, 0)),
                line(20, 0, 140, 0),
                new Segment.Cubic(p(140, 0), p(140 + k, 0), p(160, 20 - k), p(160, 20)),
                line(160, 20, 160, 180)));
    return List.of(round, Path.line(p(160, 180), p(0, 180)));
  }

  /** The front of a trouser leg, 900 mm long. */
  public static List<Path> leg() {
    Path hem = Path.line(p(60, 0), p(240, 0));
    Path inseam =
        new Path(
            List.of(
                line(240, 0, 250, 350),
                new Segment.Cubic(p(250, 350), p(254, 450), p(268, 560), p(300, 640))));
    Path crotch =
        new Path(
            List.of(
                new Segment.Cubic(p(300, 640), p(270, 645), p(248, 670), p(245, 720)),
                line(245, 720, 235, 900)));
    Path waist = Path.line(p(235, 900), p(40, 890));
    Path side =
        new Path(
            List.of(
                new Segment.Cubic(p(40, 890), p(10, 800), p(4, 740), p(10, 640)),
                new Segment.Cubic(p(10, 640), p(14, 560), p(40, 450), p(48, 350)),
                line(48, 350, 60, 0)));
    return List.of(hem, inseam, crotch, waist, side);
  }

  /** Half of a bodice front, its fold the straight left edge. */
  public static List<Path> front() {
    return List.of(
        Path.line(p(0, 0), p(230, 8)),
        Path.line(p(230, 8), p(245, 210)),
        new Path(List.of(new Segment.Cubic(p(245, 210), p(190, 225), p(180, 290), p(200, 385)))),
        Path.line(p(200, 385), p(75, 425)),
        new Path(List.of(new Segment.Cubic(p(75, 425), p(70, 370), p(40, 335), p(0, 335)))),
        Path.line(p(0, 335), p(0, 0)));
  }

  /** Round. */
  public static List<Path> circle() {
    double k = 70 * 0.55228;
    return List.of(
        new Path(
            List.of(
                new Segment.Cubic(p(70, 0), p(70, k), p(k, 70), p(0, 70)),
                new Segment.Cubic(p(0, 70), p(-k, 70), p(-70, k), p(-70, 0)),
                new Segment.Cubic(p(-70, 0), p(-70, -k), p(-k, -70), p(0, -70)),
                new Segment.Cubic(p(0, -70), p(k, -70), p(70, -k), p(70, 0)))));
  }

  /** The edges in one line that returns to its start. */
  public static Path round(List<Path> edges) {
    return new Path(edges.stream().flatMap(e -> e.segments().stream()).toList());
  }

  /** A trace of it: corners rounded as blur does, noise. */
  public static Rim traced(Path outline, double blurMm, double noiseMm, long seed) {
    Rim rim = new Rim(outline.flattened(0.005)).even(0.25);
    Random dice = new Random(seed);
    int reach = (int) Math.round(blurMm / 0.25);
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < rim.size(); i += 2) {
      Point sum = new Point(0, 0);
      for (int d = -reach; d <= reach; d++) {
        sum = sum.plus(rim.at(i + d));
      }
      Point noise = new Point(dice.nextGaussian(), dice.nextGaussian()).times(noiseMm);
      points.add(sum.times(1.0 / (2 * reach + 1)).plus(noise));
    }
    return new Rim(points);
  }

  static Point p(double x, double y) {
    return new Point(x, y);
  }

  static Segment.Line line(double x1, double y1, double x2, double y2) {
    return new Segment.Line(p(x1, y1), p(x2, y2));
  }
}
