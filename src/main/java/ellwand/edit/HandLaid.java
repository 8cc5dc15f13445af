package ellwand.edit;

import ellwand.cloth.Zone;
import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Point;
import ellwand.lay.Copy;
import ellwand.lay.Heading;
import ellwand.lay.Marker;
import ellwand.rule.Check;
import ellwand.rule.Finding;
import ellwand.rule.Inspection;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * A marker in a cutter's hands: every step gives a new one, with what it breaks of the hard rules.
 * A step may break rules; {@link #slide} brings no copy onto another. Copies go by their places in
 * {@link Marker#copies}, from 0; several move together, as they lie to each other. What is pinned
 * is moved by nobody: every step throws an {@link IllegalArgumentException} that would, and an
 * {@link IndexOutOfBoundsException} if there is no such copy. For one thread at a time.
 */
public final class HandLaid {

  private final Inspection inspection;
  private final Set<Integer> pinned;
  private final List<Finding> findings;

  private HandLaid(Inspection inspection, Set<Integer> pinned, List<Finding> findings) {
    this.inspection = inspection;
    this.pinned = Set.copyOf(pinned);
    this.findings = findings;
  }

  private static HandLaid of(Inspection inspection, Set<Integer> pinned) {
    return new HandLaid(inspection, pinned, Check.of(inspection));
  }

  /** Takes a marker in hand; it may break rules already. */
  public static HandLaid of(Marker marker) {
    return of(marker, Set.of());
  }

  /**
   * The same with some of its copies pinned.
   *
   * @throws IndexOutOfBoundsException if there is no such copy
   */
  public static HandLaid of(Marker marker, Set<Integer> pinned) {
    pinned.forEach(copy -> Objects.checkIndex(copy, marker.copies().size()));
    return of(Inspection.of(marker), pinned);
  }

  /** As it lies now; no search's once it has been touched. */
  public Marker marker() {
    return inspection.marker();
  }

  /** All that it breaks, as {@link Check} tells it. */
  public List<Finding> findings() {
    return findings;
  }

  /** Copies that stay where they are. */
  public Set<Integer> pinned() {
    return pinned;
  }

  /** Pins copies where they are. */
  public HandLaid pin(Set<Integer> copies) {
    copies.forEach(copy -> Objects.checkIndex(copy, marker().copies().size()));
    Set<Integer> all = new HashSet<>(pinned);
    all.addAll(copies);
    return new HandLaid(inspection, all, findings);
  }

  /** Takes pins out. */
  public HandLaid unpin(Set<Integer> copies) {
    Set<Integer> left = new HashSet<>(pinned);
    left.removeAll(copies);
    return new HandLaid(inspection, left, findings);
  }

  /** Lays copies elsewhere, whatever lies there; their zones are then those under their middles. */
  public HandLaid move(Set<Integer> copies, double alongMm, double acrossMm) {
    return with(copies, copy -> copy.shifted(alongMm, acrossMm));
  }

  /**
   * Drags copies straight along and drops them at the last place of the drag where they may lie:
   * off other copies by the gap, off flaws, inside zones like their own, on their fold edges. They
   * are lifted over what lies between. They stay where they are if there is no such place. A slot
   * that leaves less than 0.01 mm of play along the drag is none. Repeats of the cloth are not
   * looked at: the findings tell.
   */
  public HandLaid slide(Set<Integer> copies, double alongMm, double acrossMm) {
    Point by = new Drag(marker(), copies, alongMm, acrossMm).lastLegal();
    return by.norm() == 0 ? this : move(copies, by.x(), by.y());
  }

  /**
   * Turns copies about the middle of the box round them all.
   *
   * @param degrees counter-clockwise; whether grain and cloth allow it the findings tell
   */
  public HandLaid turn(Set<Integer> copies, double degrees) {
    Point middle = middle(copies);
    Point turned = new Motion(false, degrees, 0, 0).apply(middle);
    Motion about = new Motion(false, degrees, middle.x() - turned.x(), middle.y() - turned.y());
    return with(copies, copy -> turned(copy, degrees, about));
  }

  private static Copy turned(Copy old, double degrees, Motion about) {
    Motion was = old.motion();
    Point shift = about.apply(new Point(was.x(), was.y()));
    Motion motion =
        new Motion(was.flipped(), (was.turnDegrees() + degrees) % 360, shift.x(), shift.y());
    return old.at(motion, old.outline().moved(about))
        .heading(Heading.ofTurn(motion.turnDegrees(), motion.flipped()));
  }

  /**
   * Lets two copies, or two groups of them, change places, middle for middle; each keeps its turn.
   *
   * @throws IllegalArgumentException if a copy is in both
   */
  public HandLaid exchange(Set<Integer> some, Set<Integer> others) {
    if (!Collections.disjoint(some, others)) {
      throw new IllegalArgumentException("a copy cannot change places with itself");
    }
    Point way = middle(others).minus(middle(some));
    return with(some, copy -> copy.shifted(way.x(), way.y()))
        .with(others, copy -> copy.shifted(-way.x(), -way.y()));
  }

  private Point middle(Set<Integer> copies) {
    return copies.stream()
        .map(copy -> marker().copies().get(copy).outline().box())
        .reduce(Box::union)
        .orElseThrow()
        .centre();
  }

  private HandLaid with(Set<Integer> changed, UnaryOperator<Copy> change) {
    if (!Collections.disjoint(changed, pinned)) {
      throw new IllegalArgumentException("a pinned copy stays where it is");
    }
    List<Copy> copies = new ArrayList<>(marker().copies());
    changed.forEach(i -> copies.set(i, inZone(change.apply(copies.get(i)))));
    Marker next = marker().with(copies).byHand();
    return of(inspection.after(next.withZones(ending(next)), changed), pinned);
  }

  /** In the zone under its middle, if there is one. */
  private Copy inZone(Copy copy) {
    Point middle = copy.outline().box().centre();
    return Drag.reaching(marker()).stream()
        .filter(zone -> holds(zone.box(), middle))
        .findFirst()
        .map(zone -> copy.in(zone.id()))
        .orElse(copy);
  }

  private static boolean holds(Box box, Point point) {
    return box.touches(new Box(point.x(), point.y(), point.x(), point.y()));
  }

  /** Cloth bought by length ends where its marker does. */
  private static List<Zone> ending(Marker marker) {
    Set<Zone> last = new HashSet<>(Drag.last(marker));
    return marker.zones().stream()
        .map(z -> last.contains(z) ? Drag.upTo(z, marker.lengthMm()) : z)
        .toList();
  }
}
