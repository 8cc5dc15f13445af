package ellwand.file.job;

import ellwand.cloth.Laying;
import ellwand.file.source.Names;
import ellwand.problem.InputException;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads how far a piece may turn off its grain. */
final class Degrees {

  private static final Pattern TEXT =
      Pattern.compile("(-?\\d+(?:[.,]\\d+)?)\\s*(?:deg|degrees?|°)?");

  private Degrees() {}

  /**
   * Reads {@code 2 deg}, {@code 1.5 degrees}, {@code 2°} or {@code 2}.
   *
   * @throws InputException if it is none of these, or too much
   */
  static double parse(String text) {
    double degrees =
        angle(text)
            .filter(d -> d >= 0)
            .orElseThrow(
                () ->
                    InputException.of(
                        "'" + Names.shown(text) + "' is not an angle of 0 or more",
                        "Write for example 2 deg"));
    if (degrees > Laying.MOST_TOLERANCE_DEGREES) {
      throw InputException.of(
          "'" + Names.shown(text) + "' is another grain, not a tolerance", "Write 10 deg or less");
    }
    return degrees;
  }

  /** Any angle, or nothing if the text is none. */
  static Optional<Double> angle(String text) {
    Matcher matcher = TEXT.matcher(text.strip());
    return matcher.matches()
        ? Optional.of(Double.parseDouble(matcher.group(1).replace(',', '.')))
        : Optional.empty();
  }
}
