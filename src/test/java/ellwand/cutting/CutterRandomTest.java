package ellwand.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Outline;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Region;
import ellwand.pattern.Edge;
import ellwand.pattern.Piece;
import ellwand.problem.InputException;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What must hold of every cutting line, on random pieces. */
class CutterRandomTest {

  private static final double NEAR_CORNER_MM = 75;

  @Property(tries = 150)
  void convexPiecesAreCutAtTheirAllowances(@ForAll long seed) {
    holds(Blobs.convex(seed));
  }

  @Property(tries = 150)
  void mildlyConcavePiecesAreCutAtTheirAllowances(@ForAll long seed) {
    holds(Blobs.mild(seed));
  }

  /** Or refused, which happens once in thousands, where an edge has no cutting line left. */
  private static void holds(Piece piece) {
    CutPiece cut;
    try {
      cut = Cutter.cut(piece, 1, 1);
    } catch (InputException e) {
      assertTrue(leavesAnEdgeNoLine(piece), e::getMessage);
      return;
    }
    Outline cutting = cut.cutting();
    assertEquals(Optional.empty(), Region.crossing(cutting.points()));
    assertEquals(0, Region.of(cut.sewing()).minus(Region.of(cutting)).area(), 1e-3);
    for (Edge edge : piece.edges()) {
      double length = edge.line().length();
      for (double at = NEAR_CORNER_MM; at <= length - NEAR_CORNER_MM; at += 3.7) {
        Path.Tangent place = edge.line().tangent(at);
        double off = cutting.distance(beside(place, edge.allowanceMm()));
        assertTrue(off < 0.1, () -> edge.name() + " is " + off + " mm off its allowance");
        double near = cutting.distance(place.at());
        assertTrue(near > edge.allowanceMm() - 0.1, () -> edge.name() + " is cut at " + near);
      }
    }
  }

  /**
   * Whether all that lies beside some edge is lost at its corners: past its neighbour's line where
   * they bend out, within it where they bend in.
   */
  private static boolean leavesAnEdgeNoLine(Piece piece) {
    List<Edge> edges = piece.edges();
    int n = edges.size();
    return IntStream.range(0, n)
        .filter(i -> edges.get(i).allowanceMm() > 0)
        .anyMatch(i -> isLost(edges.get((i + n - 1) % n), edges.get(i), edges.get((i + 1) % n)));
  }

  private static boolean isLost(Edge before, Edge edge, Edge after) {
    Path line = edge.line();
    Point in = before.line().endDirection();
    Point out = after.line().startDirection();
    return IntStream.rangeClosed(0, 200)
        .mapToObj(k -> beside(line.tangent(line.length() * k / 200), edge.allowanceMm()))
        .allMatch(
            p ->
                isLost(past(p, line.start(), in) - before.allowanceMm(), in, line.startDirection())
                    || isLost(
                        past(p, line.end(), out) - after.allowanceMm(), line.endDirection(), out));
  }

  private static boolean isLost(double pastMm, Point first, Point second) {
    return first.cross(second) >= 0 ? pastMm > -0.1 : pastMm < 0.1;
  }

  private static double past(Point p, Point corner, Point direction) {
    return -direction.cross(p.minus(corner));
  }

  private static Point beside(Path.Tangent at, double mm) {
    return at.at().minus(at.direction().left().times(mm));
  }

  @Property(tries = 30)
  void aPieceAndItsMirrorImageAreCutAlike(@ForAll long seed) {
    Piece piece = Blobs.mild(seed);
    Assume.that(!leavesAnEdgeNoLine(piece));
    Outline mirrored = Drawn.cutting(piece).moved(new ellwand.geometry.Motion(true, 0, 0, 0));
    Outline ofMirrored = Drawn.cutting(Drawn.turnedOver(piece));
    assertTrue(Reference.apart(List.of(mirrored), List.of(ofMirrored)) < 1e-3);
  }
}
