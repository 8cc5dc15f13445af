package ellwand.figures;

import ellwand.cloth.Cloth;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.Locale;
import java.util.Optional;

/** What to buy for a length on the table. */
public final class Buying {

  private Buying() {}

  /**
   * What is needed for the cloth length and its ends, rounded up to the shop's step. Nothing is
   * bought where a remnant is laid on.
   *
   * @param clothLengthMm 0 or more
   */
  public static double lengthMm(Cloth cloth, double clothLengthMm) {
    if (cloth.stock().isPresent()) {
      return 0;
    }
    return cloth.selling().soldMm(exactMm(cloth, clothLengthMm));
  }

  /** The same where the shop cuts any length. */
  static double exactMm(Cloth cloth, double clothLengthMm) {
    return cloth.neededMm(clothLengthMm + cloth.endsMm());
  }

  /** 0 if the price is unknown. */
  public static double cost(Cloth cloth, double boughtMm) {
    return boughtMm / 1000 * cloth.pricePerMetre();
  }

  /** An amount with its currency, which may be empty. */
  public static String money(double amount, String currency) {
    return String.format(Locale.ROOT, "%.2f", amount) + (currency.isEmpty() ? "" : " " + currency);
  }

  /** What a marker of that length would cost, with its currency; empty if the price is unknown. */
  public static Optional<String> costInWords(Cloth cloth, double clothLengthMm) {
    return cloth.pricePerMetre() > 0
        ? Optional.of(money(cost(cloth, lengthMm(cloth, clothLengthMm)), cloth.currency()))
        : Optional.empty();
  }

  /** How wide the cloth must be bought to have so much between its selvedges on the table, mm. */
  public static double widthMm(Cloth cloth, double usableMm) {
    return (usableMm + 2 * cloth.selvedgeMm()) / cloth.shrinkage().laidWidth(1);
  }

  /**
   * A length as the shop is asked for it: in yards or metres where that tells it exactly; otherwise
   * rounded up, in yards and inches or in the user's unit.
   */
  public static String shown(double mm, Unit unit) {
    if (mm == 0) {
      return "nothing";
    }
    Unit sold = unit == Unit.INCH || unit == Unit.YARD ? Unit.YARD : Unit.M;
    double steps = mm / sold.stepMm();
    if (Math.abs(steps - Math.rint(steps)) * sold.stepMm() < 0.05) {
      return new Length(mm).show(sold);
    }
    if (sold == Unit.YARD) {
      double step = Unit.INCH.stepMm();
      double whole = Math.floor(mm / Unit.YARD.mm() + 1e-9) * Unit.YARD.mm();
      double rest = Math.ceil((mm - whole) / step - 1e-6) * step;
      return (whole == 0 ? "" : new Length(whole).show(Unit.YARD) + " ")
          + new Length(rest).show(Unit.INCH);
    }
    return new Length(Math.ceil(mm / unit.stepMm() - 1e-6) * unit.stepMm()).show(unit);
  }
}
