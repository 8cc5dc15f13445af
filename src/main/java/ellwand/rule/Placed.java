package ellwand.rule;

import ellwand.cloth.Band;
import ellwand.cloth.Ply;
import ellwand.cloth.Zone;
import ellwand.cutting.CutPiece;
import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.geometry.Region;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Lay;
import ellwand.lay.Wanted;
import ellwand.pattern.Cut;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A copy and what it claims to be.
 *
 * @param index of the copy in the marker, from 0
 * @param copy as it stands in the marker
 * @param name for people; tells garments apart where there are several
 * @param cut the piece of its name and size, opened if it lies so; empty if there is none
 * @param zone the zone it names; empty if there is none
 * @param region the cloth it takes; empty if its outline is not a sound one
 * @param strays how far its outline is from the piece's own cutting line in the stated place; empty
 *     if that is no place, or if there is no piece or region
 * @param box round its outline
 */
record Placed(
    int index,
    Copy copy,
    String name,
    Optional<CutPiece> cut,
    Optional<Zone> zone,
    Optional<Region> region,
    Optional<SameLine> strays,
    Box box) {

  /** No table is longer, mm; what lies farther out is not a place. */
  private static final double FARTHEST_MM = 1e7;

  static Placed of(int index, Copy copy, String name, Optional<CutPiece> cut, Optional<Zone> zone) {
    List<Point> points = copy.outline().points();
    boolean sound =
        points.stream().allMatch(Placed::onAnyTable) && Region.crossing(points).isEmpty();
    return new Placed(
        index,
        copy,
        name,
        cut,
        zone,
        sound ? Optional.of(Region.of(copy.outline())) : Optional.empty(),
        sound ? cut.flatMap(c -> strays(copy, c.cutting())) : Optional.empty(),
        copy.outline().box());
  }

  private static Optional<SameLine> strays(Copy copy, Outline own) {
    Motion motion = copy.motion();
    boolean somewhere = onAnyTable(new Point(motion.x(), motion.y()));
    return somewhere && Double.isFinite(motion.turnDegrees())
        ? Optional.of(SameLine.between(copy.outline(), own.moved(motion)))
        : Optional.empty();
  }

  /** The same in a zone that has become longer or shorter. */
  Placed in(Optional<Zone> other) {
    return new Placed(index, copy, name, cut, other, region, strays, box);
  }

  static boolean onAnyTable(Point p) {
    return Math.abs(p.x()) <= FARTHEST_MM && Math.abs(p.y()) <= FARTHEST_MM;
  }

  boolean inDoubleZone() {
    return zone.filter(z -> z.plies() == 2).isPresent();
  }

  /** Whether the copy as cut from a ply is of the other hand than drawn. */
  boolean turnedOver(Ply ply) {
    return copy.motion().flipped() ^ ply.mirrored() ^ ply.backwards();
  }

  /**
   * How the twin of a copy lies that is to yield the same on two plies, each as drawn: how far its
   * drawn x axis is turned from the warp, degrees counter-clockwise; empty if it is not.
   */
  OptionalDouble twinTurn(Lay lay) {
    if (copy.form() != Form.PAIR) {
      return OptionalDouble.empty();
    }
    Optional<Wanted> wanted = lay.wantedBy(copy).filter(w -> w.how() != Cut.How.PAIR);
    if (wanted.isEmpty()) {
      return OptionalDouble.empty();
    }
    // Turned over onto itself its x axis comes to point there; the plies mirror each other.
    CutPiece piece = wanted.get().cut();
    Point from = piece.turnedOver(new Point(0, 0));
    Point to = piece.turnedOver(new Point(1, 0));
    Point axis = copy.motion().apply(to).minus(copy.motion().apply(from));
    double degrees = Math.toDegrees(Math.atan2(axis.y(), axis.x()));
    return OptionalDouble.of(copy.motion().flipped() ? degrees : -degrees);
  }

  /**
   * The plies of which something is kept: both, or of a piece whose twin is wasted the one on which
   * it has the hand that is wanted.
   */
  List<Ply> pliesCut(Band band, Cut.How how) {
    List<Ply> layers = band.layers();
    if (copy.form() == Form.PAIR || copy.form() == Form.HALF) {
      return layers;
    }
    // The last ply lies right side up, where one does.
    Ply last = layers.get(layers.size() - 1);
    boolean drawn = how == Cut.How.WHOLE;
    return List.of(
        layers.stream().filter(ply -> drawn && !turnedOver(ply)).findFirst().orElse(last));
  }

  Finding finding(Rule rule, double amount, Finding.Words words) {
    return finding(rule, box.centre(), amount, words);
  }

  Finding finding(Rule rule, Point place, double amount, Finding.Words words) {
    return new Finding(
        rule, List.of(copy.piece()), List.of(index), Optional.of(place), amount, words);
  }
}
