package ellwand.pattern.alter;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.pattern.Workpiece;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A line from mark to mark.
 *
 * @param leaves how a curve leaves the first mark; a fold on which that lies is left square unless
 *     said otherwise
 */
public record DrawnLine(
    String from,
    String to,
    List<String> through,
    Redraw.Shape shape,
    Optional<Manner> leaves,
    Optional<Manner> arrives) {

  public DrawnLine {
    through = List.copyOf(through);
  }

  /**
   * The line on a piece.
   *
   * @throws InputException if a mark is not there, or two after one another are in the same place
   */
  Path on(Workpiece piece) {
    List<Point> points =
        Stream.of(Stream.of(from), through.stream(), Stream.of(to))
            .flatMap(s -> s)
            .map(piece::mark)
            .map(piece::snapped)
            .toList();
    return drawn(piece, points, leaves, arrives, shape);
  }

  static Path drawn(
      Workpiece piece,
      List<Point> points,
      Optional<Manner> leaves,
      Optional<Manner> arrives,
      Redraw.Shape shape) {
    for (int i = 1; i < points.size(); i++) {
      if (points.get(i).distance(points.get(i - 1)) < Workpiece.ON_EDGE_MM) {
        throw new InputException(
            Problem.inPiece(
                piece.name(), "two marks of the new line are in the same place", "Leave one out"));
      }
    }
    if (shape == Redraw.Shape.LINE) {
      return FrenchCurve.lines(points);
    }
    int last = points.size() - 1;
    return FrenchCurve.through(
        points,
        direction(piece, leaves, points.get(0), points.get(1).minus(points.get(0))),
        direction(piece, arrives, points.get(last), points.get(last).minus(points.get(last - 1))));
  }

  private static Optional<Point> direction(
      Workpiece piece, Optional<Manner> manner, Point at, Point way) {
    List<String> edges = new ArrayList<>(piece.edgesAt(at));
    Optional<String> fold = piece.fold().filter(edges::contains);
    return manner
        .orElse(fold.map(Manner::squareTo).orElse(Manner.FREE))
        .direction(piece, at)
        .map(d -> d.dot(way) < 0 ? d.times(-1) : d);
  }
}
