package ellwand.file.interchange;

import ellwand.geometry.CurveFit;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Which corners of a piece's polylines are turn points, and which only lie on a curve. */
final class CurvePoints {

  /** For files that do not say. */
  static final CurvePoints NONE = new CurvePoints(List.of(), List.of());

  private static final double SAME = 1e-3;

  private record Cell(long x, long y) {}

  private final Set<Cell> turns = new HashSet<>();
  private final Set<Cell> curves = new HashSet<>();

  CurvePoints(List<Point> turns, List<Point> curves) {
    turns.forEach(p -> this.turns.add(cell(p, 0, 0)));
    curves.forEach(p -> this.curves.add(cell(p, 0, 0)));
  }

  private static Cell cell(Point p, int right, int up) {
    return new Cell(Math.round(p.x() / SAME) + right, Math.round(p.y() / SAME) + up);
  }

  private static boolean has(Set<Cell> cells, Point p) {
    for (int right = -1; right <= 1; right++) {
      for (int up = -1; up <= 1; up++) {
        if (cells.contains(cell(p, right, up))) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean onCurve(Point p) {
    return has(curves, p) && !has(turns, p);
  }

  /** Whether any of them lies on a curve. */
  boolean curve(List<Point> corners) {
    return corners.stream().anyMatch(this::onCurve);
  }

  /**
   * Lines and curves through them, from turn point to turn point.
   *
   * @param closed whether the last is followed by the first
   */
  List<Segment> segments(List<Point> corners, boolean closed, double tolerance) {
    List<Point> line = new ArrayList<>();
    int first = 0;
    while (closed && first < corners.size() - 1 && onCurve(corners.get(first))) {
      first++;
    }
    for (int i = 0; i < corners.size() + (closed ? 1 : 0); i++) {
      Point next = corners.get((first + i) % corners.size());
      if (line.isEmpty() || line.get(line.size() - 1).distance(next) > SAME / 1000) {
        line.add(next);
      }
    }
    List<Segment> segments = new ArrayList<>();
    int from = 0;
    for (int i = 1; i < line.size(); i++) {
      if (i == line.size() - 1 || !onCurve(line.get(i))) {
        segments.addAll(CurveFit.through(line.subList(from, i + 1), tolerance));
        from = i;
      }
    }
    return segments;
  }
}
