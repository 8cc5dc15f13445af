package ellwand.pattern.alter;

import ellwand.units.Length;
import ellwand.units.Unit;

/** What several alterations say alike. */
final class Words {

  private Words() {}

  static String length(double mm, Unit unit) {
    return new Length(mm).show(unit);
  }
}
