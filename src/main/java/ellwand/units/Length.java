package ellwand.units;

import ellwand.problem.InputException;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A length.
 *
 * @param mm millimetres, finite, any sign
 */
public record Length(double mm) {

  private static final Pattern TEXT =
      Pattern.compile(
          "([+-]?)(?:(\\d+)\\s+(\\d+)/(\\d+)|(\\d+)/(\\d+)|(\\d+(?:[.,]\\d+)?|[.,]\\d+))\\s*(\\D*)");

  public Length {
    if (!Double.isFinite(mm)) {
      throw new IllegalArgumentException("a length must be a number, not " + mm);
    }
  }

  public static Length of(double amount, Unit unit) {
    return new Length(amount * unit.mm());
  }

  /**
   * Reads {@code 2 cm}, {@code 5/8 in}, {@code 1 1/2 yd}, {@code 12.5}.
   *
   * @param bare the unit of a number that has none
   * @throws InputException saying what is wrong and what is accepted
   */
  public static Length parse(String text, Unit bare) {
    Matcher matcher = TEXT.matcher(text.strip());
    if (!matcher.matches()) {
      throw InputException.of(
          "'" + text.strip() + "' cannot be read as a length",
          "Write for example 2 cm, 12 mm, 5/8 in, 1 1/2 yd");
    }
    double amount;
    if (matcher.group(2) != null) {
      amount =
          Double.parseDouble(matcher.group(2)) + fraction(matcher.group(3), matcher.group(4), text);
    } else if (matcher.group(5) != null) {
      amount = fraction(matcher.group(5), matcher.group(6), text);
    } else {
      amount = Double.parseDouble(matcher.group(7).replace(',', '.'));
    }
    Unit unit = matcher.group(8).isBlank() ? bare : Unit.parse(matcher.group(8));
    if (Double.isInfinite(amount * unit.mm())) {
      throw InputException.of(
          "'" + text.strip() + "' is longer than anything", "See that the number is right");
    }
    return of(matcher.group(1).equals("-") ? -amount : amount, unit);
  }

  private static double fraction(String over, String under, String text) {
    double divisor = Double.parseDouble(under);
    if (divisor == 0) {
      throw InputException.of(
          "'" + text.strip() + "' divides by 0", "Write for example 5/8 in or 1 1/2 yd");
    }
    return Double.parseDouble(over) / divisor;
  }

  public double in(Unit unit) {
    return mm / unit.mm();
  }

  /** Shown with its unit, rounded to the unit's step: {@code 41.3 cm}, {@code 1 5/8 yd}. */
  public String show(Unit unit) {
    return number(unit) + " " + unit.symbol();
  }

  /** As {@link #show} without the unit's name, for tables and rulers. */
  public String number(Unit unit) {
    return unit.inFractions() ? eighths(in(unit)) : decimals(unit);
  }

  private String decimals(Unit unit) {
    int places = unit == Unit.MM ? 0 : unit == Unit.CM ? 1 : 2;
    String text = String.format(Locale.ROOT, "%." + places + "f", in(unit));
    return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
  }

  private static String eighths(double value) {
    long eighths = Math.round(Math.abs(value) * 8);
    String sign = value < 0 && eighths > 0 ? "-" : "";
    long whole = eighths / 8;
    long rest = eighths % 8;
    if (rest == 0) {
      return sign + whole;
    }
    long divisor = rest % 4 == 0 ? 4 : rest % 2 == 0 ? 2 : 1;
    String fraction = rest / divisor + "/" + 8 / divisor;
    return sign + (whole == 0 ? fraction : whole + " " + fraction);
  }
}
