package ellwand.pattern.block;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.pattern.Draft;
import ellwand.pattern.Notch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Draws a block's outline edge by edge, from point to point. */
final class Pencil {

  /** Along the grain, towards the top. */
  static final Point UP = new Point(1, 0);

  /** Across the grain, away from the centre of a half piece. */
  static final Point OUT = new Point(0, 1);

  /** Makes a cubic curve a quarter of a circle to 0.03 % of its radius: 4/3 (sqrt 2 - 1). */
  private static final double ROUND = 4.0 / 3 * (Math.sqrt(2) - 1);

  /** Handles of a free curve, as shares of its chord. */
  private static final double SOFT = 0.36;

  private final List<Draft.Node> nodes = new ArrayList<>();
  private final List<Draft.NamedEdge> edges = new ArrayList<>();
  private final List<Notch> notches = new ArrayList<>();
  private Optional<String> fold = Optional.empty();
  private String edge;
  private int edgeStart;

  Pencil(String point, double x, double y) {
    nodes.add(new Draft.Node(Optional.of(point), new Point(x, y), Optional.empty()));
  }

  private Point here() {
    return nodes.get(nodes.size() - 1).at();
  }

  /** What is drawn from here on, up to the next edge, is this edge. */
  Pencil edge(String name) {
    endEdge(nodes.size() - 1);
    edge = name;
    edgeStart = nodes.size() - 1;
    return this;
  }

  private void endEdge(int node) {
    if (edge != null) {
      edges.add(
          new Draft.NamedEdge(edge, point(edgeStart), point(node), OptionalDouble.empty(), false));
    }
  }

  private String point(int node) {
    return nodes.get(node).name().orElseThrow();
  }

  Pencil line(String point, double x, double y) {
    nodes.add(new Draft.Node(Optional.of(point), new Point(x, y), Optional.empty()));
    return this;
  }

  /** A curve with given control points. */
  Pencil curve(Optional<String> point, Point to, Point control1, Point control2) {
    nodes.add(new Draft.Node(point, to, Optional.of(new Draft.Curve(control1, control2))));
    return this;
  }

  /** A curve between two directions, as round as a quarter of a circle or an ellipse. */
  Pencil round(Optional<String> point, Point to, Point leaving, Point arriving) {
    Point way = to.minus(here());
    double across = leaving.cross(arriving);
    double ahead = way.cross(arriving) / across;
    double back = leaving.cross(way) / across;
    return curve(
        point,
        to,
        here().plus(leaving.times(ROUND * ahead)),
        to.minus(arriving.times(ROUND * back)));
  }

  /** A curve between two directions that bends no more than it must. */
  Pencil soft(Optional<String> point, Point to, Point leaving, Point arriving) {
    double handle = SOFT * here().distance(to);
    return curve(point, to, here().plus(leaving.times(handle)), to.minus(arriving.times(handle)));
  }

  /** A notch on the edge just drawn, at a share of it from its first point. */
  Pencil notch(double share, int strokes) {
    return notchMm(share * drawn().length(), strokes);
  }

  /** A notch on the edge just drawn, so many mm from its first point. */
  Pencil notchMm(double mm, int strokes) {
    notches.add(new Notch(edge, mm, strokes, Notch.USUAL_DEPTH_MM));
    return this;
  }

  /** The edge as far as it is drawn. */
  Path drawn() {
    List<Segment> segments = new ArrayList<>();
    for (int i = edgeStart + 1; i < nodes.size(); i++) {
      segments.add(nodes.get(i).from(nodes.get(i - 1).at()));
    }
    return new Path(segments);
  }

  /** Back to the first point along a straight edge. */
  BlockLines closed(String lastEdge) {
    edge(lastEdge);
    endEdge(0);
    return new BlockLines(nodes, edges, fold, notches);
  }

  /** Back to the first point along the edge at which a half piece opens. */
  BlockLines closedOnFold(String lastEdge) {
    fold = Optional.of(lastEdge);
    return closed(lastEdge);
  }
}
