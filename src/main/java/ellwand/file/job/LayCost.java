package ellwand.file.job;

import ellwand.file.source.Names;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What setting up, spreading and cutting a lay takes.
 *
 * @param amount money, or minutes
 */
record LayCost(double amount, boolean minutes) {

  private static final Pattern TEXT = Pattern.compile("(\\d+(?:[.,]\\d+)?)\\s*(min)?");

  /**
   * Reads {@code 15} or {@code 25 min}.
   *
   * @throws IllegalArgumentException saying what is accepted
   */
  static LayCost parse(String text) {
    Matcher matcher = TEXT.matcher(text.strip());
    if (!matcher.matches()) {
      throw new IllegalArgumentException(
          "'" + Names.shown(text) + "' is no cost of a lay: write for example 15 or 25 min");
    }
    return new LayCost(
        Double.parseDouble(matcher.group(1).replace(',', '.')), matcher.group(2) != null);
  }

  /**
   * In money.
   *
   * @throws IllegalArgumentException if minutes cost nothing
   */
  double money(double perMinute) {
    if (minutes && !(perMinute > 0)) {
      throw new IllegalArgumentException(
          "it is not said what a minute costs: add minute: beside lay:");
    }
    return minutes ? amount * perMinute : amount;
  }
}
