package ellwand.trace;

import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;

/**
 * Straight lines drawn on a piece, by the transform of P. V. C. Hough (1962) in the form of Duda
 * and Hart (1972): each pixel on the ridge of a line votes for the lines that run through it its
 * way.
 */
final class Strokes {

  /** Shorter lines are no matter, mm. */
  static final double LEAST_MM = 40;

  /** Where a line is broken by more, it is two, mm. */
  private static final double GAP_MM = 4;

  /** Lines are straight to this, mm: drawn along a ruler. */
  private static final double STRAIGHT_MM = 1;

  /** What is hardly darker than its paper is a crease or noise, a logarithm. */
  private static final double FAINT = 0.08;

  private static final int DEGREES = 180;

  /** How far off a pixel's own direction a line through it may run, degrees. */
  private static final int OFF_DEGREES = 4;

  private static final int MOST_LINES = 60;

  /**
   * A line, in pixels.
   *
   * @param dark by how much it is darker than its paper
   */
  record Stroke(Point from, Point to, double dark) {}

  private final Ink ink;
  private final List<int[]> ridge = new ArrayList<>();
  private final int[][] votes;
  private final int rows;
  private final Point middle;

  private Strokes(Ink ink) {
    this.ink = ink;
    middle = new Point(ink.width() / 2.0, ink.height() / 2.0);
    rows = (int) Math.ceil(middle.norm()) + 2;
    votes = new int[DEGREES][2 * rows];
  }

  /** All that are straight and long enough, the longest first. */
  static List<Stroke> of(Ink ink) {
    Strokes strokes = new Strokes(ink);
    strokes.findRidges();
    return strokes.found();
  }

  private void findRidges() {
    double least = Math.max(FAINT, 3 * usual());
    for (int y = 1; y < ink.height() - 1; y++) {
      for (int x = 1; x < ink.width() - 1; x++) {
        float own = ink.at(x, y);
        if (own > least) {
          double xx = ink.at(x + 1, y) + ink.at(x - 1, y) - 2 * own;
          double yy = ink.at(x, y + 1) + ink.at(x, y - 1) - 2 * own;
          double xy =
              (ink.at(x + 1, y + 1)
                      + ink.at(x - 1, y - 1)
                      - ink.at(x + 1, y - 1)
                      - ink.at(x - 1, y + 1))
                  / 4;
          double across = Math.atan2(-2 * xy, yy - xx) / 2;
          int dx = (int) Math.round(Math.cos(across));
          int dy = (int) Math.round(Math.sin(across));
          if (own >= ink.at(x + dx, y + dy) && own >= ink.at(x - dx, y - dy)) {
            int degrees = Math.floorMod((int) Math.round(Math.toDegrees(across)), DEGREES);
            ridge.add(new int[] {x, y, degrees});
            vote(x, y, degrees, 1);
          }
        }
      }
    }
  }

  /** By how much bare paper seems darker than itself, for its noise. */
  private double usual() {
    int step = Math.max(1, ink.width() * ink.height() / 20_000);
    float[] some = new float[ink.width() * ink.height() / step + 1];
    int count = 0;
    for (int i = 0; i < ink.width() * ink.height(); i += step) {
      if (ink.inside(i % ink.width(), i / ink.width())) {
        some[count++] = ink.at(i % ink.width(), i / ink.width());
      }
    }
    float[] sorted = Arrays.copyOf(some, count);
    Arrays.sort(sorted);
    return count == 0 ? 0 : sorted[count / 2];
  }

  private void vote(int x, int y, int degrees, int by) {
    for (int d = degrees - OFF_DEGREES; d <= degrees + OFF_DEGREES; d++) {
      double turn = Math.toRadians(d);
      double off = (x - middle.x()) * Math.cos(turn) + (y - middle.y()) * Math.sin(turn);
      // Half a turn on is the same line from its other side.
      boolean over = d < 0 || d >= DEGREES;
      votes[Math.floorMod(d, DEGREES)][rows + (int) Math.round(over ? -off : off)] += by;
    }
  }

