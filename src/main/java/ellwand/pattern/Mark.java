package ellwand.pattern;

import ellwand.geometry.Point;

/**
 * A place on a sewing line that asks for its place on the cloth.
 *
 * @param words as in the job: {@code side seam @ 12 cm}
 * @param edge name of the edge
 * @param atMm from the edge's start (counter-clockwise round the piece), along the sewing line
 */
public record Mark(String words, String edge, double atMm) {

  /** Where it is on the piece, in the frame it is drawn in. */
  public Point on(Piece piece) {
    return piece.edge(edge).line().mark(atMm).at();
  }
}
