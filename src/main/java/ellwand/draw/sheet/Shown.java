package ellwand.draw.sheet;

import ellwand.figures.Buying;
import ellwand.figures.OrderText;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.Locale;

/** Numbers as the cutter reads them. */
public record Shown(Unit unit) {

  public String length(double mm) {
    return new Length(mm).show(unit);
  }

  /** Without the unit's name. */
  public String number(double mm) {
    return new Length(mm).number(unit);
  }

  /** The same for work at the table, where metres and yards are too coarse. */
  public Shown atTable() {
    return new Shown(unit == Unit.M ? Unit.CM : unit == Unit.YARD ? Unit.INCH : unit);
  }

  /** The same for an order's cloth, for which what serves at the table is too fine. */
  public Shown inBulk() {
    return new Shown(OrderText.bulk(unit));
  }

  /** What cloth is sold in, where that tells it exactly; otherwise the user's unit, rounded up. */
  public String bought(double mm) {
    return Buying.shown(mm, unit);
  }

  /** As in a sentence. */
  public String unitWords() {
    return switch (unit) {
      case INCH -> "inches";
      case YARD -> "yards";
      default -> unit.symbol();
    };
  }

  public static String share(double share) {
    return String.format(Locale.ROOT, "%.1f %%", share * 100);
  }

  public static String money(double amount, String currency) {
    return (String.format(Locale.ROOT, "%.2f", amount) + " " + currency).strip();
  }

  /** The step that {@link #length} rounds to, in words. */
  public String rounding() {
    return switch (unit) {
      case MM -> "to the nearest 1 mm";
      case CM -> "to the nearest 1 mm";
      case M -> "to the nearest 1 cm";
      case INCH -> "to the nearest 1/8 in";
      case YARD -> "to the nearest 1/8 yd";
    };
  }
}
