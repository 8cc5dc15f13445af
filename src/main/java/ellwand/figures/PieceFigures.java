package ellwand.figures;

/**
 * One piece in one size, over all garments of a lay.
 *
 * @param count pieces of cloth wanted: a pair is two, a half on the fold one
 * @param areaMm2 of one piece as cut, halves opened
 */
public record PieceFigures(String piece, String size, int count, double areaMm2) {}
