package ellwand.pattern;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Draws a piece in another size.
 *
 * <p>Named points move by their rule, or stay; points without a name move with their two named
 * neighbours, by how far along the line they are between them. Both handles of a curve keep their
 * direction and grow with its chord, so that what is smooth or square to a fold stays so; where a
 * curve runs on smoothly from a straight line its handle turns with the line. A handle may have a
 * rule of its own ({@link GradeRule#curveFrom}). Notches keep their share of the edge. An inner
 * line moves as one by its rule, or each of its points like the outline near it.
 */
final class Grading {

  private final Draft drawn;
  private final Map<String, Point> shifts;
  private final int size;
  private final List<Segment> leaving = new ArrayList<>();
  private final List<Point> moves;

  /**
   * @param shiftsMm by name of a point or of an inner line
   */
  Grading(Draft drawn, Map<String, Point> shiftsMm) {
    this.drawn = drawn;
    this.shifts = shiftsMm;
    this.size = drawn.nodes().size();
    for (int i = 0; i < size; i++) {
      leaving.add(node(i + 1).from(node(i).at()));
    }
    this.moves = moves();
  }

  Draft draft() {
    List<Draft.Node> nodes = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      nodes.add(new Draft.Node(node(i).name(), place(i), arriving(i)));
    }
    Draft bare = with(nodes, List.of());
    return drawn.notches().isEmpty() ? bare : with(nodes, notches(bare.piece()));
  }

  private Draft with(List<Draft.Node> nodes, List<Notch> notches) {
    return new Draft(
        drawn.name(),
        nodes,
        drawn.namedEdges(),
        drawn.allowance(),
        drawn.fold(),
        drawn.grain(),
        notches,
        drawn.innerLines().stream().map(this::moved).toList(),
        drawn.cuts());
  }

  private Draft.Node node(int i) {
    return drawn.nodes().get(Math.floorMod(i, size));
  }

  private Segment leaving(int i) {
    return leaving.get(Math.floorMod(i, size));
  }

  private Point place(int i) {
    return node(i).at().plus(moves.get(Math.floorMod(i, size)));
  }

  private List<Point> moves() {
    List<Point> found = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      found.add(named(i) ? ruled(i) : between(i));
    }
    return found;
  }

  private boolean named(int i) {
    return node(i).name().isPresent();
  }

  private Point ruled(int i) {
    return shifts.getOrDefault(node(i).name().orElseThrow(), new Point(0, 0));
  }

  private Point between(int i) {
    int before = i;
    double gone = 0;
    while (!named(before) && before > i - size) {
      before--;
      gone += length(before);
    }
    int after = i;
    double left = 0;
    while (!named(after) && after < i + size) {
      left += length(after);
      after++;
    }
    return named(before)
        ? ruled(before).towards(ruled(after), gone / (gone + left))
        : new Point(0, 0);
  }

  private double length(int i) {
    return new Path(List.of(leaving(i))).length();
  }

  private Optional<Draft.Curve> arriving(int i) {
    if (!(leaving(i - 1) instanceof Segment.Cubic curve)) {
      return Optional.empty();
    }
    double growth = place(i).distance(place(i - 1)) / curve.end().distance(curve.start());
    Point first = curve.control1().minus(curve.start()).times(growth);
    Point second = curve.control2().minus(curve.end()).times(growth);
    if (leaving(i - 2) instanceof Segment.Line line && smooth(line, curve)) {
      first = turned(first, line, place(i - 1).minus(place(i - 2)));
    }
    if (leaving(i) instanceof Segment.Line line && smooth(curve, line)) {
      second = turned(second, line, place(i + 1).minus(place(i)));
    }
    return Optional.of(
        new Draft.Curve(
            ruled(node(i - 1).name().map(GradeRule::curveFrom), curve.control1())
                .orElse(place(i - 1).plus(first)),
            ruled(node(i).name().map(GradeRule::curveTo), curve.control2())
                .orElse(place(i).plus(second))));
  }

  /** Where a handle lies that has a rule of its own. */
  private Optional<Point> ruled(Optional<String> handle, Point drawn) {
    return handle.map(shifts::get).map(drawn::plus);
  }

  private static boolean smooth(Segment before, Segment after) {
    Point in = before.direction(1);
    Point out = after.direction(0);
    double turn = Math.toDegrees(Math.atan2(in.cross(out), in.dot(out)));
    return Math.abs(turn) < DraftOutline.CORNER_DEGREES;
  }

  /** Turned as the line has turned. */
  private static Point turned(Point handle, Segment.Line line, Point now) {
    Point was = line.direction(0);
    Point is = now.unit();
    return handle.times(was.dot(is)).plus(handle.left().times(was.cross(is)));
  }

  private List<Notch> notches(Piece graded) {
    Map<String, Double> lengths = new HashMap<>();
    with(drawn.nodes(), List.of())
        .piece()
        .edges()
        .forEach(e -> lengths.put(e.name(), e.line().length()));
    return drawn.notches().stream()
        .map(
            n ->
                lengths.containsKey(n.edge())
                    ? moved(n, graded.edge(n.edge()).line().length() / lengths.get(n.edge()))
                    : n)
        .toList();
  }

  private static Notch moved(Notch notch, double growth) {
    return new Notch(notch.edge(), notch.atMm() * growth, notch.strokes(), notch.depthMm());
  }

  private InnerLine moved(InnerLine line) {
    Point own = shifts.get(line.name());
    return new InnerLine(
        line.name(), new Path(line.line().segments().stream().map(s -> moved(s, own)).toList()));
  }

  private Segment moved(Segment segment, Point own) {
    if (segment instanceof Segment.Cubic c) {
      return new Segment.Cubic(
          moved(c.start(), own),
          moved(c.control1(), own),
          moved(c.control2(), own),
          moved(c.end(), own));
    }
    return new Segment.Line(moved(segment.start(), own), moved(segment.end(), own));
  }

  /** By its rule, or like the outline's points, each the more the nearer it is. */
  private Point moved(Point inside, Point own) {
    if (own != null) {
      return inside.plus(own);
    }
    Point sum = new Point(0, 0);
    double weights = 0;
    for (int i = 0; i < size; i++) {
      double distance = node(i).at().distance(inside);
      if (distance < Draft.SAME_MM) {
        return place(i);
      }
      double weight = 1 / (distance * distance);
      sum = sum.plus(moves.get(i).times(weight));
      weights += weight;
    }
    return inside.plus(sum.times(1 / weights));
  }
}
