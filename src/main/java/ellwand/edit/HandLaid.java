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
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A marker in a cutter's hands: every step gives a new one, with what it breaks of the hard rules.
 * A step may break rules; {@link #slide} brings no copy onto another. Copies go by their places in
 * {@link Marker#copies}, from 0. For one thread at a time.
 */
public final class HandLaid {

  private final Inspection inspection;
  private final List<Finding> findings;

  private HandLaid(Inspection inspection) {
    this.inspection = inspection;
    findings = Check.of(inspection);
  }

  /** Takes a marker in hand; it may break rules already. */
  public static HandLaid of(Marker marker) {
    return new HandLaid(Inspection.of(marker));
  }

  /** As it lies now; no search's once it has been touched. */
  public Marker marker() {
    return inspection.marker();
  }

  /** All that it breaks, as {@link Check} tells it. */
  public List<Finding> findings() {
    return findings;
  }

  /**
   * Lays a copy elsewhere, whatever lies there; its zone is then the one under its middle.
   *
   * @throws IndexOutOfBoundsException if there is no such copy
   */
  public HandLaid move(int copy, double alongMm, double acrossMm) {
    return with(copy, inZone(marker().copies().get(copy).shifted(alongMm, acrossMm)));
  }

  /**
   * Drags a copy straight along and drops it at the last place of the drag where it may lie: off
   * other copies by the gap, off flaws, inside a zone like its own, on its fold edge. It is lifted
   * over what lies between. It stays where it is if there is no such place. A slot that leaves less
   * than 0.01 mm of play along the drag is none. Repeats of the cloth are not looked at: the
   * findings tell.
   *
   * @throws IndexOutOfBoundsException if there is no such copy
   */
  public HandLaid slide(int copy, double alongMm, double acrossMm) {
    Point by = new Drag(marker(), copy, alongMm, acrossMm).lastLegal();
    return by.norm() == 0 ? this : move(copy, by.x(), by.y());
  }

  /**
   * Turns a copy about the middle of the box round it.
   *
   * @param degrees counter-clockwise; whether its grain and the cloth allow it the findings tell
   * @throws IndexOutOfBoundsException if there is no such copy
   */
  public HandLaid turn(int copy, double degrees) {
    Copy old = marker().copies().get(copy);
    Point middle = old.outline().box().centre();
    Point turned = new Motion(false, degrees, 0, 0).apply(middle);
    Motion about = new Motion(false, degrees, middle.x() - turned.x(), middle.y() - turned.y());
    Motion was = old.motion();
    Point shift = about.apply(new Point(was.x(), was.y()));
    Motion motion =
        new Motion(was.flipped(), (was.turnDegrees() + degrees) % 360, shift.x(), shift.y());
    return with(
        copy,
        inZone(
            old.at(motion, old.outline().moved(about))
                .heading(Heading.ofTurn(motion.turnDegrees(), motion.flipped()))));
  }

  /**
   * Lets two copies change places, middle for middle; each keeps its turn.
   *
   * @throws IndexOutOfBoundsException if there is no such copy
   */
  public HandLaid exchange(int one, int other) {
    Copy first = marker().copies().get(one);
    Copy second = marker().copies().get(other);
    Point way = second.outline().box().centre().minus(first.outline().box().centre());
    List<Copy> copies = new ArrayList<>(marker().copies());
    copies.set(one, first.shifted(way.x(), way.y()).in(second.zone()));
    copies.set(other, second.shifted(-way.x(), -way.y()).in(first.zone()));
    return with(copies, Set.of(one, other));
  }

  private HandLaid with(int index, Copy copy) {
    List<Copy> copies = new ArrayList<>(marker().copies());
    copies.set(index, copy);
    return with(copies, Set.of(index));
  }

  private HandLaid with(List<Copy> copies, Set<Integer> changed) {
    Marker next = marker().with(copies).byHand();
    return new HandLaid(inspection.after(next.withZones(ending(next)), changed));
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
