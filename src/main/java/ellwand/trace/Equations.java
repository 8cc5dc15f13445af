package ellwand.trace;

/** Small systems of linear equations, such as least squares ask for. */
final class Equations {

  private Equations() {}

  /**
   * Solves by elimination, each row with its largest share first.
   *
   * @param rows as many as unknowns, each with their factors and then the right side; used up
   */
  static double[] solved(double[][] rows) {
    int unknowns = rows.length;
    for (int r = 0; r < unknowns; r++) {
      int largest = r;
      for (int below = r + 1; below < unknowns; below++) {
        if (Math.abs(rows[below][r]) > Math.abs(rows[largest][r])) {
          largest = below;
        }
      }
      double[] pivot = rows[largest];
      rows[largest] = rows[r];
      rows[r] = pivot;
      for (int below = r + 1; below < unknowns; below++) {
        double share = rows[below][r] / pivot[r];
        for (int c = r; c <= unknowns; c++) {
          rows[below][c] -= share * pivot[c];
        }
      }
    }
    double[] solved = new double[unknowns];
    for (int r = unknowns - 1; r >= 0; r--) {
      double rest = rows[r][unknowns];
      for (int c = r + 1; c < unknowns; c++) {
        rest -= rows[r][c] * solved[c];
      }
      solved[r] = rest / rows[r][r];
    }
    return solved;
  }
}
