package ellwand.pattern;

import java.util.List;

/**
 * A small cut into the allowance that shows where to join.
 *
 * @param edge name of the edge it stands on
 * @param atMm from the edge's start (counter-clockwise round the piece), along the sewing line
 * @param strokes 1 for a single notch (a front), 2 for a double one (a back)
 * @param depthMm measured inward from the cutting line
 */
public record Notch(String edge, double atMm, int strokes, double depthMm) {

  /** Within 2-3 mm, as Vilumsone-Nemes, Industrial Cutting of Textile Materials, p. 210, has it. */
  public static final double USUAL_DEPTH_MM = 3;

  public Notch {
    if (strokes < 1 || strokes > 2 || !(depthMm > 0) || !(atMm >= 0)) {
      throw new IllegalArgumentException(
          "a notch on edge " + edge + " has 1 or 2 strokes, a depth above 0, a place 0 or more");
    }
  }

  /** The same at the starts of their edges, to see whether these are there and wide enough. */
  static List<Notch> atStarts(List<Notch> notches) {
    return notches.stream().map(n -> n.at(0)).toList();
  }

  /** The same at another place. */
  Notch at(double mm) {
    return new Notch(edge, mm, strokes, depthMm);
  }
}
