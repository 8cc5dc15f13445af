package ellwand.pattern;

import ellwand.geometry.Path;

/**
 * A named stretch of a piece's sewing line.
 *
 * @param line from the edge's start to its end, counter-clockwise round the piece
 * @param allowanceMm seam allowance outside the sewing line, 0 or more
 * @param turnedBack the allowance is folded back along this edge (a hem), so at both ends the
 *     cutting line is the neighbour's mirrored about this edge's sewing line
 */
public record Edge(String name, Path line, double allowanceMm, boolean turnedBack) {

  public Edge {
    if (!(allowanceMm >= 0 && Double.isFinite(allowanceMm))) {
      throw new IllegalArgumentException("the allowance of edge " + name + " must be 0 or more");
    }
  }
}
