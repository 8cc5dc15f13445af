package ellwand.file.pdf;

import ellwand.file.drawn.DrawnLine;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Tells how pages lie that each draw the whole of a pattern and clip it: by the lines that two
 * pages have in common.
 */
final class SharedLines {

  /** Shorter lines are page furniture, which every page has at the same place, mm. */
  private static final double LEAST_MM = 100;

  /** Shapes are alike, and places the same, within this, mm. */
  private static final double SAME_MM = 0.1;

  private final Map<String, Point> starts = new HashMap<>();

  SharedLines(Pages.Page first) {
    for (DrawnLine line : first.lines()) {
      if (line.path().length() >= LEAST_MM) {
        // Where a shape stands twice it tells nothing.
        starts.merge(shape(line), line.path().start(), (a, b) -> new Point(Double.NaN, 0));
      }
    }
  }

  private static String shape(DrawnLine line) {
    StringBuilder shape = new StringBuilder();
    List<Segment> segments = line.path().segments();
    shape.append(segments.size());
    for (int i = 0; i < segments.size(); i += Math.max(1, segments.size() / 8)) {
      Point at = segments.get(i).at(0.5).minus(line.path().start());
      shape.append(' ').append(Math.round(at.x() * 2)).append(',').append(Math.round(at.y() * 2));
    }
    return shape.toString();
  }

  /** How far a page is to be shifted to lie beside the first; by the longest lines that agree. */
  Optional<Point> shift(Pages.Page page) {
    Map<String, Double> lengths = new HashMap<>();
    Map<String, Point> shifts = new HashMap<>();
    for (DrawnLine line : page.lines()) {
      Point start = starts.get(shape(line));
      if (start != null && !Double.isNaN(start.x()) && line.path().length() >= LEAST_MM) {
        Point shift = start.minus(line.path().start());
        if (shift.norm() > LEAST_MM / 2) {
          String key = Math.round(shift.x() / SAME_MM) + "," + Math.round(shift.y() / SAME_MM);
          lengths.merge(key, line.path().length(), Double::sum);
          shifts.putIfAbsent(key, shift);
        }
      }
    }
    return lengths.entrySet().stream()
        .max(Map.Entry.comparingByValue())
        .map(Map.Entry::getKey)
        .map(shifts::get);
  }
}
