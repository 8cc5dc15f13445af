package ellwand.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Box;
import ellwand.geometry.Point;
import ellwand.geometry.Region;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Marker;
import ellwand.rule.Check;
import ellwand.rule.Finding;
import ellwand.rule.Shelves;
import ellwand.units.Unit;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Near pairs against the whole check, contact against slow steps. */
class HandLaidRandomTest {

  private static final Set<String> CONTACT = Set.of("overlap", "gap", "zone", "keep-outs", "fold");

  private static final double EXACT_MM = 5e-6;

  private static HandLaid step(HandLaid laid, Random random) {
    int copies = laid.marker().copies().size();
    int copy = random.nextInt(copies);
    double along = 400 * (random.nextDouble() - 0.4);
    double across = 400 * (random.nextDouble() - 0.5);
    return switch (random.nextInt(5)) {
      case 0 -> laid.turn(Set.of(copy), random.nextBoolean() ? 180 : random.nextDouble() * 360);
      case 1 -> copies > 1 ? laid.exchange(Set.of(copy), Set.of((copy + 1) % copies)) : laid;
      case 2 -> laid.slide(Set.of(copy), along, across);
      case 3 -> laid.move(Set.of(copy), along / 100, across / 100);
      default -> laid.move(Set.of(copy), along, across);
    };
  }

  @Property(tries = 60)
  void everyStepTellsWhatTheWholeCheckTells(@ForAll long seed) {
    Random random = new Random(seed);
    HandLaid laid = HandLaid.of(Shelves.random(seed));
    for (int i = 0; i < 6; i++) {
      laid = step(laid, random);
      assertEquals(words(Check.of(laid.marker())), words(laid.findings()));
    }
  }

  private static List<String> words(List<Finding> findings) {
    return findings.stream()
        .map(
            f ->
                f.rule().id()
                    + f.copies()
                    + f.place()
                    + f.amount()
                    + f.pieces()
                    + f.sentence(Unit.MM))
        .toList();
  }

  /** The slow way: step by step from the end of the drag, each place asked of JTS. */
  @Property(tries = 100)
  void aSlideEndsWhereSlowStepsFindTheLastLegalPlace(@ForAll long seed) {
    Random random = new Random(seed);
    Marker marker = Shelves.random(seed);
    int copy = random.nextInt(marker.copies().size());
    boolean level = random.nextInt(3) == 0;
    Point way = new Point(far(random), level ? 0 : far(random));
    HandLaid laid = HandLaid.of(marker);
    HandLaid dropped = laid.slide(Set.of(copy), way.x(), way.y());
    assertTrue(passes(dropped, copy), () -> words(dropped.findings()).toString());
    Point slid = by(marker, dropped.marker(), copy);
    if (marker.copies().get(copy).form() == Form.HALF) {
      way = new Point(way.x(), 0);
    }
    double length = way.norm();
    Point unit = way.unit();
    double reached = slid.dot(unit);
    assertEquals(0, slid.minus(unit.times(reached)).norm(), 1e-9);
    assertTrue(legal(marker, copy, slid), () -> "not legal " + slid);
    // Exact to 0.01 mm, and no step farther on is legal.
    for (double mm = length; mm > reached + 0.01; mm -= 2.5) {
      Point there = unit.times(mm);
      assertTrue(!legal(marker, copy, there), () -> slid + " but " + there + " is legal");
    }
    if (reached + 0.01 < length) {
      assertTrue(!legal(marker, copy, unit.times(reached + 0.01)), () -> "short: " + slid);
    }
  }

  /** A mm at least: who grazes a side at a ten-thousandth runs in too little for it to be told. */
  private static double far(Random random) {
    return (random.nextInt(5) < 2 ? -1 : 1) * (1 + 300 * random.nextDouble());
  }

  private static Point by(Marker before, Marker after, int copy) {
    Copy was = before.copies().get(copy);
    Copy is = after.copies().get(copy);
    return new Point(is.motion().x() - was.motion().x(), is.motion().y() - was.motion().y());
  }

  /** Whether the copy may lie there, in a zone like its own, to a few millionths of a mm. */
  private static boolean legal(Marker marker, int copy, Point by) {
    return legal(marker, copy, by, Set.of(copy));
  }

  /** The same where others go along, which lie to it as before. */
  private static boolean legal(Marker marker, int copy, Point by, Set<Integer> together) {
    Copy moved = marker.copies().get(copy).shifted(by.x(), by.y());
    int plies = marker.zone(moved.zone()).plies();
    Box box = moved.outline().box();
    boolean inside =
        Drag.reaching(marker).stream()
            .filter(z -> z.plies() == plies)
            .map(z -> z.box().grown(EXACT_MM))
            .anyMatch(
                z ->
                    z.minX() <= box.minX()
                        && z.maxX() >= box.maxX()
                        && z.minY() <= box.minY()
                        && z.maxY() >= box.maxY());
    Region region = Region.of(moved.outline());
    Region inner = region.grown(-EXACT_MM);
    double gap = marker.lay().cloth().gapMm();
    return inside
        && IntStream.range(0, marker.copies().size())
            .filter(i -> !together.contains(i))
            .mapToObj(i -> Region.of(marker.copies().get(i).outline()))
            .allMatch(
                other ->
                    gap == 0
                        ? inner.intersect(other).isEmpty()
                        : region.distance(other) >= gap - EXACT_MM);
  }

  /** The same slow way. */
  @Property(tries = 60)
  void aGroupSlidesTogetherToAPlaceWhereAllMayLie(@ForAll long seed) {
    Random random = new Random(seed);
    Marker marker = Shelves.random(seed);
    int copies = marker.copies().size();
    int one = random.nextInt(copies);
    int other = (one + 1 + random.nextInt(Math.max(1, copies - 1))) % copies;
    Set<Integer> group = one == other ? Set.of(one) : Set.of(one, other);
    double along = 600 * (random.nextDouble() - 0.4);
    double across = 600 * (random.nextDouble() - 0.5);
    HandLaid dropped = HandLaid.of(marker).slide(group, along, across);
    for (int copy : group) {
      assertTrue(passes(dropped, copy), () -> words(dropped.findings()).toString());
      assertEquals(
          0, by(marker, dropped.marker(), one).distance(by(marker, dropped.marker(), copy)), 1e-9);
    }
    Point way =
        group.stream().anyMatch(copy -> marker.copies().get(copy).form() == Form.HALF)
            ? new Point(along, 0)
            : new Point(along, across);
    double reached = by(marker, dropped.marker(), one).norm();
    for (double mm = way.norm(); mm > reached + 0.01; mm -= 2.5) {
      Point there = way.unit().times(mm);
      assertTrue(
          !group.stream().allMatch(copy -> legal(marker, copy, there, group)),
          () -> "farther: " + there);
    }
  }

  private static boolean passes(HandLaid laid, int copy) {
    return Check.of(laid.marker()).stream()
        .noneMatch(f -> CONTACT.contains(f.rule().id()) && f.copies().contains(copy));
  }
}
