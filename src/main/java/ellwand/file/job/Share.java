package ellwand.file.job;

import ellwand.file.source.Names;
import ellwand.problem.InputException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a share of a whole. */
final class Share {

  private static final Pattern TEXT = Pattern.compile("(\\d+(?:[.,]\\d+)?)\\s*(%?)");

  private Share() {}

  /**
   * Reads {@code 85 %} or {@code 0.85} of a length, which may be more than all of it.
   *
   * @return above 0, at most 20
   * @throws InputException if it is not a share
   */
  static double ofLength(String text) {
    Matcher matcher = TEXT.matcher(text.strip());
    double share = matcher.matches() ? number(matcher) : 0;
    if (!(share > 0 && share <= 20)) {
      throw InputException.of(
          "'" + Names.shown(text) + "' is not a share of a length", "Write for example 85 %");
    }
    return share;
  }

  private static double number(Matcher matcher) {
    double number = Double.parseDouble(matcher.group(1).replace(',', '.'));
    return matcher.group(2).isEmpty() ? number : number / 100;
  }

  /**
   * Reads {@code 3 %} or {@code 0.03}.
   *
   * @return 0 up to, but not, 1
   * @throws InputException if it is not a share, or the whole is gone
   */
  static double parse(String text) {
    Matcher matcher = TEXT.matcher(text.strip());
    if (!matcher.matches()) {
      throw InputException.of(
          "'" + Names.shown(text) + "' is not a percentage of 0 or more", "Write for example 3 %");
    }
    double share = number(matcher);
    if (share >= 1) {
      throw InputException.of(
          "'" + Names.shown(text) + "' would be all of the cloth or more",
          "Write a percentage below 100, for example 3 %");
    }
    return share;
  }
}
