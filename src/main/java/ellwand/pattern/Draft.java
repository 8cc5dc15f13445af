package ellwand.pattern;

import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A piece as people describe it: points in order round the sewing line, either way, and stretches
 * of it that have a name. {@link #piece} turns it into a {@link Piece}.
 *
 * @param nodes two or more, each drawn to from the one before, the first from the last
 * @param namedEdges what they leave over is named after its points
 * @param allowance of every edge that has none of its own, except the fold where it is one
 * @param fold name of the edge at which a half piece opens, if it is one
 * @param notches {@link Notch#atMm} measured from the edge's first point in drawn direction
 */
public record Draft(
    String name,
    List<Node> nodes,
    List<NamedEdge> namedEdges,
    Allowance allowance,
    Optional<String> fold,
    Grain grain,
    List<Notch> notches,
    List<InnerLine> innerLines,
    List<Cut> cuts) {

  /** Points nearer than this are the same place, mm. */
  static final double SAME_MM = 1e-6;

  /**
   * A point of the outline.
   *
   * @param arriving the curve that leads here from the point before; a straight line if empty
   */
  public record Node(Optional<String> name, Point at, Optional<Curve> arriving) {

    /**
     * The line that leads here.
     *
     * @throws InputException if it starts where it ends
     */
    public Segment from(Point start) {
      if (start.distance(at) < SAME_MM) {
        throw InputException.of(
            "two points after one another are in the same place", "Leave one out");
      }
      return arriving
          .<Segment>map(c -> new Segment.Cubic(start, c.control1(), c.control2(), at))
          .orElseGet(() -> new Segment.Line(start, at));
    }
  }

  /** The two control points of a cubic curve, in drawn direction. */
  public record Curve(Point control1, Point control2) {}

  /**
   * A named edge.
   *
   * @param from the node at which it starts, in drawn direction
   * @param to the node at which it ends; the same node for the whole way round
   * @param allowance its own, perhaps in some cloths only
   * @param turnedBack see {@link Edge}
   */
  public record NamedEdge(
      String name, String from, String to, Optional<Allowance> allowance, boolean turnedBack) {

    /** One whose own allowance, if it has one, is the same in every cloth, mm, 0 or more. */
    public NamedEdge(
        String name, String from, String to, OptionalDouble allowanceMm, boolean turnedBack) {
      this(name, from, to, allowanceMm.stream().mapToObj(Allowance::of).findFirst(), turnedBack);
    }
  }

  /** One with the same allowance in every cloth, mm, 0 or more. */
  public Draft(
      String name,
      List<Node> nodes,
      List<NamedEdge> namedEdges,
      double allowanceMm,
      Optional<String> fold,
      Grain grain,
      List<Notch> notches,
      List<InnerLine> innerLines,
      List<Cut> cuts) {
    this(
        name, nodes, namedEdges, Allowance.of(allowanceMm), fold, grain, notches, innerLines, cuts);
  }

  public Draft {
    nodes = List.copyOf(nodes);
    namedEdges = List.copyOf(namedEdges);
    notches = List.copyOf(notches);
    innerLines = List.copyOf(innerLines);
    cuts = List.copyOf(cuts);
  }

  /**
   * The piece, counter-clockwise.
   *
   * @throws InputException with every problem found
   */
  public Piece piece() {
    return new DraftOutline(this).piece();
  }

  /** The same along another outline. */
  public Draft through(List<Node> other) {
    return new Draft(name, other, namedEdges, allowance, fold, grain, notches, innerLines, cuts);
  }

  /** Its outline alone, which need not be legal yet. */
  public Draft bare() {
    return new Draft(name, nodes, namedEdges, allowance, fold, grain, List.of(), List.of(), cuts);
  }

  /** Whether its points stand the other way round than the edges of the piece run. */
  boolean clockwise() {
    return new DraftOutline(this).clockwise();
  }

  /**
   * What is wrong with an edge that starts or ends nowhere.
   *
   * @param point that it names
   * @param names of the points that there are
   */
  public static Problem noPoint(String piece, String edge, String point, List<String> names) {
    return Problem.onEdge(
        piece,
        edge,
        "no point of the outline is named " + point,
        names.isEmpty()
            ? "Name points with {point: " + point + ", at: [x, y]}"
            : "Use one of " + String.join(", ", names));
  }
}
