package ellwand.pattern;

import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.Locale;
import java.util.Optional;

/**
 * A gathered rectangle as it is cut from one cloth.
 *
 * @param piece one panel, or the whole rectangle; its count is that of all panels of one garment
 * @param count how many panels make one rectangle, 1 or more
 * @param wholeMm cut width of the rectangle in one, mm
 * @param panelMm cut width of a panel, mm
 * @param usableMm what may be cut across the open cloth, mm
 */
public record Panels(Piece piece, int count, double wholeMm, double panelMm, double usableMm) {

  /** Says that it is cut in panels, if it is. */
  public Optional<String> sentence(Unit unit) {
    return count == 1
        ? Optional.empty()
        : Optional.of(
            String.format(
                Locale.ROOT,
                "%s: %s is wider than the %s usable of %s, so it is cut as %d panels %s wide with"
                    + " joins",
                piece.name(),
                show(wholeMm, unit),
                show(usableMm, unit),
                piece.cuts().get(0).cloth(),
                count,
                show(panelMm, unit)));
  }

  private static String show(double mm, Unit unit) {
    return new Length(mm).show(unit);
  }
}
