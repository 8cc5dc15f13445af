package ellwand.rule;

import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.geometry.Region;
import java.util.List;
import java.util.Optional;

/**
 * Two copies too close to each other.
 *
 * @param overlaps whether both take the same cloth
 * @param mm how wide that is at its widest; if they do not overlap, how far they are apart
 * @param place where to look
 */
record Meeting(Placed one, Placed other, boolean overlaps, double mm, Point place) {

  /** An overlap up to this share of the smaller copy's area is none. */
  static final double OVERLAP_SHARE = 1e-6;

  /** How they meet; empty if they keep the gap. */
  static Optional<Meeting> between(Placed a, Placed b, double gapMm) {
    Region one = a.region().orElseThrow();
    Region other = b.region().orElseThrow();
    double distance = gapMm > 0 ? one.distance(other) : 0;
    Region overlap = distance > 0 ? Region.EMPTY : one.intersect(other);
    double smaller = Math.min(a.copy().outline().area(), b.copy().outline().area());
    if (overlap.area() > OVERLAP_SHARE * smaller) {
      double wide = Math.max(overlap.thickness(), Double.MIN_NORMAL);
      return Optional.of(new Meeting(a, b, true, wide, overlap.box().centre()));
    }
    return distance < gapMm - Rule.ROUNDING_MM
        ? Optional.of(new Meeting(a, b, false, distance, one.narrowest(other)))
        : Optional.empty();
  }

  /**
   * Whether two copies overlap for certain, told without measuring.
   *
   * @param inside a place on the one
   */
  static boolean surely(Placed one, Placed other, Point inside) {
    Outline mine = one.copy().outline();
    Outline theirs = other.copy().outline();
    if (!other.region().orElseThrow().contains(inside)) {
      return false;
    }
    double radius = Math.min(mine.distance(inside), theirs.distance(inside));
    return Math.PI * radius * radius > OVERLAP_SHARE * Math.min(mine.area(), theirs.area());
  }

  String otherName() {
    return one.name().equals(other.name()) ? "another " + other.name() : other.name();
  }

  List<String> pieces() {
    return List.of(one.copy().piece(), other.copy().piece());
  }

  List<Integer> copies() {
    return List.of(one.index(), other.index());
  }
}
