package ellwand.rule;

import ellwand.geometry.Box;
import ellwand.geometry.Point;
import ellwand.geometry.Region;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

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

  /**
   * All pairs that overlap, or that keep less than the gap between them. Where only some copies are
   * no more as they were, pairs of others meet as before.
   *
   * @param before all meetings of the copies as they were; absent if nothing is known of them
   * @param changed copies that differ, by index
   */
  static List<Meeting> within(
      double gapMm, List<Placed> placed, Optional<List<Meeting>> before, Set<Integer> changed) {
    Map<List<Integer>, Meeting> known = new HashMap<>();
    before.ifPresent(all -> all.forEach(m -> known.put(m.copies(), m)));
    List<Placed> byX =
        placed.stream()
            .filter(p -> p.region().isPresent())
            .sorted(Comparator.comparingDouble((Placed p) -> p.box().minX()))
            .toList();
    List<Meeting> meetings = new ArrayList<>();
    for (int i = 0; i < byX.size(); i++) {
      Placed one = byX.get(i);
      Box reach = one.box().grown(gapMm);
      for (int j = i + 1; j < byX.size() && byX.get(j).box().minX() <= reach.maxX(); j++) {
        Placed other = byX.get(j);
        if (!reach.touches(other.box())) {
          continue;
        }
        boolean asBefore =
            before.isPresent()
                && !changed.contains(one.index())
                && !changed.contains(other.index());
        if (asBefore) {
          Optional.ofNullable(known.get(List.of(one.index(), other.index())))
              .ifPresent(m -> meetings.add(new Meeting(one, other, m.overlaps, m.mm, m.place)));
        } else {
          between(one, other, gapMm).ifPresent(meetings::add);
        }
      }
    }
    return meetings;
  }

  /** How they meet; empty if they keep the gap. */
  private static Optional<Meeting> between(Placed a, Placed b, double gapMm) {
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
