package ellwand.edit;

import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.List;

/** Where an outline that is dragged straight along comes too near to others, edge by edge. */
final class Contact {

  /**
   * Nearer than this is still apart, mm: files are rounded to a millionth of a mm, and copies that
   * touch shall slide along each other.
   */
  static final double TOUCH_MM = 2e-6;

  private final Contour moving;
  private final Point direction;

  Contact(Outline moving, Point direction) {
    this.moving = new Contour(moving, direction);
    this.direction = direction;
  }

  /** An outline's edges by their ends, along the drag and to its left. */
  private static final class Contour {
    private final double[] along;
    private final double[] left;
    private final Chord around;

    Contour(Outline outline, Point direction) {
      List<Point> points = outline.points();
      int n = points.size();
      along = new double[n + 1];
      left = new double[n + 1];
      double[] most = {1e300, -1e300, 1e300, -1e300};
      for (int i = 0; i <= n; i++) {
        along[i] = direction.dot(points.get(i % n));
        left[i] = direction.cross(points.get(i % n));
        most[0] = Math.min(most[0], along[i]);
        most[1] = Math.max(most[1], along[i]);
        most[2] = Math.min(most[2], left[i]);
        most[3] = Math.max(most[3], left[i]);
      }
      around = new Chord(most[0], most[2], most[1], most[3]);
    }

    int count() {
      return along.length - 1;
    }

    Chord edge(int i) {
      return new Chord(along[i], left[i], along[i + 1], left[i + 1]);
    }
  }

  /** One edge, or the two corners of a box. */
  private record Chord(double along0, double left0, double along1, double left1) {
    double back() {
      return Math.min(along0, along1);
    }

    double front() {
      return Math.max(along0, along1);
    }

    double low() {
      return Math.min(left0, left1);
    }

    double high() {
      return Math.max(left0, left1);
    }

    boolean level() {
      return high() - low() <= 2 * TOUCH_MM;
    }

    /** Where along the drag it has a place to the left; not for a level one. */
    double at(double left) {
      return along0 + (along1 - along0) * (left - left0) / (left1 - left0);
    }
  }

  /**
   * Bars what of the passage brings the two nearer than the gap; marks where that may change.
   *
   * @return whether they may come near each other at all
   */
  boolean against(Outline other, double gapMm, Passage passage) {
    Contour fixed = new Contour(other, direction);
    if (!meet(moving.around, fixed.around, gapMm, passage)) {
      return false;
    }
    for (int j = 0; j < fixed.count(); j++) {
      Chord there = fixed.edge(j);
      if (meet(moving.around, there, gapMm, passage)) {
        for (int i = 0; i < moving.count(); i++) {
          Chord here = moving.edge(i);
          if (meet(here, there, gapMm, passage)) {
            if (gapMm > 2 * TOUCH_MM) {
              near(here, there, gapMm - TOUCH_MM, passage);
            } else {
              cross(here, there, passage);
            }
          }
        }
      }
    }
    return true;
  }

  private static boolean meet(Chord here, Chord there, double gapMm, Passage passage) {
    double reach = gapMm + TOUCH_MM;
    return there.low() - here.high() <= reach
        && here.low() - there.high() <= reach
        && there.back() - here.front() <= passage.lengthMm() + reach
        && there.front() - here.back() >= -reach;
  }

  /** Bars where the edges cross, more than touching with their ends. */
  private static void cross(Chord here, Chord there, Passage passage) {
    double low = Math.max(here.low(), there.low()) + TOUCH_MM;
    double high = Math.min(here.high(), there.high()) - TOUCH_MM;
    if (here.level() != there.level()) {
      Chord level = here.level() ? here : there;
      Chord slanting = here.level() ? there : here;
      double left = (level.low() + level.high()) / 2;
      if (left > slanting.low() + TOUCH_MM && left < slanting.high() - TOUCH_MM) {
        double at = slanting.at(left);
        passage.bar(
            here.level() ? at - here.front() : there.back() - at,
            here.level() ? at - here.back() : there.front() - at);
        return;
      }
    } else if (!here.level() && low < high) {
      double one = there.at(low) - here.at(low);
      double other = there.at(high) - here.at(high);
      passage.bar(Math.min(one, other), Math.max(one, other));
      return;
    }
    // They only touch: where they begin and end to, things may change.
    for (double from : new double[] {here.along0, here.along1}) {
      for (double to : new double[] {there.along0, there.along1}) {
        passage.bar(to - from, to - from);
      }
    }
  }

  /**
   * Bars where the edges come nearer than the gap: the differences of their points fill a
   * parallelogram; widened by the gap it is convex, so that the drag cuts one stretch out of it.
   */
  private static void near(Chord here, Chord there, double gapMm, Passage passage) {
    double[] x = {
      there.along0 - here.along0,
      there.along1 - here.along0,
      there.along1 - here.along1,
      there.along0 - here.along1
    };
    double[] y = {
      there.left0 - here.left0,
      there.left1 - here.left0,
      there.left1 - here.left1,
      there.left0 - here.left1
    };
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < 4; i++) {
      int k = (i + 1) % 4;
      double dx = x[k] - x[i];
      double dy = y[k] - y[i];
      double lean = dy == 0 ? 0 : gapMm * dx / Math.hypot(dx, dy) * Math.signum(dy);
      // Ends of the side, ends of the part within reach of the drag, and where a circle that runs
      // along the side is farthest out.
      for (double left : new double[] {y[i], y[k], -gapMm, gapMm, lean, -lean}) {
        boolean onSide = left >= Math.min(y[i], y[k]) && left <= Math.max(y[i], y[k]);
        if (Math.abs(left) <= gapMm && onSide) {
          double half = Math.sqrt(gapMm * gapMm - left * left);
          double one = left == y[k] ? x[k] : dy == 0 ? x[i] : x[i] + dx * (left - y[i]) / dy;
          double other = dy == 0 ? x[i] : one;
          from = Math.min(from, Math.min(one, other) - half);
          to = Math.max(to, Math.max(one, other) + half);
        }
      }
    }
    if (from < to) {
      passage.bar(from, to);
    }
  }
}
