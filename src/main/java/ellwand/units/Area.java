package ellwand.units;

import java.util.Locale;

/**
 * An area.
 *
 * @param mm2 square millimetres, finite
 */
public record Area(double mm2) {

  private static final double MM2_PER_CM2 = 100;
  private static final double MM2_PER_M2 = 1e6;
  private static final double MM2_PER_SQUARE_INCH = Unit.INCH.mm() * Unit.INCH.mm();
  private static final double MM2_PER_SQUARE_YARD = Unit.YARD.mm() * Unit.YARD.mm();

  public Area {
    if (!Double.isFinite(mm2)) {
      throw new IllegalArgumentException("an area must be a number, not " + mm2);
    }
  }

  /**
   * Shown in the square of the unit's small or large companion: {@code 412 cm²}, {@code 1.24 m²},
   * {@code 64 sq in}, {@code 1.48 sq yd}.
   */
  public String show(Unit unit) {
    return switch (unit) {
      case MM, CM, M ->
          mm2 < MM2_PER_M2 ? number(0, MM2_PER_CM2, "cm²") : number(2, MM2_PER_M2, "m²");
      case INCH, YARD ->
          mm2 < MM2_PER_SQUARE_YARD
              ? number(0, MM2_PER_SQUARE_INCH, "sq in")
              : number(2, MM2_PER_SQUARE_YARD, "sq yd");
    };
  }

  private String number(int places, double per, String symbol) {
    return String.format(Locale.ROOT, "%." + places + "f %s", mm2 / per, symbol);
  }
}
