package ellwand.draw.tiles;

import ellwand.draw.sheet.Paper;
import ellwand.problem.InputException;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.List;
import java.util.Locale;

/**
 * Paper that is printed on: pages, or a roll.
 *
 * @param name as users call it; of a roll its width as it was written
 * @param widthMm of a page or the roll
 * @param heightMm of a page; infinite for a roll
 * @param sideMm left white at the left and right of a page, and along both edges of a roll
 * @param endMm left white at its top and bottom
 */
public record PrintPaper(
    String name, double widthMm, double heightMm, double sideMm, double endMm) {

  /** Narrower rolls hold no head. */
  private static final double NARROWEST_ROLL_MM = 300;

  private static final double WIDEST_ROLL_MM = 10_000;

  private static final String ROLL = "roll:";

  /**
   * A4, A3 and A0 by ISO 216, Letter 8 1/2 x 11 in. A printer without margins on all of A4-Letter
   * is enough for either: what is printed is as large as both have room for, in the middle of an A4
   * page, 190 x 259 mm.
   */
  private static final List<PrintPaper> PAGES =
      List.of(
          page("A4", 210, 297),
          page("Letter", 215.9, 279.4),
          new PrintPaper("A4-Letter", 210, 297, Paper.MARGIN_MM, 19),
          page("A3", 297, 420),
          page("A0", 841, 1189));

  private static PrintPaper page(String name, double widthMm, double heightMm) {
    return new PrintPaper(name, widthMm, heightMm, Paper.MARGIN_MM, Paper.MARGIN_MM);
  }

  /**
   * Reads {@code A4}, {@code Letter}, {@code roll:91cm}.
   *
   * @throws InputException naming those that are known
   */
  public static PrintPaper parse(String text) {
    String plain = text.strip();
    if (plain.toLowerCase(Locale.ROOT).startsWith(ROLL)) {
      return roll(plain.substring(ROLL.length()).strip());
    }
    return PAGES.stream()
        .filter(p -> p.name.equalsIgnoreCase(plain))
        .findFirst()
        .orElseThrow(
            () ->
                InputException.of(
                    "'" + plain + "' is no paper that is known here",
                    "Use "
                        + String.join(", ", PAGES.stream().map(PrintPaper::name).toList())
                        + ", or a roll of any width, such as roll:91cm"));
  }

  private static PrintPaper roll(String width) {
    double widthMm = Length.parse(width, Unit.CM).mm();
    InputException.unless(
        widthMm >= NARROWEST_ROLL_MM && widthMm <= WIDEST_ROLL_MM,
        "a roll is 30 cm to 10 m wide, not " + new Length(widthMm).show(Unit.CM),
        "Write the width of the paper, such as roll:91cm or roll:36in");
    return new PrintPaper(
        "a roll " + width + " wide",
        widthMm,
        Double.POSITIVE_INFINITY,
        Paper.MARGIN_MM,
        Paper.MARGIN_MM);
  }

  /** A page so wide as what is on it, and as long. */
  public static PrintPaper unbroken(double innerMm) {
    double margin = Paper.MARGIN_MM;
    return new PrintPaper(
        "one page", innerMm + 2 * margin, Double.POSITIVE_INFINITY, margin, margin);
  }

  /** Whether it has no end: one page as long as need be. */
  public boolean isRoll() {
    return heightMm == Double.POSITIVE_INFINITY;
  }

  public PrintPaper onItsSide() {
    return new PrintPaper(name, heightMm, widthMm, endMm, sideMm);
  }

  /** How wide what is printed may be, mm. */
  public double innerWidthMm() {
    return widthMm - 2 * sideMm;
  }

  /** How high it may be, mm. */
  public double innerHeightMm() {
    return heightMm - 2 * endMm;
  }

  /** One page of it round a drawing, as a roll lies: its length from left to right. */
  PrintPaper cutTo(double lengthMm) {
    return new PrintPaper(name, lengthMm + 2 * endMm, widthMm, endMm, sideMm);
  }
}
