package ellwand.app;

import ellwand.cloth.Cloth;
import ellwand.figures.Buying;
import ellwand.lay.Lay;
import ellwand.nest.NoRoomException;
import ellwand.nest.Tried;
import ellwand.pattern.Problem;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.Comparator;
import java.util.List;

/** Says that a piece is too wide, and the way out. */
final class NoRoom {

  private NoRoom() {}

  /** As a clause: why a fold will not do. */
  static String clause(NoRoomException e, Unit unit) {
    if (e.offRepeat()) {
      return e.piece() + " cannot lie where in the repeat it asks to";
    }
    return e.piece()
        + " lies "
        + show(e.neededMm(), unit)
        + " across and the widest zone has "
        + show(e.widestMm(), unit);
  }

  /** Of a lay for which no fold will do. */
  static Problem problem(Lay lay, List<Tried> tried, Unit unit) {
    NoRoomException least =
        tried.stream()
            .flatMap(t -> t.noRoom().stream())
            .max(Comparator.comparingDouble(NoRoomException::widestMm))
            .orElseThrow(() -> new IllegalStateException("nothing was tried"));
    return problem(lay, least, unit);
  }

  static Problem problem(Lay lay, NoRoomException least, Unit unit) {
    Cloth cloth = lay.cloth();
    if (least.offRepeat()) {
      return Problem.inPiece(
          least.piece(),
          "it cannot lie where in the repeat of cloth " + cloth.name() + " it asks to",
          "Lay the cloth open, take a wider one, or change what is asked under place: and match:");
    }
    double open = cloth.usableWidthMm();
    boolean fitsOpen = least.neededMm() <= open && least.widestMm() < open;
    double wide = Math.ceil(Buying.widthMm(cloth, least.neededMm()) / 10) * 10;
    return Problem.inPiece(
        least.piece(),
        "it lies "
            + show(least.neededMm(), unit)
            + " across, but cloth "
            + cloth.name()
            + " has only "
            + show(least.widestMm(), unit)
            + " for it",
        (fitsOpen ? "Lay the cloth open, use" : "Use")
            + " cloth at least "
            + show(wide, unit)
            + " wide, or split the piece with a join");
  }

  private static String show(double mm, Unit unit) {
    return new Length(mm).show(unit);
  }
}
