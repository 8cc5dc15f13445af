package ellwand.cutting;

import ellwand.geometry.Point;
import java.util.List;
import java.util.Optional;

/**
 * How the cutting line gets from one edge to the next.
 *
 * @param points of the cutting line between the two, counter-clockwise
 * @param offFirst how much of the first line beside is cut away at its end, in stretches; -1 if
 *     nothing
 * @param offSecond how much of the second is cut away at its start
 * @param sure whether the lines met as they should; if not, the cutting line must be looked at
 */
record Corner(List<Point> points, double offFirst, double offSecond, boolean sure) {

  /** Below this, degrees, two edges count as running on smoothly. */
  private static final double SMOOTH_DEGREES = 1;

  /** Over how many widths of the wider allowance a mitre may taper it to the narrower. */
  private static final double TAPER = 1 + 1e-9;

  Corner {
    points = List.copyOf(points);
  }

  /** No corner: the line just ends. */
  static final Corner NONE = untrimmed(List.of());

  private static Corner untrimmed(List<Point> points) {
    return new Corner(points, -1, -1, true);
  }

  /**
   * The corner between the end of one edge and the start of the next: mitred; squared off where the
   * mitre would run past {@link Cutter#MITRE_LIMIT}; a square step where one edge runs on, smoothly
   * or nearly so, into another with a different allowance.
   */
  static Corner between(Arm a, Arm b) {
    if (a.allowance() == 0 && b.allowance() == 0) {
      return untrimmed(List.of(a.corner()));
    }
    Point onward = b.out().times(-1);
    double sin = a.out().cross(onward);
    double cos = a.out().dot(onward);
    if (cos > 0 && Math.abs(sin) < Math.sin(Math.toRadians(SMOOTH_DEGREES))) {
      return a.allowance() == b.allowance()
          ? new Corner(List.of(Run.mitre(a.corner(), a.out(), onward, a.allowance())), 0, 0, true)
          : step(a, b);
    }
    // How far each line runs past its foot to where the two meet, if both ran straight.
    double pastA = (b.allowance() - a.allowance() * cos) / sin;
    double pastB = (a.allowance() - b.allowance() * cos) / sin;
    double wider = Math.max(a.allowance(), b.allowance());
    double limit = Cutter.MITRE_LIMIT * wider;
    if (sin > 0 && pastA >= 0 && pastB >= 0) {
      return Math.hypot(a.allowance(), pastA) <= limit
          ? untrimmed(List.of(a.past(pastA)))
          : squaredOff(a, b, limit);
    }
    // Beside a much wider allowance at a blunt corner a mitre would taper it too far away.
    boolean uneven =
        sin > 0 ? Math.min(pastA, pastB) < -TAPER * wider : Math.max(pastA, pastB) > TAPER * wider;
    if (uneven) {
      return step(a, b);
    }
    return meeting(a, b, limit).orElseGet(() -> sin > 0 ? step(a, b) : unmet(a, b));
  }

  /** By way of the corner itself; the loop that this makes is taken out afterwards. */
  private static Corner unmet(Arm a, Arm b) {
    return new Corner(List.of(a.foot(), a.corner(), b.foot()), -1, -1, false);
  }

  /** Where the two lines, continued as far as {@code reach} mm, cross. */
  static Optional<Corner> meeting(Arm a, Arm b, double reach) {
    return Crossing.nearest(a.extended(reach), b.extended(reach), a.corner())
        .map(c -> new Corner(List.of(c.at()), c.onFirst() - 1, c.onSecond() - 1, true));
  }

  /** The tip is cut off square to the corner's middle, at the limit. */
  private static Corner squaredOff(Arm a, Arm b, double limit) {
    Point middle = middle(a, b);
    return untrimmed(
        List.of(
            a.past((limit - a.side().dot(middle) * a.allowance()) / a.out().dot(middle)),
            b.past((limit - b.side().dot(middle) * b.allowance()) / b.out().dot(middle))));
  }

  /** The direction from the corner to where the two lines would meet. */
  private static Point middle(Arm a, Arm b) {
    double sin = -a.out().cross(b.out());
    if (Math.abs(sin) < 1e-9) {
      return a.out().plus(b.out()).unit();
    }
    double pastA = (b.allowance() + a.allowance() * a.out().dot(b.out())) / sin;
    return a.past(pastA).minus(a.corner()).unit();
  }

  /** From the narrower line square out to the wider. */
  private static Corner step(Arm a, Arm b) {
    boolean out = a.allowance() < b.allowance();
    Arm narrow = out ? a : b;
    Arm wide = out ? b : a;
    List<Point> square = List.of(wide.corner(), wide.foot());
    Optional<Crossing> met =
        Crossing.nearest(narrow.extended(wide.allowance()), square, narrow.foot());
    Point inner = met.map(Crossing::at).orElse(narrow.foot());
    double off = met.map(c -> c.onFirst() - 1).orElse(-1.0);
    return out
        ? new Corner(List.of(inner, wide.foot()), off, -1, true)
        : new Corner(List.of(wide.foot(), inner), -1, off, true);
  }
}
