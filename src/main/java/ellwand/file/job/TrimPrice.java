package ellwand.file.job;

import ellwand.file.source.Names;
import ellwand.pattern.Trim;
import ellwand.problem.InputException;
import ellwand.units.Unit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads prices of trims. */
final class TrimPrice {

  private static final String MONEY = "([\\p{L}\\p{Sc}]{0,5})";
  private static final Pattern PIECES =
      Pattern.compile(
          MONEY + "\\s*(\\d+(?:[.,]\\d+)?)\\s*" + MONEY + "\\s+(?:each|for\\s+([1-9]\\d{0,3}))");

  private TrimPrice() {}

  /**
   * Reads {@code 0.35 each}, {@code GBP 2.10 for 6}.
   *
   * @throws InputException saying what is accepted
   */
  static Trim.Price ofPieces(String text) {
    Matcher matcher = PIECES.matcher(text.strip());
    if (!matcher.matches()) {
      throw InputException.of(
          "'" + Names.shown(text) + "' cannot be read as a price of pieces",
          "Write for example 0.35 each, or 2.10 for 6 where they are sold in sixes");
    }
    return new Trim.Price(
        Double.parseDouble(matcher.group(2).replace(',', '.')),
        matcher.group(4) == null ? 1 : Integer.parseInt(matcher.group(4)),
        matcher.group(1) + matcher.group(3));
  }

  /**
   * Reads {@code 1.20 per m}.
   *
   * @throws InputException saying what is accepted
   */
  static Trim.Price ofLength(String text) {
    ClothPrice price = ClothPrice.parse(text);
    return new Trim.Price(price.perMetre(), Unit.M.mm(), price.currency());
  }
}
