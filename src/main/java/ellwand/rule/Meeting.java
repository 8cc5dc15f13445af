package ellwand.rule;

import ellwand.geometry.Box;
import ellwand.geometry.Point;
import ellwand.geometry.Region;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Two copies too close to each other.
 *
 * @param overlap the cloth that both take; empty where they do not overlap
 * @param distanceMm between them, 0 where they touch or overlap
 */
record Meeting(Placed one, Placed other, Region overlap, double distanceMm) {

  /** An overlap up to this share of the smaller copy's area is none. */
  static final double OVERLAP_SHARE = 1e-6;

  /** All pairs that overlap, or that keep less than the gap between them. */
  static List<Meeting> within(double gapMm, List<Placed> placed) {
    List<Placed> byX =
        placed.stream()
            .filter(p -> p.region().isPresent())
            .sorted(Comparator.comparingDouble((Placed p) -> p.box().minX()))
            .toList();
    List<Meeting> meetings = new ArrayList<>();
    for (int i = 0; i < byX.size(); i++) {
      Box reach = byX.get(i).box().grown(gapMm);
      for (int j = i + 1; j < byX.size() && byX.get(j).box().minX() <= reach.maxX(); j++) {
        if (reach.touches(byX.get(j).box())) {
          Meeting meeting = between(byX.get(i), byX.get(j), gapMm);
          if (meeting.overlaps() || meeting.distanceMm < gapMm - Rule.ROUNDING_MM) {
            meetings.add(meeting);
          }
        }
      }
    }
    return meetings;
  }

  private static Meeting between(Placed a, Placed b, double gapMm) {
    Region one = a.region().orElseThrow();
    Region other = b.region().orElseThrow();
    double distance = gapMm > 0 ? one.distance(other) : 0;
    return new Meeting(a, b, distance > 0 ? Region.EMPTY : one.intersect(other), distance);
  }

  boolean overlaps() {
    double smaller = Math.min(one.copy().outline().area(), other.copy().outline().area());
    return overlap.area() > OVERLAP_SHARE * smaller;
  }

  /** Where to look. */
  Point place() {
    if (overlaps()) {
      return overlap.box().centre();
    }
    return one.region().orElseThrow().narrowest(other.region().orElseThrow());
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
