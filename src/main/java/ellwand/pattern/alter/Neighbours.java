package ellwand.pattern.alter;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.pattern.WorkEdge;
import ellwand.pattern.Workpiece;
import java.util.ArrayList;
import java.util.List;

/** Brings the edges beside a new line to its ends. */
final class Neighbours {

  private Neighbours() {}

  /**
   * Lets a row of edges end at a place: cuts it off where it passes there, or draws its last edge
   * on to it.
   */
  static void endAt(List<WorkEdge> row, Point place) {
    for (int i = row.size() - 1; i >= 0; i--) {
      WorkEdge edge = row.get(i);
      if (edge.line().passes(place, Workpiece.ON_EDGE_MM)) {
        double mm = edge.line().nearest(place);
        row.subList(i + 1, row.size()).clear();
        if (mm < Workpiece.ON_EDGE_MM) {
          row.remove(i);
        } else {
          row.set(i, endingAt(edge.between(0, mm), place));
        }
        return;
      }
    }
    if (!row.isEmpty()) {
      WorkEdge last = row.get(row.size() - 1);
      row.set(row.size() - 1, endingAt(last, place));
    }
  }

  /** The same for the beginning of a row. */
  static void startAt(List<WorkEdge> row, Point place) {
    List<WorkEdge> back = new ArrayList<>();
    row.forEach(e -> back.add(0, e.turnedOver(p -> p)));
    endAt(back, place);
    row.clear();
    back.forEach(e -> row.add(0, e.turnedOver(p -> p)));
  }

  private static WorkEdge endingAt(WorkEdge edge, Point place) {
    return edge.along(endingAt(edge.line(), place));
  }

  /** The line with its end moved; its last line or curve goes with it and leaves as before. */
  static Path endingAt(Path line, Point place) {
    List<Segment> segments = new ArrayList<>(line.segments());
    int last = segments.size() - 1;
    Segment moved = segments.get(last);
    if (moved.start().distance(place) < Workpiece.ON_EDGE_MM && last > 0) {
      segments.remove(last);
      return endingAt(new Path(segments), place);
    }
    Point shift = place.minus(moved.end());
    segments.set(
        last,
        moved instanceof Segment.Cubic c
            ? new Segment.Cubic(c.start(), c.control1(), c.control2().plus(shift), place)
            : new Segment.Line(moved.start(), place));
    return new Path(segments);
  }
}
