package ellwand.cutting;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.pattern.Edge;
import ellwand.pattern.FoldedEdge;
import ellwand.problem.InputException;
import java.util.ArrayList;
import java.util.List;

/**
 * The line beside an edge with darts, pleats or tucks: drawn beside the folded edge, cut through at
 * the legs and laid out flat again. So what is folded away ends with the cloth that it lies on.
 */
final class FoldedRun {

  private static final double SAME_MM = 1e-6;

  private FoldedRun() {}

  /** As one run, which begins and ends where the edge does. */
  static Run of(Edge edge) {
    FoldedEdge folded = edge.folded();
    List<Point> beside =
        beside(Run.asDrawn(new Edge(edge.name(), folded.line(), edge.allowanceMm(), false)));
    // A leg may leave aslant, so that it meets the line only past its end.
    double reach = Cutter.MITRE_LIMIT * edge.allowanceMm();
    List<Point> line = new ArrayList<>(beside);
    if (reach > 0) {
      line.add(0, past(beside.get(1), beside.get(0), reach));
      int n = beside.size();
      line.add(past(beside.get(n - 2), beside.get(n - 1), reach));
    }
    List<Point> flat = folded.unfolded(path(line)).flattened(Run.FLATTENING_MM);
    Path sewing = edge.line();
    return new Run(
        edge,
        sewing.start(),
        sewing.end(),
        sewing.startDirection(),
        sewing.endDirection(),
        reach > 0 ? ended(flat, line, edge) : flat);
  }

  private static List<Point> beside(List<Run> runs) {
    List<Point> line = new ArrayList<>();
    Corner before = Corner.NONE;
    for (int i = 0; i < runs.size(); i++) {
      Corner after =
          i + 1 < runs.size()
              ? Corner.between(Arm.end(runs.get(i)), Arm.start(runs.get(i + 1)))
              : Corner.NONE;
      line.addAll(runs.get(i).between(before, after));
      line.addAll(after.points());
      before = after;
    }
    return line;
  }

  private static Point past(Point before, Point end, double mm) {
    return end.plus(end.minus(before).unit().times(mm));
  }

  private static Path path(List<Point> points) {
    List<Segment> segments = new ArrayList<>();
    for (int i = 1; i < points.size(); i++) {
      segments.add(new Segment.Line(points.get(i - 1), points.get(i)));
    }
    return new Path(segments);
  }

  /** Without what was added at both ends. */
  private static List<Point> ended(List<Point> flat, List<Point> line, Edge edge) {
    double first = line.get(0).distance(line.get(1));
    double kept = flat.get(0).distance(flat.get(1));
    int n = line.size();
    double last = line.get(n - 2).distance(line.get(n - 1));
    int m = flat.size();
    double keptLast = flat.get(m - 2).distance(flat.get(m - 1));
    if (kept < first - SAME_MM || keptLast < last - SAME_MM) {
      throw InputException.of(
          "its allowance of %.1f mm is more than there is room for between %s and the corner"
              .formatted(edge.allowanceMm(), edge.intakes().get(0).name()),
          "Make the allowance narrower, or move it farther from the corner");
    }
    return flat.subList(1, m - 1);
  }
}
