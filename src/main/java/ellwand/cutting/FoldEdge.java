package ellwand.cutting;

import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.pattern.Edge;
import ellwand.pattern.InnerLine;
import ellwand.pattern.Piece;
import java.util.List;

/** Sees to it that a half piece can lie with its fold edge exactly on a fold. */
final class FoldEdge {

  private static final double ON_LINE_MM = 1e-6;

  private FoldEdge() {}

  /**
   * The piece with its fold edge as one straight line, level if it lies along the grain; it moves
   * by no more than a piece's fold edge may stray. Whole pieces stay as they are.
   */
  static Piece straightened(Piece piece) {
    if (piece.fold().isEmpty()) {
      return piece;
    }
    Path fold = piece.edge(piece.fold().get()).line();
    Point along = fold.end().minus(fold.start());
    double tilt = along.y() == 0 || !level(piece) ? 0 : Math.atan(along.y() / along.x());
    if (tilt == 0 && fold.segments().size() == 1 && fold.straight(ON_LINE_MM)) {
      return piece;
    }
    Motion turn = new Motion(false, -Math.toDegrees(tilt), 0, 0);
    List<Edge> edges =
        piece.edges().stream()
            .map(
                e ->
                    e.line() == fold
                        ? e.along(Path.line(turn.apply(fold.start()), turn.apply(fold.end())))
                        : e.moved(turn::apply))
            .toList();
    List<InnerLine> lines =
        piece.innerLines().stream()
            .map(l -> new InnerLine(l.name(), l.line().moved(turn)))
            .toList();
    return new Piece(
        piece.name(),
        edges,
        piece.fold(),
        piece.grain(),
        piece.notches(),
        lines,
        piece.cuts(),
        piece.asks());
  }

  private static boolean level(Piece piece) {
    return piece.grain().lengthwise();
  }

  /** The stretch of the cutting line that lies on the fold, in the edge's direction. */
  static CutPiece.Stroke stroke(Edge fold, Outline cutting) {
    Point from = fold.line().start();
    Point along = fold.line().end().minus(from).unit();
    List<Point> on =
        cutting.points().stream()
            .filter(p -> Math.abs(along.cross(p.minus(from))) <= ON_LINE_MM)
            .sorted((p, q) -> Double.compare(along.dot(p), along.dot(q)))
            .toList();
    return new CutPiece.Stroke(on.get(0), on.get(on.size() - 1));
  }
}
