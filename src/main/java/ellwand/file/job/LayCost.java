package ellwand.file.job;

import ellwand.file.source.Names;
import ellwand.problem.InputException;
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
   * @throws InputException saying what is accepted
   */
  static LayCost parse(String text) {
    Matcher matcher = TEXT.matcher(text.strip());
    if (!matcher.matches()) {
      throw InputException.of(
          "'" + Names.shown(text) + "' cannot be read as the cost of a lay",
          "Write money or minutes, for example 15 or 25 min");
    }
    return new LayCost(
        Double.parseDouble(matcher.group(1).replace(',', '.')), matcher.group(2) != null);
  }

  /**
   * In money.
   *
   * @throws InputException if minutes cost nothing
   */
  double money(double perMinute) {
    if (minutes && !(perMinute > 0)) {
      throw InputException.of(
          "it is not said what a minute costs", "Add minute: under cost: of the order");
    }
    return minutes ? amount * perMinute : amount;
  }
}
