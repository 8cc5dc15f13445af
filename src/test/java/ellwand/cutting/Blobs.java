package ellwand.cutting;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.pattern.Edge;
import ellwand.pattern.Piece;
import java.util.List;
import java.util.SplittableRandom;

/** Random pieces: corners round the origin, joined by lines and curves. */
final class Blobs {

  static final double[] ALLOWANCES = {0, 6, 10, 15, 30};

  private Blobs() {}

  /** Straight edges only, no inward corner: all corners on one ellipse. */
  static Piece convex(long seed) {
    return blob(new SplittableRandom(seed), 0, 0, false);
  }

  /** Corners may point in a little and edges bulge in or out a little. */
  static Piece mild(long seed) {
    return blob(new SplittableRandom(seed), 0.15, 0.12, false);
  }

  /** As {@link #mild}, with one allowance all round. */
  static Piece even(long seed) {
    return blob(new SplittableRandom(seed), 0.15, 0.12, true);
  }

  private static Piece blob(SplittableRandom random, double dent, double bulge, boolean even) {
    int n = random.nextInt(4, 9);
    double wide = 150 + 200 * random.nextDouble();
    double high = 150 + 200 * random.nextDouble();
    Point[] corners = new Point[n];
    for (int i = 0; i < n; i++) {
      double angle = 2 * Math.PI * (i + 0.6 * random.nextDouble()) / n;
      double in = 1 - dent * random.nextDouble();
      corners[i] = new Point(wide * in * Math.cos(angle), high * in * Math.sin(angle));
    }
    double all = ALLOWANCES[random.nextInt(1, ALLOWANCES.length)];
    Drawn drawn = Drawn.from(corners[0].x(), corners[0].y());
    for (int i = 0; i < n; i++) {
      double own = ALLOWANCES[random.nextInt(ALLOWANCES.length)];
      drawn.edge(edge(corners[i], corners[(i + 1) % n], bulge, random), even ? all : own, false);
    }
    return drawn.piece();
  }

  private static Path edge(Point a, Point b, double bulge, SplittableRandom random) {
    if (bulge == 0 || random.nextInt(3) == 0) {
      return Path.line(a, b);
    }
    Point along = b.minus(a);
    Point side = along.left().times(-1);
    double first = bulge * (2 * random.nextDouble() - 1);
    double second = bulge * (2 * random.nextDouble() - 1);
    return new Path(
        List.of(
            new Segment.Cubic(
                a,
                a.plus(along.times(0.33)).plus(side.times(first)),
                a.plus(along.times(0.67)).plus(side.times(second)),
                b)));
  }

  /** The smallest angle inside the piece at any of its corners. */
  static double sharpestDegrees(Piece piece) {
    double sharpest = 360;
    List<Edge> edges = piece.edges();
    for (int i = 0; i < edges.size(); i++) {
      Point before = edges.get(i).line().endDirection();
      Point after = edges.get((i + 1) % edges.size()).line().startDirection();
      double turn = Math.toDegrees(Math.atan2(before.cross(after), before.dot(after)));
      sharpest = Math.min(sharpest, 180 - turn);
    }
    return sharpest;
  }
}
