package ellwand.pattern.alter;

import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.Locale;

/** What several alterations say alike. */
final class Words {

  private Words() {}

  static String length(double mm, Unit unit) {
    return new Length(mm).show(unit);
  }

  /** To a tenth of a mm, for what must meet. */
  static String fine(double mm) {
    return String.format(Locale.ROOT, "%.1f mm", mm);
  }
}
