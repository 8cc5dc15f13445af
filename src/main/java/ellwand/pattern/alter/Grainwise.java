package ellwand.pattern.alter;

import ellwand.geometry.Point;
import ellwand.pattern.Workpiece;

/** Which way the grain of a piece runs as it is drawn. */
final class Grainwise {

  private Grainwise() {}

  /** Along the grain towards the top, length 1: the drawn x axis unless the piece says other. */
  static Point direction(Workpiece piece) {
    double turn = piece.grain().anywhere() ? 0 : piece.grain().drawnTurns().get(0);
    if (piece.grain().lengthwise() || turn == 0) {
      return new Point(1, 0);
    }
    // The drawn x axis lies so far off the warp, so the warp lies as far off the x axis.
    return turn == 90
        ? new Point(0, -1)
        : new Point(Math.cos(Math.toRadians(turn)), -Math.sin(Math.toRadians(turn)));
  }
}
