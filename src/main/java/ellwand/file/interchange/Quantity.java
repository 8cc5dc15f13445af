package ellwand.file.interchange;

import ellwand.pattern.Cut;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How many of a piece are cut: as drawn, and turned over. */
final class Quantity {

  private static final Pattern TEXT = Pattern.compile("(\\d{1,4})\\s*(?:[,;/ ]\\s*(\\d{1,4}))?.*");

  private Quantity() {}

  /** As a file says it: so many as drawn, so many turned over. */
  static String of(Cut cut) {
    return cut.count() + "," + (cut.how() == Cut.How.PAIR ? cut.count() : 0);
  }

  /**
   * As a job says it. Where there are more of one hand, those of the other count as pairs and the
   * rest is not said; one that cannot be read counts as 1.
   */
  static String cut(String text, boolean onFold) {
    Matcher matcher = TEXT.matcher(text);
    int drawn = matcher.matches() ? Integer.parseInt(matcher.group(1)) : 1;
    int turned =
        matcher.matches() && matcher.group(2) != null ? Integer.parseInt(matcher.group(2)) : 0;
    if (onFold) {
      return Math.max(1, Math.max(drawn, turned)) + " on fold";
    }
    if (drawn > 0 && turned > 0) {
      int pairs = Math.min(drawn, turned);
      return pairs == 1 ? "pair" : pairs + " pairs";
    }
    return Integer.toString(Math.max(1, Math.max(drawn, turned)));
  }
}
