package ellwand.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * The convolution of two outlines: each side of one is carried to those corners of the other whose
 * turn takes in its direction, backwards where the corner turns to the right (Guibas, Ramshaw and
 * Stolfi 1983). It is a closed line that winds about a place as often as the first outline and the
 * second, turned by a half turn and moved there, have common parts.
 */
final class Convolution {

  /** A stretch of the closed line; the line runs it backwards when it isn't forward. */
  record Stretch(double fromX, double fromY, double toX, double toY, boolean forward) {}

  private final List<Stretch> stretches = new ArrayList<>();

  private Convolution() {}

  /** Both outlines x0, y0, x1, y1, ... counter-clockwise. */
  static List<Stretch> of(double[] a, double[] b) {
    Convolution convolution = new Convolution();
    convolution.carry(b, a, true);
    convolution.carry(a, b, false);
    return convolution.stretches;
  }

  /**
   * @param within whether a side that runs like the turn's lower limit belongs to the turn; if not,
   *     one that runs like its upper limit does. One of each keeps the line closed
   */
  private void carry(double[] sides, double[] corners, boolean within) {
    int n = corners.length;
    for (int i = 0; i < n; i += 2) {
      double inX = corners[i] - corners[(i + n - 2) % n];
      double inY = corners[i + 1] - corners[(i + n - 1) % n];
      double outX = corners[(i + 2) % n] - corners[i];
      double outY = corners[(i + 3) % n] - corners[i + 1];
      double turn = inX * outY - inY * outX;
      for (int k = 0; turn != 0 && k < sides.length; k += 2) {
        int next = (k + 2) % sides.length;
        double x = sides[next] - sides[k];
        double y = sides[next + 1] - sides[k + 1];
        double afterIn = turn > 0 ? inX * y - inY * x : outX * y - outY * x;
        double beforeOut = turn > 0 ? x * outY - y * outX : x * inY - y * inX;
        if (within ? afterIn >= 0 && beforeOut > 0 : afterIn > 0 && beforeOut >= 0) {
          stretches.add(
              new Stretch(
                  corners[i] + sides[k],
                  corners[i + 1] + sides[k + 1],
                  corners[i] + sides[next],
                  corners[i + 1] + sides[next + 1],
                  turn > 0));
        }
      }
    }
  }
}
