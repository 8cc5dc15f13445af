package ellwand.trace;

import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * The border of a paper piece as it was traced: points one after another, counter-clockwise, mm, y
 * up.
 *
 * @param points the first not repeated at the end
 */
public record Rim(List<Point> points) {

  public Rim {
    points = Outline.of(points).points();
  }

  int size() {
    return points.size();
  }

  /** Counted round and round. */
  Point at(int i) {
    return points.get(Math.floorMod(i, points.size()));
  }

  double lengthMm() {
    double sum = 0;
    for (int i = 0; i < points.size(); i++) {
      sum += at(i).distance(at(i + 1));
    }
    return sum;
  }

  public Box box() {
    return Box.around(points);
  }

  /** The same line with points at even distances, near to {@code stepMm}. */
  public Rim even(double stepMm) {
    double length = lengthMm();
    int count = Math.max(8, (int) Math.round(length / stepMm));
    List<Point> even = new ArrayList<>(count);
    double step = length / count;
    double before = 0;
    for (int i = 0; i < points.size() && even.size() < count; i++) {
      double stretch = at(i).distance(at(i + 1));
      while (even.size() < count && even.size() * step <= before + stretch) {
        even.add(at(i).towards(at(i + 1), (even.size() * step - before) / stretch));
      }
      before += stretch;
    }
    return new Rim(even);
  }

  /** The points from one number to another, both included, {@code from <= to}. */
  List<Point> run(int from, int to) {
    List<Point> run = new ArrayList<>(to - from + 1);
    for (int i = from; i <= to; i++) {
      run.add(at(i));
    }
    return run;
  }
}
