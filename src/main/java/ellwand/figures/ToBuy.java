package ellwand.figures;

import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One line of a shopping list.
 *
 * @param kind cloth or trim
 * @param name of the cloth or trim
 * @param colour where it is bought in several; empty otherwise
 * @param widthMm of the cloth as bought, or of the trim if it has one
 * @param lengthMm to buy, or of each where pieces of a length are bought: zips
 * @param count how many, where it is bought in pieces
 * @param pack how many are sold together, 1 or more
 * @param cost of all of it; 0 if the price is unknown
 * @param currency may be empty
 */
public record ToBuy(
    Kind kind,
    String name,
    String colour,
    Optional<Double> widthMm,
    Optional<Double> lengthMm,
    OptionalInt count,
    int pack,
    double cost,
    String currency) {

  /** What it is. */
  public enum Kind {
    CLOTH,
    TRIM
  }

  /** Its name and colour, and the length of each where pieces of a length are bought. */
  public String words(Unit unit) {
    return name
        + (colour.isEmpty() ? "" : ", " + colour)
        + (count.isPresent() && lengthMm.isPresent()
            ? ", " + new Length(lengthMm.get()).show(unit) + " long"
            : "");
  }

  /** What it costs by the metre or yard, each, or by the pack; empty if that is unknown. */
  public String price(Unit unit) {
    if (cost == 0) {
      return "";
    }
    if (count.isPresent()) {
      return money(cost / count.getAsInt() * pack) + (pack == 1 ? " each" : " for " + pack);
    }
    boolean yards = unit == Unit.INCH || unit == Unit.YARD;
    Unit sold = yards ? Unit.YARD : Unit.M;
    return money(cost / lengthMm.orElseThrow() * sold.mm()) + (yards ? " a yard" : " a metre");
  }

  private String money(double amount) {
    return (String.format(Locale.ROOT, "%.2f", amount) + " " + currency).strip();
  }

  /** How much to ask for in the shop. */
  public String amount(Unit unit) {
    return count.isPresent()
        ? Integer.toString(count.getAsInt())
        : Buying.shown(lengthMm.orElse(0.0), unit);
  }
}
