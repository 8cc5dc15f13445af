package ellwand.pattern.alter;

import ellwand.geometry.Point;
import ellwand.pattern.WorkEdge;
import ellwand.pattern.Workpiece;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.List;

/** The outline of a piece, measured all the way round from the start of its first edge. */
final class Ring {

  private final Workpiece piece;
  private final double[] starts;
  private final double length;

  Ring(Workpiece piece) {
    this.piece = piece;
    this.starts = new double[piece.edges().size()];
    double sum = 0;
    for (int i = 0; i < starts.length; i++) {
      starts[i] = sum;
      sum += piece.edges().get(i).line().length();
    }
    this.length = sum;
  }

  /**
   * Where a mark lies, mm.
   *
   * @param mark its name
   * @throws InputException if it does not lie on the outline
   */
  double at(Point place, String mark) {
    for (int i = 0; i < starts.length; i++) {
      WorkEdge edge = piece.edges().get(i);
      if (edge.line().passes(place, Workpiece.ON_EDGE_MM)) {
        double at = starts[i] + edge.line().nearest(place);
        return at > length - 1e-6 ? 0 : at;
      }
    }
    throw new InputException(
        Problem.inPiece(
            piece.name(),
            "mark " + mark + " does not lie on the outline",
            "Mark a place on an edge: {mark: .., on: .., at: ..}"));
  }

  /** The edges from one place to another, counter-clockwise, those at the ends cut off. */
  List<WorkEdge> between(double fromMm, double toMm) {
    List<WorkEdge> part = new ArrayList<>();
    double to = toMm > fromMm ? toMm : toMm + length;
    int many = starts.length;
    for (int i = 0; i < 2 * many; i++) {
      double start = starts[i % many] + (i >= many ? length : 0);
      WorkEdge edge = piece.edges().get(i % many);
      double own = edge.line().length();
      double a = Math.max(0, fromMm - start);
      double b = Math.min(own, to - start);
      if (b - a > Workpiece.ON_EDGE_MM) {
        WorkEdge cut = a == 0 && b == own ? edge : edge.between(a, b);
        int last = part.size() - 1;
        // The edge that the way round begins within comes back at its end.
        if (last >= 0 && part.get(last).name().equals(cut.name())) {
          part.set(last, part.get(last).then(cut));
        } else {
          part.add(cut);
        }
      }
    }
    return part;
  }
}
