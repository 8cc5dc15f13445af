package ellwand.trace;

import ellwand.geometry.Motion;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * How one scan may lie beside another: so that crosses in it come to lie on crosses of the other.
 *
 * @param pairs which cross of the one and which of the other are the same, in the order of the
 *     other
 * @param motion brings places of the other scan to the one's
 * @param offMm how far two of the same are apart then, at most
 */
record Joint(List<Pair> pairs, Motion motion, double offMm) {

  /** A cross of the one scan and of the other, by their numbers. */
  record Pair(int one, int other) {}

  /** Two crosses that lie nearer together do not tell how a scan is turned, mm. */
  private static final double LEAST_APART_MM = 30;

  /** Crosses farther off are never the same, mm; what is joined fits much better. */
  private static final double SAME_MM = 2;

  /** Of what both scans must show as large a share is the same round each cross. */
  private static final double AGREED = 0.6;

  /** And of all else: paper's border, lines, where arms of crosses end. */
  private static final double AGREED_ELSEWHERE = 0.75;

  private static final double ROUND_MM = 7;

  /** By a line or a border as long two crosses are enough, in changes of the contours: 3 cm. */
  private static final int TELLING = 120;

  /** A scan with the crosses in it, mm. */
  record Scan(View view, List<Point> crosses, Contours contours) {}

  /** All ways in which the crosses of two scans meet, those first in which more do. */
  static List<Joint> between(Scan one, Scan other) {
    Set<List<Pair>> known = new HashSet<>();
    List<Joint> found = new ArrayList<>();
    List<Point> a = one.crosses;
    List<Point> b = other.crosses;
    for (int i = 0; i < a.size(); i++) {
      for (int j = i + 1; j < a.size(); j++) {
        double apart = a.get(i).distance(a.get(j));
        for (int k = 0; k < b.size() && apart >= LEAST_APART_MM; k++) {
          for (int l = 0; l < b.size(); l++) {
            if (k != l && Math.abs(b.get(k).distance(b.get(l)) - apart) <= SAME_MM) {
              Joint joint = fitted(a, b, List.of(new Pair(i, k), new Pair(j, l))).grown(a, b);
              if (known.add(joint.pairs)) {
                found.add(joint);
              }
            }
          }
        }
      }
    }
    found.sort(
        Comparator.comparingInt((Joint joint) -> -joint.pairs.size())
            .thenComparingDouble(Joint::offMm));
    return found;
  }

  private static Joint fitted(List<Point> a, List<Point> b, List<Pair> pairs) {
    List<Point> to = pairs.stream().map(p -> a.get(p.one)).toList();
    List<Point> from = pairs.stream().map(p -> b.get(p.other)).toList();
    Motion motion = Motion.onto(from, to);
    double off =
        IntStream.range(0, to.size())
            .mapToDouble(i -> motion.apply(from.get(i)).distance(to.get(i)))
            .max()
            .orElse(0);
    return new Joint(pairs, motion, off);
  }

  /** With all crosses that meet, too. */
  private Joint grown(List<Point> a, List<Point> b) {
    List<Pair> all = new ArrayList<>();
    for (int k = 0; k < b.size(); k++) {
      Point there = motion.apply(b.get(k));
      Optional<Integer> nearest =
          IntStream.range(0, a.size())
              .boxed()
              .min(Comparator.comparingDouble(i -> a.get(i).distance(there)));
      if (nearest.isPresent() && a.get(nearest.get()).distance(there) <= SAME_MM) {
        all.add(new Pair(nearest.get(), k));
      }
    }
    return all.size() >= pairs.size() ? fitted(a, b, all) : this;
  }

  /** Whether both scans show the same where they lie on one another. */
  boolean agrees(Scan one, Scan other) {
    return agrees(one, other, motion.inverse()) && agrees(other, one, motion);
  }

  private boolean agrees(Scan scan, Scan with, Motion to) {
    for (Point cross : scan.crosses) {
      if (scan.contours.in(with.contours, to, p -> p.distance(cross) <= ROUND_MM).share()
          < AGREED) {
        return false;
      }
    }
    Contours.Seen rest =
        scan.contours.in(
            with.contours, to, p -> scan.crosses.stream().allMatch(c -> c.distance(p) > ROUND_MM));
    return rest.share() >= AGREED_ELSEWHERE && (pairs.size() > 2 || rest.again() >= TELLING);
  }

  /** Whether it lays the other scan where another joint does, to some mm. */
  boolean like(Joint joint, Scan other) {
    View view = other.view;
    Point far = new Point(view.picture().getWidth() - 1, view.picture().getHeight() - 1);
    return List.of(new Point(0, 0), far).stream()
        .map(view.mapping()::mmAt)
        .allMatch(p -> motion.apply(p).distance(joint.motion.apply(p)) < 3 * SAME_MM);
  }
}
