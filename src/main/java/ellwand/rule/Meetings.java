package ellwand.rule;

import ellwand.geometry.Box;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The copies that are too close to each other.
 *
 * @param measured the first of them, {@link #MOST} at the most
 * @param more how many pairs overlap besides for certain; others among those left are not known
 */
record Meetings(List<Meeting> measured, int more) {

  /** Measuring takes long, and who has found so many has enough to mend. */
  static final int MOST = 100;

  /** So many pairs are asked whether they overlap once that many are found. */
  static final int MOST_ASKED = 20_000;

  Meetings {
    measured = List.copyOf(measured);
  }

  /**
   * Pairs that overlap, or that keep less than the gap between them. Where only some copies are no
   * more as they were, pairs of others meet as before.
   *
   * @param before the meetings of the copies as they were; absent if nothing is known of them
   * @param changed copies that differ, by index
   */
  static Meetings within(
      double gapMm, List<Placed> placed, Optional<Meetings> before, Set<Integer> changed) {
    Optional<Meetings> all = before.filter(b -> b.more == 0);
    Map<List<Integer>, Meeting> known = new HashMap<>();
    all.ifPresent(b -> b.measured.forEach(m -> known.put(m.copies(), m)));
    List<Placed> byX =
        placed.stream()
            .filter(p -> p.region().isPresent())
            .sorted(Comparator.comparingDouble((Placed p) -> p.box().minX()))
            .toList();
    Map<Integer, Point> inside = new HashMap<>();
    List<Meeting> measured = new ArrayList<>();
    int more = 0;
    int asked = 0;
    for (int i = 0; i < byX.size(); i++) {
      Placed one = byX.get(i);
      Box reach = one.box().grown(gapMm);
      for (int j = i + 1; j < byX.size() && byX.get(j).box().minX() <= reach.maxX(); j++) {
        Placed other = byX.get(j);
        if (!reach.touches(other.box())) {
          continue;
        }
        boolean asBefore =
            all.isPresent() && !changed.contains(one.index()) && !changed.contains(other.index());
        if (measured.size() == MOST) {
          if (asked++ == MOST_ASKED) {
            return new Meetings(measured, more);
          }
          more += surely(one, other, inside) || surely(other, one, inside) ? 1 : 0;
        } else if (asBefore) {
          Optional.ofNullable(known.get(List.of(one.index(), other.index())))
              .ifPresent(
                  m -> measured.add(new Meeting(one, other, m.overlaps(), m.mm(), m.place())));
        } else {
          Meeting.between(one, other, gapMm).ifPresent(measured::add);
        }
      }
    }
    return new Meetings(measured, more);
  }

  private static boolean surely(Placed one, Placed other, Map<Integer, Point> inside) {
    return Meeting.surely(
        one,
        other,
        inside.computeIfAbsent(one.index(), i -> one.region().orElseThrow().somewhereInside()));
  }
}
