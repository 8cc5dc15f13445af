package ellwand.pattern.alter;

import ellwand.geometry.Point;
import ellwand.pattern.WorkEdge;
import ellwand.pattern.Workpiece;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The outline of a piece, run through counter-clockwise. Places on it are measured from where its
 * first edge starts, mm.
 */
final class Perimeter {

  private static final double FLATTENING_MM = 0.01;

  private final Workpiece piece;
  private final double[] starts;

  Perimeter(Workpiece piece) {
    this.piece = piece;
    starts = new double[piece.edges().size() + 1];
    for (int i = 0; i < piece.edges().size(); i++) {
      starts[i + 1] = starts[i] + piece.edges().get(i).line().length();
    }
  }

  double length() {
    return starts[starts.length - 1];
  }

  /** So many mm along the line of an edge. */
  double place(String edge, double mm) {
    return starts[piece.index(edge)] + mm;
  }

  /**
   * Where a mark lies on the outline.
   *
   * @throws InputException if it does not
   */
  double place(String mark) {
    return place(piece.mark(mark), mark);
  }

  /**
   * Where a point lies on the outline.
   *
   * @param mark that marks it
   * @throws InputException if it does not
   */
  double place(Point at, String mark) {
    return place(at)
        .orElseThrow(
            () ->
                new InputException(
                    Problem.inPiece(
                        piece.name(),
                        "mark " + mark + " does not lie on its outline",
                        "Mark a place on an edge: {mark: " + mark + ", on: .., at: ..}")));
  }

  /** Where a point lies on the outline, if it does. */
  OptionalDouble place(Point at) {
    for (int i = 0; i < piece.edges().size(); i++) {
      WorkEdge edge = piece.edges().get(i);
      if (edge.line().passes(at, Workpiece.ON_EDGE_MM)) {
        return OptionalDouble.of(starts[i] + edge.line().nearest(at));
      }
    }
    return OptionalDouble.empty();
  }

  Point at(double place) {
    WorkEdge edge = edge(place);
    return edge.line().at(place - starts[piece.index(edge.name())]);
  }

  /** The edge on which a place lies; at a corner that which begins there. */
  WorkEdge edge(double place) {
    int i = piece.edges().size() - 1;
    while (i > 0 && starts[i] > place + Workpiece.ON_EDGE_MM) {
      i--;
    }
    return piece.edges().get(i);
  }

  /** Whether two edges meet at a place. */
  boolean corner(double place) {
    for (double start : starts) {
      if (Math.abs(start - place) <= Workpiece.ON_EDGE_MM) {
        return true;
      }
    }
    return false;
  }

  /** The edges between two places, the first and last as far as they lie between. */
  List<WorkEdge> stretch(double from, double to) {
    List<WorkEdge> parts = new ArrayList<>();
    for (int i = 0; i < piece.edges().size(); i++) {
      WorkEdge edge = piece.edges().get(i);
      double start = Math.max(from, starts[i]);
      double end = Math.min(to, starts[i + 1]);
      if (end - start <= Workpiece.ON_EDGE_MM) {
        continue;
      }
      boolean whole =
          start - starts[i] <= Workpiece.ON_EDGE_MM && starts[i + 1] - end <= Workpiece.ON_EDGE_MM;
      try {
        parts.add(whole ? edge : edge.between(start - starts[i], end - starts[i]));
      } catch (InputException e) {
        throw new InputException(
            e.problems().stream()
                .map(p -> Problem.onEdge(piece.name(), edge.name(), p.what(), p.remedy()))
                .toList());
      }
    }
    return parts;
  }

  /** The edges from a place counter-clockwise to another, which may lie before it. */
  List<WorkEdge> between(double from, double to) {
    if (from < to) {
      return stretch(from, to);
    }
    List<WorkEdge> parts = stretch(from, length());
    for (WorkEdge edge : stretch(0, to)) {
      int last = parts.size() - 1;
      // A piece of one edge all round goes on where that begins.
      if (last >= 0 && parts.get(last).name().equals(edge.name())) {
        parts.set(last, parts.get(last).then(edge));
      } else {
        parts.add(edge);
      }
    }
    return parts;
  }

  /** The line from a place counter-clockwise to another, in points. */
  List<Point> line(double from, double to) {
    List<Point> points = new ArrayList<>();
    for (WorkEdge part : between(from, to)) {
      points.addAll(part.line().flattened(FLATTENING_MM));
    }
    return points;
  }
}
