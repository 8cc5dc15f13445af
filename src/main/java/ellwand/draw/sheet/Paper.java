package ellwand.draw.sheet;

/** A sheet of paper, mm. */
public record Paper(double widthMm, double heightMm) {

  /** ISO 216. */
  public static final Paper A4 = new Paper(210, 297);

  /** What home and office printers leave white, with room to hold the sheet, mm. */
  public static final double MARGIN_MM = 10;

  Paper onItsSide() {
    return new Paper(heightMm, widthMm);
  }

  public double innerWidthMm() {
    return widthMm - 2 * MARGIN_MM;
  }

  public double innerHeightMm() {
    return heightMm - 2 * MARGIN_MM;
  }
}
