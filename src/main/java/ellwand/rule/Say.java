package ellwand.rule;

import ellwand.geometry.Point;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.Locale;

/** Phrases that findings are made of. */
final class Say {

  private static final double LEAST_SHOWN_MM = 0.01;

  private Say() {}

  /**
   * A distance that may be far below the unit's usual step: mm or decimals of an inch.
   *
   * @param mm 0 or more
   */
  static String small(double mm, Unit unit) {
    boolean inches = unit == Unit.INCH || unit == Unit.YARD;
    if (mm < LEAST_SHOWN_MM) {
      return inches ? "less than 0.001 in" : "less than 0.01 mm";
    }
    if (inches) {
      return String.format(
          Locale.ROOT, mm < Unit.INCH.mm() / 10 ? "%.3f in" : "%.2f in", mm / Unit.INCH.mm());
    }
    if (mm >= 100) {
      return length(mm, unit);
    }
    return String.format(Locale.ROOT, mm < 0.1 ? "%.2f mm" : "%.1f mm", mm);
  }

  static String near(Point place, Unit unit) {
    return "near x = " + length(place.x(), unit);
  }

  /** Files may state what is no length at all. */
  static String length(double mm, Unit unit) {
    return Double.isFinite(mm) ? new Length(mm).show(unit) : "no length";
  }

  static String number(int count, String one, String many) {
    return count + " " + (count == 1 ? one : many);
  }

  static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
