package ellwand.draw;

/** A sheet of paper, mm. */
record Paper(double widthMm, double heightMm) {

  /** ISO 216. */
  static final Paper A4 = new Paper(210, 297);

  /** What home and office printers leave white, with room to hold the sheet, mm. */
  static final double MARGIN_MM = 10;

  Paper onItsSide() {
    return new Paper(heightMm, widthMm);
  }

  double innerWidthMm() {
    return widthMm - 2 * MARGIN_MM;
  }

  double innerHeightMm() {
    return heightMm - 2 * MARGIN_MM;
  }
}
