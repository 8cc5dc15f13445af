package ellwand.trace;

import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Looks for crosses drawn by hand: two short strokes, straight near to where they cross, about at a
 * right angle, with bare paper between their arms. Lines that go on are none, since they cross as
 * often as a pattern likes.
 */
final class Crosses {

  /** Rings on which a cross shows its four arms and nothing else, mm from its middle. */
  private static final double[] RINGS_MM = {2.5, 4.5};

  /** An arm is no wider, mm. */
  private static final double MOST_WIDE_MM = 2;

  /** An arm is no longer, mm. */
  private static final double MOST_ARM_MM = 35;

  /** How far from a right angle arms may be, and from straight on, degrees. */
  private static final double OFF_SQUARE = 25;

  private static final double BENT = 15;

  /** What is hardly darker than its paper is a crease or noise, a logarithm. */
  private static final double FAINT = 0.2;

  /** What is as dark as this share of the middle belongs to it. */
  private static final double AS_DARK = 0.4;

  /** An arm is measured between these distances from the middle, at every step, mm. */
  private static final double NEAR_MM = 1.5;

  private static final double FAR_MM = 5;

  private static final double STEP_MM = 0.25;

  /** Half the width in which a stroke's middle is sought, mm. */
  private static final double BESIDE_MM = 1.2;

  /** Strokes wander off a line by no more near to the middle, mm. */
  private static final double STRAIGHT_MM = 0.3;

  /** Middles that are as near are one, mm. */
  private static final double ONE_MM = 3;

  private final Ink ink;

  private Crosses(Ink ink) {
    this.ink = ink;
  }

  /** The middles of all crosses in a picture, mm. */
  static List<Point> in(View view) {
    return new Crosses(new Ink(Lightness.of(view, 0.25))).found();
  }

  private List<Point> found() {
    List<Point> found = new ArrayList<>();
    for (int y = 0; y < ink.height(); y++) {
      for (int x = 0; x < ink.width(); x++) {
        if (ink.at(x, y) > FAINT) {
          Point at = new Point(x, y);
          double near = ONE_MM / ink.pixelMm();
          if (found.stream().noneMatch(f -> f.distance(at) < near)) {
            middle(at)
                .filter(m -> found.stream().noneMatch(f -> f.distance(m) < near))
                .ifPresent(found::add);
          }
        }
      }
    }
    return found.stream().map(p -> ink.mm(p.x(), p.y())).toList();
  }

  /** Of the cross round a place, if there is one, pixels. */
  private Optional<Point> middle(Point start) {
    Point at = start;
    for (int round = 0; round < 3; round++) {
      double dark = Math.max(FAINT, AS_DARK * ink.near(at.x(), at.y()));
      Optional<double[]> arms = arms(at, dark);
      if (arms.isEmpty()) {
        return Optional.empty();
      }
      Optional<Bar> one = bar(at, arms.get()[0], arms.get()[2], dark);
      Optional<Bar> other = bar(at, arms.get()[1], arms.get()[3], dark);
      if (one.isEmpty() || other.isEmpty()) {
        return Optional.empty();
      }
      at = one.get().crossing(other.get());
      if (!(at.distance(start) < ONE_MM / ink.pixelMm())) {
        return Optional.empty();
      }
      if (round == 2) {
        for (double arm : arms.get()) {
          if (goesOn(at, arm, dark)) {
            return Optional.empty();
          }
        }
      }
    }
    return Optional.of(at);
  }

  /** The directions of four arms one after another, radians, if there are as many and no more. */
  private Optional<double[]> arms(Point at, double dark) {
    double[] inner = onRing(at, RINGS_MM[0], dark);
    double[] outer = onRing(at, RINGS_MM[1], dark);
    if (inner.length != 4 || outer.length != 4) {
      return Optional.empty();
    }
    for (int i = 0; i < 4; i++) {
      double arm = outer[i];
      double before = apart(arm, outer[(i + 3) % 4]);
      double on = apart(arm, outer[(i + 2) % 4]);
      if (Math.abs(before - 90) > OFF_SQUARE
          || 180 - on > BENT
          || Arrays.stream(inner).allMatch(in -> apart(in, arm) > BENT)) {
        return Optional.empty();
      }
    }
    return Optional.of(outer);
  }

  private static double apart(double one, double other) {
    return Math.toDegrees(Math.abs(Math.IEEEremainder(one - other, 2 * Math.PI)));
  }

