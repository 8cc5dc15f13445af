package ellwand.cutting;

import ellwand.geometry.Offset;
import ellwand.geometry.Outline;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.pattern.Edge;
import ellwand.pattern.Mark;
import ellwand.pattern.Piece;
import ellwand.problem.InputException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Draws cutting lines round sewing lines.
 *
 * <p>Each edge's cutting line runs outside its sewing line at its own allowance, within 0.1 mm of
 * the true offset. At corners the two lines run on until they meet (a mitre); beside an edge
 * without allowance the cutting line runs to that edge's line; a hem that is turned back ends as
 * its neighbour mirrored ({@link TurnBack}); where one edge runs on smoothly into another of a
 * different allowance the line steps square. Where a curve bends in more tightly than its
 * allowance, the loop is left out. What a dart, pleat or tuck folds away ends, once it is folded,
 * where the cutting line of the cloth does on which it lies.
 */
public final class Cutter {

  /**
   * How far a mitre may run from the corner of the sewing line, in widths of the wider of the two
   * allowances, before its tip is cut off square at that distance. With equal allowances, 3 squares
   * off corners sharper than 39 degrees.
   */
  public static final double MITRE_LIMIT = 3;

  private Cutter() {}

  /**
   * The piece as it is cut.
   *
   * @param growthAlongWarp what all lines are stretched by along the warp, 1 or more, for cloth
   *     that shrinks once it is cut
   * @param growthAcross the same across the cloth. A piece that may lie either way, or on the bias,
   *     is stretched by the larger of the two both ways, so that it never ends up too small
   * @throws InputException if an allowance is more than a concave corner can take, or the piece
   *     sticks out past its fold edge
   */
  public static CutPiece cut(Piece drawn, double growthAlongWarp, double growthAcross) {
    Piece piece = FoldEdge.straightened(drawn);
    Outline cutting = new CuttingLine(piece).outline();
    CutPiece cut =
        new CutPiece(
            piece,
            cutting,
            sewing(piece),
            Notching.strokes(piece, cutting),
            Stream.concat(
                    piece.innerLines().stream(),
                    piece.edges().stream().flatMap(e -> e.intakeLines().stream()))
                .map(l -> new CutPiece.Drawn(l.name(), flattened(l.line())))
                .toList(),
            piece.fold().map(f -> FoldEdge.stroke(piece.edge(f), cutting)),
            piece.asks().marks().stream().collect(Collectors.toMap(Mark::words, m -> m.on(piece))));
    double larger = Math.max(growthAlongWarp, growthAcross);
    if (piece.grain().onlyAlong()) {
      return cut.stretched(growthAlongWarp, growthAcross);
    }
    return piece.grain().onlyAcross()
        ? cut.stretched(growthAcross, growthAlongWarp)
        : cut.stretched(larger, larger);
  }

  private static Outline sewing(Piece piece) {
    List<Point> ring = new ArrayList<>();
    for (Edge edge : piece.edges()) {
      ring.addAll(flattened(edge.line()));
    }
    return Outline.of(ring).withoutNeedless(CuttingLine.NEEDLESS_MM);
  }

  private static List<Point> flattened(Path line) {
    List<Point> points = new ArrayList<>();
    points.add(line.start());
    for (Segment segment : line.segments()) {
      List<Point> next = Offset.right(segment, 0, Run.FLATTENING_MM);
      points.addAll(next.subList(1, next.size()));
    }
    return points;
  }
}