  private List<Stroke> found() {
    List<Stroke> found = new ArrayList<>();
    double least = LEAST_MM / ink.pixelMm() / 2;
    for (int k = 0; k < MOST_LINES; k++) {
      int best = 0;
      int degrees = 0;
      int row = 0;
      for (int d = 0; d < DEGREES; d++) {
        for (int r = 1; r < 2 * rows - 1; r++) {
          int sum = votes[d][r - 1] + votes[d][r] + votes[d][r + 1];
          if (sum > best) {
            best = sum;
            degrees = d;
            row = r;
          }
        }
      }
      if (best < least) {
        break;
      }
      take(degrees, row - rows, found);
    }
    found.sort(Comparator.comparingDouble((Stroke s) -> -s.from.distance(s.to)));
    return found;
  }

  /** Adds the lines along one that was voted for, and takes back what voted for it. */
  private void take(int degrees, double off, List<Stroke> found) {
    double turn = Math.toRadians(degrees);
    Point across = new Point(Math.cos(turn), Math.sin(turn));
    Point on = middle.plus(across.times(off));
    double band = Math.max(1.5, STRAIGHT_MM / ink.pixelMm());
    // A direction in whole degrees strays at the ends of a long line: once more as it lies.
    for (int round = 0; round < 2; round++) {
      List<Point> near = points(members(on, across, degrees, 2 * band));
      if (near.size() < 2) {
        break;
      }
      Point along = direction(near);
      across = along.left();
      on = mean(near);
    }
    List<int[]> members = members(on, across, degrees, 1.5 * band);
    Point along = across.left();
    Point at = on;
    List<Point> sorted = points(members(on, across, degrees, band));
    sorted.sort(Comparator.comparingDouble(p -> p.minus(at).dot(along)));
    int start = 0;
    for (int i = 1; i <= sorted.size(); i++) {
      if (i == sorted.size()
          || sorted.get(i).minus(sorted.get(i - 1)).dot(along) * ink.pixelMm() > GAP_MM) {
        add(sorted.subList(start, i), found);
        start = i;
      }
    }
    if (members.isEmpty()) {
      // Nothing lies there: what voted has another direction.
      votes[degrees][(int) off + rows] = 0;
      votes[degrees][(int) off + rows - 1] = 0;
      votes[degrees][(int) off + rows + 1] = 0;
    }
    members.forEach(m -> vote(m[0], m[1], m[2], -1));
    ridge.removeAll(new HashSet<>(members));
  }

  private void add(List<Point> run, List<Stroke> found) {
    double mm = run.get(0).distance(run.get(run.size() - 1)) * ink.pixelMm();
    if (run.size() < 2 || mm < LEAST_MM || run.size() < mm / ink.pixelMm() / 2) {
      return;
    }
    Point along = direction(run);
    Point on = mean(run);
    double least = run.stream().mapToDouble(p -> p.minus(on).dot(along)).min().orElseThrow();
    double most = run.stream().mapToDouble(p -> p.minus(on).dot(along)).max().orElseThrow();
    double[] dark = run.stream().mapToDouble(p -> ink.near(p.x(), p.y())).sorted().toArray();
    found.add(
        new Stroke(on.plus(along.times(least)), on.plus(along.times(most)), dark[dark.length / 2]));
  }

  private List<int[]> members(Point on, Point across, int degrees, double band) {
    List<int[]> members = new ArrayList<>();
    for (int[] pixel : ridge) {
      int off = Math.abs(pixel[2] - degrees);
      if (Math.min(off, DEGREES - off) <= 2 * OFF_DEGREES
          && Math.abs(new Point(pixel[0], pixel[1]).minus(on).dot(across)) <= band) {
        members.add(pixel);
      }
    }
    return members;
  }

  private static List<Point> points(List<int[]> pixels) {
    List<Point> points = new ArrayList<>();
    pixels.forEach(p -> points.add(new Point(p[0], p[1])));
    return points;
  }

  private static Point mean(List<Point> points) {
    return points.stream().reduce(new Point(0, 0), Point::plus).times(1.0 / points.size());
  }

  /** In which they lie, by least squares across. */
  private static Point direction(List<Point> points) {
    Point mean = mean(points);
    double difference = 0;
    double product = 0;
    for (Point p : points) {
      Point off = p.minus(mean);
      difference += off.x() * off.x() - off.y() * off.y();
      product += off.x() * off.y();
    }
    double turn = Math.atan2(2 * product, difference) / 2;
    return new Point(Math.cos(turn), Math.sin(turn));
  }
}
