package ellwand.file.pdf;

import ellwand.problem.InputException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How the pages of a pattern lie beside one another, the first at the top left, row by row.
 *
 * @param rows of pages
 * @param columns of pages
 * @param firstPage that belongs to it, from 1
 */
public record Tiling(int rows, int columns, int firstPage) {

  private static final int MOST = 100;

  private static final Pattern TEXT = Pattern.compile("(\\d{1,3})\\s*[xX×]\\s*(\\d{1,3})");

  /**
   * Reads {@code 3x4}.
   *
   * @throws InputException if it is not that
   */
  public static Tiling parse(String text, int firstPage) {
    Matcher matcher = TEXT.matcher(text.strip());
    if (!matcher.matches() || firstPage < 1) {
      throw InputException.of(
          "'" + text + "' does not say how many rows and columns of pages there are",
          "Write for example 3x4 for three rows of four pages");
    }
    Tiling tiling =
        new Tiling(
            Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2)), firstPage);
    InputException.unless(
        tiling.pages() >= 1 && tiling.rows <= MOST && tiling.columns <= MOST,
        "'" + text + "' is no number of pages that anyone joins",
        "Write for example 3x4");
    return tiling;
  }

  int pages() {
    return rows * columns;
  }
}
