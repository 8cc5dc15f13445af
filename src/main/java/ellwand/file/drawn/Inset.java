package ellwand.file.drawn;

import ellwand.geometry.CurveFit;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.problem.InputException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Draws the sewing line inside a cutting line that includes an allowance. */
final class Inset {

  /** How true the sewing line is, mm: far finer than it is sewn. */
  private static final double TRUE_MM = 0.01;

  /** Places on a curve that are moved inward. */
  private static final int STEPS = 200;

  /** How many allowances a line may run on past its corner. */
  private static final double RUN_ON = 10;

  private Inset() {}

  /**
   * The edges beside those of a cutting line, closed.
   *
   * @param edges of the cutting line, in order
   * @param fold the edge that includes nothing
   * @throws InputException if the piece is too narrow for it
   */
  static List<Stretch> of(
      List<Stretch> edges, Optional<Stretch> fold, double mm, boolean clockwise) {
    List<List<Point>> lines = new ArrayList<>();
    for (Stretch edge : edges) {
      lines.add(beside(edge.path(), fold.filter(edge::equals).isPresent() ? 0 : mm, clockwise));
    }
    for (int i = 0; i < lines.size(); i++) {
      int next = (i + 1) % lines.size();
      if (lines.size() > 1) {
        meet(lines, i, next, mm);
      }
    }
    List<Stretch> inset = new ArrayList<>();
    int from = 0;
    for (int i = 0; i < edges.size(); i++) {
      List<Segment> fitted = CurveFit.through(distinct(lines.get(i)), TRUE_MM / 2);
      inset.add(new Stretch(edges.get(i).name(), from, fitted.size(), new Path(fitted)));
      from += fitted.size();
    }
    return inset;
  }

  /** Points of a line beside a path, on its inner side. */
  private static List<Point> beside(Path path, double mm, boolean clockwise) {
    List<Point> line = new ArrayList<>();
    for (Segment segment : path.segments()) {
      int steps = segment instanceof Segment.Cubic ? STEPS : 1;
      for (int i = 0; i <= steps; i++) {
        double t = (double) i / steps;
        Point inward = segment.direction(t).left().times(clockwise ? -mm : mm);
        line.add(segment.at(t).plus(inward));
      }
    }
    return distinct(line);
  }

  private static List<Point> distinct(List<Point> line) {
    List<Point> distinct = new ArrayList<>();
    for (Point p : line) {
      if (distinct.isEmpty() || distinct.get(distinct.size() - 1).distance(p) > 1e-6) {
        distinct.add(p);
      }
    }
    if (distinct.size() < 2) {
      throw tooNarrow();
    }
    return distinct;
  }

  private static InputException tooNarrow() {
    return InputException.of(
        "an edge of it is too short or too bent to take the allowance off its cutting line",
        "Draw the sewing line too, or say that it includes less");
  }

  /** Lets one line end and the next begin where they cross, or would if they ran on. */
  private static void meet(List<List<Point>> lines, int one, int next, double mm) {
    List<Point> a = lines.get(one);
    List<Point> b = lines.get(next);
    Point end = a.get(a.size() - 1);
    if (cut(lines, one, next, a, b)) {
      return;
    }
    if (end.distance(b.get(0)) <= TRUE_MM) {
      lines.set(next, joined(List.of(), end, b.subList(1, b.size())));
      return;
    }
    Point out = end.minus(a.get(a.size() - 2)).unit().times(RUN_ON * mm);
    Point in = b.get(1).minus(b.get(0)).unit().times(RUN_ON * mm);
    if (!cut(
        lines,
        one,
        next,
        joined(a, end.plus(out), List.of()),
        joined(List.of(), b.get(0).minus(in), b))) {
      throw tooNarrow();
    }
  }

  /** Cuts both off where they cross, if they do. */
  private static boolean cut(
      List<List<Point>> lines, int one, int next, List<Point> a, List<Point> b) {
    for (int i = a.size() - 1; i > 0; i--) {
      for (int k = 1; k < b.size(); k++) {
        Optional<Point> at = crossing(a.get(i - 1), a.get(i), b.get(k - 1), b.get(k));
        if (at.isPresent()) {
          lines.set(one, joined(a.subList(0, i), at.get(), List.of()));
          lines.set(next, joined(List.of(), at.get(), b.subList(k, b.size())));
          return true;
        }
      }
    }
    return false;
  }

  private static List<Point> joined(List<Point> before, Point at, List<Point> after) {
    List<Point> line = new ArrayList<>(before);
    line.add(at);
    line.addAll(after);
    return line;
  }

  private static Optional<Point> crossing(Point a, Point b, Point c, Point d) {
    Point along = b.minus(a);
    Point across = d.minus(c);
    double turn = along.cross(across);
    double first = c.minus(a).cross(across) / turn;
    double second = c.minus(a).cross(along) / turn;
    return turn != 0 && first >= 0 && first <= 1 && second >= 0 && second <= 1
        ? Optional.of(a.plus(along.times(first)))
        : Optional.empty();
  }
}
