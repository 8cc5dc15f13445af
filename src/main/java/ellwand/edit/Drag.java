package ellwand.edit;

import ellwand.cloth.KeepOut;
import ellwand.cloth.Zone;
import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.geometry.Region;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Marker;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A straight drag of some copies together over a marker.
 *
 * <p>Edge against edge two copies are too near each other over one stretch of the drag; what no
 * such stretch bars is cut up at their ends, so that in each part the copies either overlap nothing
 * or overlap something all the way. The parts are tried from the far end with JTS, in their middle.
 */
final class Drag {

  /** A slot with less play along the drag is none, mm, unless the drag ends in it. */
  private static final double LEAST_PLAY_MM = 0.01;

  private final Marker marker;
  private final Point direction;
  private final double lengthMm;
  private final double gapMm;
  private final List<Copy> moving = new ArrayList<>();
  private final List<Outline> others = new ArrayList<>();
  private final List<Outline> keepOuts;

  Drag(Marker marker, Set<Integer> indices, double alongMm, double acrossMm) {
    this.marker = marker;
    for (int i = 0; i < marker.copies().size(); i++) {
      Copy copy = marker.copies().get(i);
      if (indices.contains(i)) {
        moving.add(copy);
      } else {
        others.add(copy.outline());
      }
    }
    Point way = new Point(alongMm, acrossMm);
    for (Copy copy : moving) {
      way = onFold(copy, way);
    }
    lengthMm = way.norm();
    direction = lengthMm == 0 ? new Point(1, 0) : way.unit();
    gapMm = marker.lay().cloth().gapMm();
    keepOuts = marker.keepOuts().stream().map(KeepOut::outline).toList();
  }

  /** One of the outlines, and what it comes near. */
  private record Neighbourhood(Outline outline, List<KeptOff> near) {
    boolean clearAt(Motion motion) {
      Outline there = outline.moved(motion);
      Region region = Region.of(there);
      Box box = there.box();
      return near.stream().allMatch(obstacle -> obstacle.clearOf(region, box));
    }
  }

  /** The zones that end with the marker, on cloth bought by length that is not doubled over. */
  static List<Zone> last(Marker marker) {
    boolean fixed = marker.lay().cloth().stock().isPresent() || marker.fold().doublesLength();
    double end = marker.zones().stream().mapToDouble(z -> z.box().maxX()).max().orElse(0);
    return fixed ? List.of() : marker.zones().stream().filter(z -> z.box().maxX() == end).toList();
  }

  /** The zones as far as pieces may be laid on them: the last of bought cloth without end. */
  static List<Zone> reaching(Marker marker) {
    List<Zone> last = last(marker);
    return marker.zones().stream()
        .map(z -> last.contains(z) ? upTo(z, Double.POSITIVE_INFINITY) : z)
        .toList();
  }

  static Zone upTo(Zone zone, double endMm) {
    Box box = zone.box();
    return new Zone(
        zone.id(),
        new Box(box.minX(), box.minY(), Math.max(box.minX(), endMm), box.maxY()),
        zone.plies(),
        zone.foldEdges(),
        zone.sideUp());
  }

  /** A half on the fold stays on it. */
  private Point onFold(Copy copy, Point way) {
    Optional<Zone> own = zone(copy.zone());
    if (copy.form() != Form.HALF || own.isEmpty()) {
      return way;
    }
    return own.get().foldEdges().contains(Zone.Side.LOW_X)
        ? new Point(0, way.y())
        : new Point(way.x(), 0);
  }

  private Optional<Zone> zone(String id) {
    return marker.zones().stream().filter(z -> z.id().equals(id)).findFirst();
  }

  /** How far to go to the last place where all may lie; nowhere if there is none. */
  Point lastLegal() {
    Passage passage = new Passage(lengthMm);
    List<Neighbourhood> near = new ArrayList<>();
    for (Copy copy : moving) {
      passage.within(room(copy));
      near.add(new Neighbourhood(copy.outline(), against(copy.outline(), passage)));
    }
    return passage.parts().stream()
        .filter(part -> part.playMm() >= LEAST_PLAY_MM || part.toMm() == lengthMm)
        .sorted(Comparator.comparingDouble((Passage.Reach p) -> p.toMm()).reversed())
        .filter(part -> clear((part.fromMm() + part.toMm()) / 2, near))
        .findFirst()
        .map(part -> direction.times(part.toMm()))
        .orElse(new Point(0, 0));
  }

  /** Bars what of the passage one of them may not pass; what it comes near at all. */
  private List<KeptOff> against(Outline outline, Passage passage) {
    Contact along = new Contact(outline, direction);
    Box box = outline.box();
    Point way = direction.times(lengthMm);
    Box swept = box.union(box.shifted(way.x(), way.y())).grown(gapMm);
    List<KeptOff> near = new ArrayList<>();
    for (Outline other : others) {
      if (swept.touches(other.box()) && along.against(other, gapMm, passage)) {
        near.add(KeptOff.of(other, gapMm));
      }
    }
    for (Outline keepOut : keepOuts) {
      if (along.against(keepOut, 0, passage)) {
        near.add(KeptOff.of(keepOut, 0));
      }
    }
    return near;
  }

  /** Where along the drag a copy lies inside a zone like its own. */
  private List<Passage.Reach> room(Copy copy) {
    Optional<Zone> own = zone(copy.zone());
    if (own.isEmpty()) {
      return List.of();
    }
    return reaching(marker).stream()
        .filter(z -> like(copy, z, own.get()))
        .map(z -> inside(copy.outline().box(), z.box()))
        .flatMap(Optional::stream)
        .toList();
  }

  /** A half stays on the fold edge that it has. */
  private static boolean like(Copy copy, Zone zone, Zone own) {
    return copy.form() == Form.HALF
        ? zone.id().equals(own.id())
        : zone.plies() == own.plies() && zone.sideUp() == own.sideUp();
  }

  private Optional<Passage.Reach> inside(Box box, Box zone) {
    double from = 0;
    double to = lengthMm;
    double[][] sides = {
      {zone.minX() - box.minX(), zone.maxX() - box.maxX(), direction.x()},
      {zone.minY() - box.minY(), zone.maxY() - box.maxY(), direction.y()}
    };
    for (double[] side : sides) {
      double low = side[0] - Contact.TOUCH_MM;
      double high = side[1] + Contact.TOUCH_MM;
      double pace = side[2];
      if (pace == 0) {
        to = low <= 0 && high >= 0 ? to : -1;
      } else {
        from = Math.max(from, (pace > 0 ? low : high) / pace);
        to = Math.min(to, (pace > 0 ? high : low) / pace);
      }
    }
    return from <= to ? Optional.of(new Passage.Reach(from, to)) : Optional.empty();
  }

  /** Whether all lie clear of everything at a place of the drag. */
  private boolean clear(double mm, List<Neighbourhood> near) {
    Point by = direction.times(mm);
    Motion motion = new Motion(false, 0, by.x(), by.y());
    return near.stream().allMatch(one -> one.clearAt(motion));
  }
}