  /** The directions in which dark runs cross a ring, radians; none if one is wide. */
  private double[] onRing(Point at, double mm, double dark) {
    double radius = mm / ink.pixelMm();
    int count = (int) Math.ceil(2 * Math.PI * radius * 1.5);
    boolean[] on = new boolean[count];
    int bare = -1;
    for (int i = 0; i < count; i++) {
      double turn = 2 * Math.PI * i / count;
      on[i] = at(at.plus(new Point(Math.cos(turn), Math.sin(turn)).times(radius))) > dark;
      bare = on[i] ? bare : i;
    }
    if (bare < 0) {
      return new double[0];
    }
    double[] runs = new double[5];
    int found = 0;
    int start = -1;
    for (int k = 1; k <= count; k++) {
      boolean dot = on[(bare + k) % count];
      if (dot && start < 0) {
        start = k;
      } else if (!dot && start >= 0) {
        double wide = 2 * Math.PI * mm * (k - start) / count;
        if (found == 4 || wide > MOST_WIDE_MM) {
          return new double[0];
        }
        runs[found++] = 2 * Math.PI * (bare + (start + k - 1) / 2.0) / count;
        start = -1;
      }
    }
    return Arrays.copyOf(runs, found);
  }

  private double at(Point p) {
    return ink.at((int) Math.round(p.x()), (int) Math.round(p.y()));
  }

  /** A stroke as a line. */
  private record Bar(Point on, Point along) {
    Point crossing(Bar other) {
      double share = other.on.minus(on).cross(other.along) / along.cross(other.along);
      return on.plus(along.times(share));
    }
  }

  /** The line along two arms, where they are straight on. */
  private Optional<Bar> bar(Point at, double arm, double opposite, double dark) {
    Point along =
        new Point(Math.cos(arm) - Math.cos(opposite), Math.sin(arm) - Math.sin(opposite)).unit();
    Point across = along.left();
    List<double[]> places = new ArrayList<>();
    int looked = 0;
    for (double mm = NEAR_MM; mm <= FAR_MM; mm += STEP_MM) {
      for (int way = -1; way <= 1; way += 2) {
        looked++;
        double s = way * mm / ink.pixelMm();
        double sum = 0;
        double off = 0;
        double half = BESIDE_MM / ink.pixelMm();
        for (double t = -half; t <= half; t += 0.5) {
          double over = at(at.plus(along.times(s)).plus(across.times(t))) - dark / 2;
          if (over > 0) {
            sum += over;
            off += over * t;
          }
        }
        if (sum > 0) {
          places.add(new double[] {s, off / sum});
        }
      }
    }
    if (places.size() < 0.8 * looked) {
      return Optional.empty();
    }
    // Least squares: how far across the line lies at the middle, and how it is turned.
    double n = places.size();
    double s = places.stream().mapToDouble(p -> p[0]).sum() / n;
    double t = places.stream().mapToDouble(p -> p[1]).sum() / n;
    double st = places.stream().mapToDouble(p -> (p[0] - s) * (p[1] - t)).sum();
    double ss = places.stream().mapToDouble(p -> (p[0] - s) * (p[0] - s)).sum();
    double slope = st / ss;
    double rest =
        places.stream().mapToDouble(p -> Math.pow(p[1] - t - slope * (p[0] - s), 2)).sum();
    if (Math.sqrt(rest / n) * ink.pixelMm() > STRAIGHT_MM) {
      return Optional.empty();
    }
    Point on = at.plus(along.times(s)).plus(across.times(t));
    return Optional.of(new Bar(on, along.plus(across.times(slope)).unit()));
  }

  /** Whether an arm is too long to be a cross's. */
  private boolean goesOn(Point at, double arm, double dark) {
    Point along = new Point(Math.cos(arm), Math.sin(arm));
    double step = 0.5 / ink.pixelMm();
    Point tip = at.plus(along.times(FAR_MM / ink.pixelMm()));
    int bare = 0;
    while (bare < 4 && tip.distance(at) * ink.pixelMm() < MOST_ARM_MM) {
      tip = tip.plus(along.times(step));
      bare = ink.near(tip.x(), tip.y()) > dark ? 0 : bare + 1;
      if (bare == 0) {
        // A hand's stroke bends a little: on from the darkest place beside.
        Point best = tip;
        for (double side = -0.5; side <= 0.5; side += 0.25) {
          Point beside = tip.plus(along.left().times(side / ink.pixelMm()));
          best = at(beside) > at(best) ? beside : best;
        }
        tip = best;
      }
    }
    return bare < 4;
  }
}
