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
    double number = Double.parseDouble(matcher.group(1).replace(',', '.'));
    double share = matcher.group(2).isEmpty() ? number : number / 100;
    if (share >= 1) {
      throw InputException.of(
          "'" + Names.shown(text) + "' would be all of the cloth or more",
          "Write a percentage below 100, for example 3 %");
    }
    return share;
  }
}
