package ellwand.file.job;

import ellwand.file.source.Names;
import ellwand.problem.InputException;
import ellwand.units.Unit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What cloth costs.
 *
 * @param perMetre 0 or more
 * @param currency a word or sign, may be empty
 */
record ClothPrice(double perMetre, String currency) {

  static final ClothPrice NONE = new ClothPrice(0, "");

  private static final String MONEY = "([\\p{L}\\p{Sc}]{0,5})";
  private static final Pattern TEXT =
      Pattern.compile(MONEY + "\\s*(\\d+(?:[.,]\\d+)?)\\s*" + MONEY + "\\s+per\\s+(\\p{L}+)");

  /**
   * Reads {@code 8.50 per m}, {@code GBP 12 per yd}, {@code 9,90 EUR per m}.
   *
   * @throws InputException saying what is accepted
   */
  static ClothPrice parse(String text) {
    Matcher matcher = TEXT.matcher(text.strip());
    if (!matcher.matches()) {
      throw InputException.of(
          "'" + Names.shown(text) + "' cannot be read as a price by length",
          "Write for example 8.50 per m or GBP 12 per yd");
    }
    double amount = Double.parseDouble(matcher.group(2).replace(',', '.'));
    double mm = Unit.parse(matcher.group(4)).mm();
    return new ClothPrice(amount / mm * Unit.M.mm(), matcher.group(1) + matcher.group(3));
  }
}
