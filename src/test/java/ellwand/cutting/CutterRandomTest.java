package ellwand.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Outline;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Region;
import ellwand.pattern.Edge;
import ellwand.pattern.Piece;
import java.util.List;
import java.util.Optional;
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

  private static void holds(Piece piece) {
    CutPiece cut = Cutter.cut(piece, 1, 1);
    Outline cutting = cut.cutting();
    assertEquals(Optional.empty(), Region.crossing(cutting.points()));
    assertEquals(0, Region.of(cut.sewing()).minus(Region.of(cutting)).area(), 1e-3);
    for (Edge edge : piece.edges()) {
      double length = edge.line().length();
      for (double at = NEAR_CORNER_MM; at <= length - NEAR_CORNER_MM; at += 3.7) {
        Path.Tangent place = edge.line().tangent(at);
        Point beside = place.at().minus(place.direction().left().times(edge.allowanceMm()));
        double off = cutting.distance(beside);
        assertTrue(off < 0.1, () -> edge.name() + " is " + off + " mm off its allowance");
        double near = cutting.distance(place.at());
        assertTrue(near > edge.allowanceMm() - 0.1, () -> edge.name() + " is cut at " + near);
      }
    }
  }

  @Property(tries = 30)
  void aPieceAndItsMirrorImageAreCutAlike(@ForAll long seed) {
    Piece piece = Blobs.mild(seed);
    Outline mirrored = Drawn.cutting(piece).moved(new ellwand.geometry.Motion(true, 0, 0, 0));
    Outline ofMirrored = Drawn.cutting(Drawn.turnedOver(piece));
    assertTrue(Reference.apart(List.of(mirrored), List.of(ofMirrored)) < 1e-3);
  }
}
