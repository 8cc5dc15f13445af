package ellwand.nest.tidy;

import ellwand.cloth.Repeat;
import ellwand.cloth.Zone;
import ellwand.cloth.Zone.Side;
import ellwand.cutting.CutPiece;
import ellwand.cutting.CutPiece.Stroke;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.nest.kernel.Lattice;
import ellwand.nest.pose.Pose;
import ellwand.nest.pose.Way;
import java.util.Optional;

/**
 * Where a copy may be pushed to within its zone, turned as it is: shifts of its unshifted outline,
 * along from where the zone begins, across as in the marker, mm.
 */
record Room(double lowY, double highY, Lattice alongX, Lattice alongY) {

  /** Room that rounding may take from an exact fit, mm. */
  private static final double EXACT_MM = 1e-6;

  /** Empty where it has none: it is too wide, or has no fold edge to lie on, or no second ply. */
  static Optional<Room> of(Marker marker, Drawn drawn, Copy copy, Zone zone) {
    Optional<Wanted> wanted = drawn.wanted(copy);
    return wanted.flatMap(w -> of(marker, copy, w, drawn.turned(copy).orElseThrow(), zone));
  }

  private static Optional<Room> of(
      Marker marker, Copy copy, Wanted wanted, Outline turned, Zone zone) {
    Box box = turned.box();
    double low = zone.box().minY() - box.minY();
    double high = zone.box().maxY() - box.maxY();
    if (low > high + EXACT_MM || copy.form() == Form.PAIR && zone.plies() == 1) {
      return Optional.empty();
    }
    Room anywhere = new Room(low, Math.max(low, high), Lattice.FREE, Lattice.FREE);
    return anywhere
        .on(copy, wanted, zone)
        .flatMap(
            room ->
                marker
                    .lay()
                    .cloth()
                    .repeatLaid(marker.fold())
                    .filter(repeat -> asks(marker, wanted.cut()))
                    .map(repeat -> room.inRepeat(repeat, copy, zone))
                    .orElse(Optional.of(room)));
  }

  private Optional<Room> on(Copy copy, Wanted wanted, Zone zone) {
    return copy.form() == Form.HALF
        ? onFold(
            copy.form().drawn(wanted.cut()).fold().orElseThrow().moved(copy.motion().unshifted()),
            zone,
            copy.motion().y())
        : Optional.of(this);
  }

  private static boolean asks(Marker marker, CutPiece cut) {
    return cut.piece().asks().place().isPresent()
        || marker.lay().matches().stream()
            .anyMatch(m -> m.piece().equals(cut.name()) || m.otherPiece().equals(cut.name()));
  }

  /** On the nearest fold edge that it can lie on. */
  private Optional<Room> onFold(Stroke fold, Zone zone, double nowY) {
    if (Math.abs(fold.from().x() - fold.to().x()) <= Pose.LEVEL_MM) {
      return zone.foldEdges().contains(Side.LOW_X)
          ? Optional.of(new Room(lowY, highY, Way.only(-fold.from().x()), Lattice.FREE))
          : Optional.empty();
    }
    double onLow = zone.box().minY() - fold.from().y();
    double onHigh = zone.box().maxY() - fold.from().y();
    boolean low = zone.foldEdges().contains(Side.LOW_Y) && fits(onLow);
    boolean high = zone.foldEdges().contains(Side.HIGH_Y) && fits(onHigh);
    if (Math.abs(fold.from().y() - fold.to().y()) > Pose.LEVEL_MM || !low && !high) {
      return Optional.empty();
    }
    boolean nearLow = Math.abs(onLow - nowY) <= Math.abs(onHigh - nowY);
    double y = low && (!high || nearLow) ? onLow : onHigh;
    return Optional.of(new Room(y, y, Lattice.FREE, Lattice.FREE));
  }

  private boolean fits(double y) {
    return y >= lowY - Pose.LEVEL_MM && y <= highY + Pose.LEVEL_MM;
  }

  /** By whole repeats: what it meets of the bars stays as it is. */
  private Optional<Room> inRepeat(Repeat repeat, Copy copy, Zone zone) {
    double across = repeat.acrossMm() * (repeat.halfDrop() ? 2 : 1);
    Lattice x =
        alongX.step() > 0
            ? alongX
            : new Lattice(repeat.alongMm(), copy.motion().x() - zone.box().minX());
    Lattice y = highY > lowY ? new Lattice(across, copy.motion().y()) : alongY;
    boolean there = y.atOrAbove(lowY) <= highY + EXACT_MM;
    return there ? Optional.of(new Room(lowY, highY, x, y)) : Optional.empty();
  }
}
