package ellwand.pattern.alter;

import ellwand.geometry.Point;
import ellwand.pattern.Intake;
import ellwand.pattern.WorkEdge;
import ellwand.pattern.Workpiece;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.List;

/**
 * A dart closed by pivoting part of the piece round its point, so that the piece opens at another
 * place by the same angle.
 *
 * @param piece afterwards; the edge that opens runs straight across
 * @param edge the name of that edge
 * @param first where the opening begins, counter-clockwise
 * @param second where it ends
 * @param point about which was turned
 */
record Pivot(Workpiece piece, String edge, Point first, Point second, Point point) {

  /**
   * Closes a dart.
   *
   * @param to a mark on the outline, at no corner
   * @throws InputException if that cannot be
   */
  static Pivot of(Workpiece piece, Darts.Found found, String to) {
    Intake dart = found.dart();
    WorkEdge without = found.edge().with(found.edge().edge().without(dart));
    Workpiece flat = Darts.with(piece, without);
    Perimeter outline = new Perimeter(flat);
    double first = outline.place(without.name(), without.line().nearest(dart.first().outer()));
    double second = outline.place(without.name(), without.line().nearest(dart.second().outer()));
    double opens = outline.place(to);
    String edge = Opening.growing(flat, opens, to);
    if (opens >= first - Workpiece.ON_EDGE_MM && opens <= second + Workpiece.ON_EDGE_MM) {
      throw new InputException(
          Problem.onEdge(
              piece.name(),
              edge,
              to + " lies in the mouth of " + dart.name(),
              "Name a mark elsewhere"));
    }
    Point point = dart.first().inner();
    Point at = outline.at(opens);
    Opening.Moved moved =
        new Opening(flat, second, opens, opens, first, List.of(at, point, dart.second().outer()))
            .moved(dart.closing());
    return new Pivot(
        moved.piece(), edge, moved.ofPart().apply(at), moved.ofRest().apply(at), point);
  }
}
