package ellwand.units;

import ellwand.problem.InputException;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** A unit of length, with the step that a length in it is shown to. */
public enum Unit {
  MM("mm", 1, 1),
  CM("cm", 10, 1),
  M("m", 1000, 10),
  /** The international inch, 25.4 mm exactly; shown to the nearest eighth. */
  INCH("in", 25.4, 25.4 / 8),
  /** The international yard, 914.4 mm exactly; shown to the nearest eighth. */
  YARD("yd", 914.4, 914.4 / 8);

  private final String symbol;
  private final double mm;
  private final double stepMm;

  Unit(String symbol, double mm, double stepMm) {
    this.symbol = symbol;
    this.mm = mm;
    this.stepMm = stepMm;
  }

  public String symbol() {
    return symbol;
  }

  /** How many mm one of this unit is. */
  public double mm() {
    return mm;
  }

  /** What lengths shown in this unit are rounded to, in mm. */
  public double stepMm() {
    return stepMm;
  }

  /** Whether fractions (1 5/8) are shown rather than decimals. */
  boolean inFractions() {
    return this == INCH || this == YARD;
  }

  /**
   * @throws InputException naming the units that are known
   */
  public static Unit parse(String text) {
    return switch (text.strip().toLowerCase(Locale.ROOT)) {
      case "mm" -> MM;
      case "cm" -> CM;
      case "m" -> M;
      case "in", "inch", "inches", "\"", "″" -> INCH;
      case "yd", "yard", "yards" -> YARD;
      default ->
          throw InputException.of(
              "'" + text.strip() + "' is not a unit of length", "Use " + symbols());
    };
  }

  private static String symbols() {
    return Arrays.stream(values()).map(Unit::symbol).collect(Collectors.joining(", "));
  }
}
