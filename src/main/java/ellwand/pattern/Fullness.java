package ellwand.pattern;

import ellwand.problem.InputException;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How many times as long a piece is as what it is sewn to: 1.5 for half as much again, less than 1
 * for what is stretched, as a rib. Where it may be anything from one to another, whole widths of
 * the cloth are taken.
 */
public record Fullness(double least, double most) {

  private static final double MOST = 20;

  private static final Pattern TEXT =
      Pattern.compile("(\\d+(?:[.,]\\d+)?)(?:\\s+to\\s+(\\d+(?:[.,]\\d+)?))?");

  public Fullness {
    if (!(least > 0 && least <= most && most <= MOST)) {
      throw InputException.of(
          "a fullness of " + (least == most ? "" + least : least + " to " + most) + " cannot be",
          "Write 1.5 for half as much again, 0.8 for a rib, 1.5 to 2 for whole widths of cloth");
    }
  }

  public static Fullness of(double fullness) {
    return new Fullness(fullness, fullness);
  }

  /**
   * Reads {@code 1.5}, {@code 1.5 to 2}.
   *
   * @throws InputException saying what is accepted
   */
  public static Fullness parse(String text) {
    Matcher matcher = TEXT.matcher(text.strip());
    if (!matcher.matches()) {
      throw InputException.of(
          "'" + text.replaceAll("\\p{Cntrl}", "?") + "' is not a fullness",
          "Write for example 1.5, or 1.5 to 2 for whole widths of cloth");
    }
    double least = number(matcher.group(1));
    return new Fullness(least, matcher.group(2) == null ? least : number(matcher.group(2)));
  }

  private static double number(String text) {
    return Double.parseDouble(text.replace(',', '.'));
  }

  /** Whether the cloth decides. */
  public boolean open() {
    return least < most;
  }

  /** {@code 1.5}, {@code 1.5 to 2}. */
  @Override
  public String toString() {
    return open() ? shown(least) + " to " + shown(most) : shown(least);
  }

  /** To the hundredth. */
  static String shown(double fullness) {
    return String.format(Locale.ROOT, "%.2f", fullness).replaceAll("\\.?0+$", "");
  }
}
