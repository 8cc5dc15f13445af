package ellwand.trace;

/** The rays of a camera: worked out at every fourth pixel, straight between (to 0.001 px). */
final class Rays {

  private static final int CELL = 4;

  private final double[][] known;
  private final int across;

  Rays(SimulatedCamera camera) {
    across = camera.widthPx() / CELL + 2;
    known = new double[across * (camera.heightPx() / CELL + 2)][];
    for (int i = 0; i < known.length; i++) {
      known[i] = camera.ray(i % across * CELL, i / across * CELL);
    }
  }

  void at(int column, int row, double[] ray) {
    int i = row / CELL * across + column / CELL;
    double a = column % CELL / (double) CELL;
    double b = row % CELL / (double) CELL;
    for (int c = 0; c < 3; c++) {
      ray[c] =
          (1 - b) * ((1 - a) * known[i][c] + a * known[i + 1][c])
              + b * ((1 - a) * known[i + across][c] + a * known[i + across + 1][c]);
    }
  }
}
