package ellwand.file.drawn;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.pattern.Draft;
import java.util.ArrayList;
import java.util.List;

/**
 * The outline of a piece in one size. Points are counted round it, on from the last with the first.
 *
 * @param nodes in order, the first drawn to from the last
 * @param turns numbers of those that each size has, in order
 */
public record SizedOutline(List<Draft.Node> nodes, List<Integer> turns) {

  public SizedOutline {
    nodes = List.copyOf(nodes);
    turns = List.copyOf(turns);
  }

  /** What is drawn from a point to the next. */
  Segment leaving(int i) {
    Draft.Node from = nodes.get(Math.floorMod(i, nodes.size()));
    return nodes.get(Math.floorMod(i + 1, nodes.size())).from(from.at());
  }

  /** From its k-th turn point to the next. */
  Path stretch(int k) {
    int from = number(k);
    int steps =
        turns.size() == 1 ? nodes.size() : Math.floorMod(number(k + 1) - from, nodes.size());
    List<Segment> line = new ArrayList<>();
    for (int i = 0; i < steps; i++) {
      line.add(leaving(from + i));
    }
    return new Path(line);
  }

  /** Which of its turn points stands for another's first: so that all together move least. */
  int standingFor(SizedOutline other) {
    Point shift = middle().minus(other.middle());
    int best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int first = 0; first < turns.size(); first++) {
      double sum = 0;
      for (int k = 0; k < turns.size() && sum < least; k++) {
        Point off = turn(first + k).minus(other.turn(k)).minus(shift);
        sum += off.dot(off);
      }
      if (sum < least) {
        least = sum;
        best = first;
      }
    }
    return best;
  }

  private int number(int k) {
    return turns.get(Math.floorMod(k, turns.size()));
  }

  private Point turn(int k) {
    return nodes.get(number(k)).at();
  }

  private Point middle() {
    Point sum = new Point(0, 0);
    for (int k = 0; k < turns.size(); k++) {
      sum = sum.plus(turn(k));
    }
    return sum.times(1.0 / turns.size());
  }
}
