package ellwand.cutting;

import ellwand.geometry.Offset;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.pattern.Edge;
import java.util.ArrayList;
import java.util.List;

/**
 * A stretch of an edge without corners, and the line beside it.
 *
 * @param beside at the edge's allowance outside the sewing line, before corners are made
 * @param along direction of travel at the start
 * @param leaving direction of travel at the end
 */
record Run(Edge edge, Point start, Point end, Point along, Point leaving, List<Point> beside) {

  /** How far a curve may stray from the straight stretches that stand for it, mm. */
  static final double FLATTENING_MM = 0.07;

  /** Lines that bend less than this, degrees, where they join make one run. */
  private static final double CORNER_DEGREES = 10;

  Run {
    beside = List.copyOf(beside);
  }

  /** The runs of an edge from its start to its end, at least one. */
  static List<Run> of(Edge edge) {
    return edge.intakes().isEmpty() ? asDrawn(edge) : List.of(FoldedRun.of(edge));
  }

  /** The runs of an edge on which nothing is folded away. */
  static List<Run> asDrawn(Edge edge) {
    List<Run> runs = new ArrayList<>();
    List<Segment> smooth = new ArrayList<>();
    for (Segment segment : edge.line().segments()) {
      if (segment instanceof Segment.Line && segment.start().distance(segment.end()) == 0) {
        continue;
      }
      if (!smooth.isEmpty() && bends(smooth.get(smooth.size() - 1), segment)) {
        runs.add(smooth(edge, smooth));
        smooth.clear();
      }
      smooth.add(segment);
    }
    runs.add(smooth(edge, smooth));
    return runs;
  }

  /** What two corners leave of the line beside it. */
  List<Point> between(Corner before, Corner after) {
    int last = beside.size() - 1;
    List<Point> kept = new ArrayList<>();
    for (int k = 0; k <= last; k++) {
      if (k > before.offSecond() && last - k > after.offFirst()) {
        kept.add(beside.get(k));
      }
    }
    return kept;
  }

  private static boolean bends(Segment before, Segment after) {
    double cos = before.direction(1).dot(after.direction(0));
    return cos < Math.cos(Math.toRadians(CORNER_DEGREES));
  }

  private static Run smooth(Edge edge, List<Segment> segments) {
    Segment first = segments.get(0);
    Segment last = segments.get(segments.size() - 1);
    List<Point> beside = new ArrayList<>();
    Segment before = null;
    for (Segment segment : segments) {
      List<Point> next = Offset.right(segment, edge.allowanceMm(), FLATTENING_MM);
      if (before != null) {
        beside.remove(beside.size() - 1);
        beside.add(
            mitre(segment.start(), before.direction(1), segment.direction(0), edge.allowanceMm()));
        next = next.subList(1, next.size());
      }
      beside.addAll(next);
      before = segment;
    }
    return new Run(edge, first.start(), last.end(), first.direction(0), last.direction(1), beside);
  }

  /** Where two lines at the same distance from two that meet at a corner meet each other. */
  static Point mitre(Point corner, Point before, Point after, double mm) {
    Point outside = before.left().plus(after.left()).times(-1);
    return corner.plus(outside.times(mm / (1 + before.dot(after))));
  }
}
