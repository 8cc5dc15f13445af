package ellwand.pattern;

import ellwand.geometry.Point;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Length;
import ellwand.units.Unit;

/**
 * A place on a sewing line that asks for its place on the cloth.
 *
 * @param words as in the job: {@code side seam @ 12 cm}
 * @param edge name of the edge
 * @param atMm from the edge's start (counter-clockwise round the piece), along the sewing line
 */
public record Mark(String words, String edge, double atMm) {

  private static final double SAME_MM = 1e-6;

  /**
   * Finds a mark on a piece.
   *
   * @param words edge @ distance from the edge's first point as drawn, or an edge alone for that
   *     point
   * @param bare unit of a distance that has none
   * @throws InputException if there is no such place
   */
  static Mark of(String words, Unit bare, Workpiece piece) {
    String[] parts = words.split("@", 2);
    WorkEdge edge = piece.edge(parts[0].strip());
    double length = edge.line().length();
    double at = parts.length == 1 ? 0 : Length.parse(parts[1], bare).mm();
    if (!(at >= 0 && at <= length + SAME_MM)) {
      throw new InputException(
          Problem.inPiece(
              piece.name(),
              "'%s' lies beyond the edge, which is %s long"
                  .formatted(Workpiece.printable(words), new Length(length).show(bare)),
              "Measure from its first point"));
    }
    return new Mark(words, edge.name(), edge.shaped(Math.max(0, edge.drawn(at))));
  }

  /** Where it is on the piece, in the frame it is drawn in. */
  public Point on(Piece piece) {
    return piece.edge(edge).line().tangent(atMm).at();
  }
}
