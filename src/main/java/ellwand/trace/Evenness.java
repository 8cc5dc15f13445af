package ellwand.trace;

/** Takes out how light falls off over a cells: lightness as a polynomial of the second degree. */
final class Evenness {

  private static final int TERMS = 6;

  private Evenness() {}

  /**
   * Evens out the lightness, in place.
   *
   * @param lightness of each cell, a logarithm
   * @param kind of each cell: 0 for ground, 1 for paper, whose own lightness differs; below 0 for
   *     what does not count
   */
  static void out(Cells cells, float[] lightness, byte[] kind) {
    double[][] rows = new double[TERMS + 1][TERMS + 2];
    double[] terms = new double[TERMS + 1];
    boolean paper = false;
    for (int i = 0; i < kind.length; i += 3) {
      if (kind[i] >= 0) {
        terms(cells, i, terms);
        terms[TERMS] = kind[i];
        paper |= kind[i] > 0;
        for (int r = 0; r <= TERMS; r++) {
          for (int c = 0; c <= TERMS; c++) {
            rows[r][c] += terms[r] * terms[c];
          }
          rows[r][TERMS + 1] += terms[r] * lightness[i];
        }
      }
    }
    if (!paper) {
      rows[TERMS][TERMS] = 1;
    }
    for (int r = 0; r < TERMS; r++) {
      // A ring of ground says little of the middle: what is not needed stays near 0.
      rows[r][r] += 1e-3 * rows[0][0];
    }
    double[] found = Equations.solved(rows);
    for (int i = 0; i < kind.length; i++) {
      terms(cells, i, terms);
      double even = 0;
      for (int k = 1; k < TERMS; k++) {
        even += found[k] * terms[k];
      }
      lightness[i] -= (float) even;
    }
  }

  private static void terms(Cells cells, int cell, double[] terms) {
    double x = 2.0 * (cell % cells.width()) / cells.width() - 1;
    double y = 2.0 * (cell / cells.width()) / cells.height() - 1;
    terms[0] = 1;
    terms[1] = x;
    terms[2] = y;
    terms[3] = x * x;
    terms[4] = x * y;
    terms[5] = y * y;
  }
}
