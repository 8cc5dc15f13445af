package ellwand.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Point;
import ellwand.problem.InputException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class DraftTest {

  private static final List<Draft.Node> OBLONG =
      List.of(node("A", 0, 0), node("", 100, 0), node("B", 100, 50), node("", 0, 50));

  private static Draft.Node node(String name, double x, double y) {
    return new Draft.Node(
        name.isEmpty() ? Optional.empty() : Optional.of(name), new Point(x, y), Optional.empty());
  }

  private static Draft.NamedEdge named(String name, String from, String to) {
    return new Draft.NamedEdge(name, from, to, OptionalDouble.empty(), false);
  }

  private static Draft draft(
      List<Draft.Node> nodes, List<Draft.NamedEdge> namedEdges, List<Notch> notches) {
    return new Draft(
        "piece",
        nodes,
        namedEdges,
        10,
        Optional.empty(),
        Grain.ALONG,
        notches,
        List.of(),
        List.of(new Cut("main", 1, Cut.How.WHOLE)));
  }

  private static List<String> names(Piece piece) {
    return piece.edges().stream().map(Edge::name).toList();
  }

  private static String refusal(Draft draft) {
    return assertThrows(InputException.class, draft::piece).getMessage();
  }

  @Test
  void namesWhatNobodyNamedAfterItsPoints() {
    assertEquals(
        List.of("A to point 2", "point 2 to B", "B to point 4", "point 4 to A"),
        names(draft(OBLONG, List.of(), List.of()).piece()));
  }

  @Test
  void namedEdgesMayRunPastTheFirstPointAndRoundCorners() {
    Piece piece = draft(OBLONG, List.of(named("seam", "B", "A")), List.of()).piece();
    assertEquals(List.of("A to point 2", "point 2 to B", "seam"), names(piece));
    assertEquals(150, piece.edge("seam").line().length(), 1e-9);
    Piece round = draft(OBLONG, List.of(named("rim", "B", "B")), List.of()).piece();
    assertEquals(List.of("rim"), names(round));
    assertEquals(new Point(100, 50), round.edge("rim").line().start());
  }

  @Test
  void twoNamedEdgesMeetEvenWhereTheyStartAndEndAtTheSamePoint() {
    Piece piece =
        draft(OBLONG, List.of(named("one", "A", "B"), named("two", "B", "A")), List.of()).piece();
    assertEquals(List.of("one", "two"), names(piece));
  }

  @Test
  void smoothNamelessJoinsMakeNoNewEdge() {
    // Two halves of a flat arch that join level at its top.
    Draft.Node top =
        new Draft.Node(
            Optional.empty(),
            new Point(50, 40),
            Optional.of(new Draft.Curve(new Point(100, 20), new Point(80, 40))));
    Draft.Node end =
        new Draft.Node(
            Optional.of("A"),
            new Point(0, 0),
            Optional.of(new Draft.Curve(new Point(20, 40), new Point(0, 20))));
    assertEquals(
        List.of("A to B", "B to A"),
        names(draft(List.of(end, node("B", 100, 0), top), List.of(), List.of()).piece()));
  }

  @Test
  void refusesWhatCannotBeDrawn() {
    assertTrue(
        refusal(draft(OBLONG, List.of(named("x", "A", "C")), List.of()))
            .contains("no point of the outline is named C. Use one of A, B"));
    assertTrue(
        refusal(draft(OBLONG, List.of(named("one", "A", "B"), named("two", "A", "A")), List.of()))
            .contains("it runs over edge one from A"));
    assertTrue(
        refusal(draft(List.of(node("A", 0, 0)), List.of(), List.of()))
            .contains("encloses nothing"));
    assertTrue(
        refusal(draft(OBLONG, List.of(), List.of(new Notch("A to point 2", 101, 1, 3))))
            .contains("beyond the end"));
  }

  @Test
  void aNotchBeyondTheEndIsAlsoRefusedWhereTheOutlineIsDrawnClockwise() {
    List<Draft.Node> clockwise = List.of(OBLONG.get(0), OBLONG.get(3), OBLONG.get(2));
    String refusal = refusal(draft(clockwise, List.of(), List.of(new Notch("B to A", 200, 1, 3))));
    assertTrue(refusal.contains("a notch at 20.0 cm lies beyond the end"), refusal);
  }

  /** A star-shaped outline, with some sides curved, listed counter-clockwise from point 0. */
  private static List<Draft.Node> star(int points, double bulge) {
    List<Draft.Node> nodes = new ArrayList<>();
    for (int i = 0; i < points; i++) {
      Point before = onStar(i - 1, points);
      Point at = onStar(i, points);
      Optional<Draft.Curve> curve =
          i % 2 == 0
              ? Optional.empty()
              : Optional.of(
                  new Draft.Curve(
                      before.towards(at, 0.3).times(1 + bulge),
                      before.towards(at, 0.7).times(1 + bulge)));
      nodes.add(new Draft.Node(Optional.of("p" + i), at, curve));
    }
    return nodes;
  }

  private static Point onStar(int i, int points) {
    double angle = 2 * Math.PI * i / points;
    double radius = i % 3 == 0 ? 200 : 260;
    return new Point(radius * Math.cos(angle), radius * Math.sin(angle));
  }

  /**
   * The same line drawn the other way round: each curve's controls swap and move to its far end.
   */
  private static List<Draft.Node> reversed(List<Draft.Node> nodes) {
    List<Draft.Node> back = new ArrayList<>();
    int n = nodes.size();
    for (int i = n - 1; i >= 0; i--) {
      Optional<Draft.Curve> leaving = nodes.get((i + 1) % n).arriving();
      back.add(
          new Draft.Node(
              nodes.get(i).name(),
              nodes.get(i).at(),
              leaving.map(c -> new Draft.Curve(c.control2(), c.control1()))));
    }
    return back;
  }

  @Property(tries = 200)
  void drawingItTheOtherWayRoundGivesTheSamePiece(
      @ForAll @IntRange(min = 4, max = 12) int points,
      @ForAll @DoubleRange(min = -0.1, max = 0.1) double bulge,
      @ForAll @DoubleRange(min = 0, max = 1) double share) {
    List<Draft.Node> nodes = star(points, bulge);
    Piece plain =
        draft(nodes, List.of(named("seam", "p1", "p3")), List.of(new Notch("seam", 0, 1, 3)))
            .piece();
    double length = plain.edge("seam").line().length();
    double at = share * length;
    Piece ccw =
        draft(nodes, List.of(named("seam", "p1", "p3")), List.of(new Notch("seam", at, 1, 3)))
            .piece();
    Piece cw =
        draft(
                reversed(nodes),
                List.of(named("seam", "p3", "p1")),
                List.of(new Notch("seam", length - at, 1, 3)))
            .piece();
    Edge one = ccw.edge("seam");
    Edge other = cw.edge("seam");
    assertEquals(one.line().start(), other.line().start());
    assertEquals(one.line().end(), other.line().end());
    assertEquals(length, other.line().length(), 1e-6);
    assertEquals(at, cw.notches().get(0).atMm(), 1e-6);
    assertEquals(ccw.edges().size(), cw.edges().size());
  }
}
