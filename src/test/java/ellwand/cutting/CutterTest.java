package ellwand.cutting;

import static ellwand.cutting.Drawn.cutting;
import static ellwand.cutting.Drawn.polygon;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Outline;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.pattern.Grain;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Cutting lines worked out by hand. */
class CutterTest {

  @Test
  void eachEdgeOfARectangleHasItsOwnAllowance() {
    var piece = polygon(new double[] {10, 30, 10, 0}, 0, 0, 200, 0, 200, 100, 0, 100);
    Same.points(cutting(piece), 0, -10, 230, -10, 230, 110, 0, 110);
  }

  @Test
  void edgesWithoutAllowanceStayAsDrawn() {
    var piece = polygon(new double[4], 0, 0, 200, 0, 200, 100, 0, 100);
    Same.points(cutting(piece), 0, 0, 200, 0, 200, 100, 0, 100);
  }

  @Test
  void linesOfDifferentAllowanceMeetWhereTheyCross() {
    // Right angle at (0,0), slope 3:4 at (400,0), so the mitre is 3-4-5.
    var piece = polygon(new double[] {10, 20, 30}, 0, 0, 400, 0, 0, 300);
    // Slope line 3x + 4y = 1200 moved out by 20: 3x + 4y = 1300.
    Same.points(cutting(piece), -30, -10, 1340 / 3.0, -10, -30, 1390 / 4.0);
  }

  @Test
  void aHemIsTurnedBackAsItsNeighboursMirrored() {
    // A skirt 300 wide at the hem (x = 0), 200 at the top (x = 200), sides 1:4, no side seams.
    var piece =
        Drawn.from(0, 0).line(200, 50, 0).line(200, 250, 0).line(0, 300, 0).hem(0, 0, 40).piece();
    // The hem's allowance gets narrower as the skirt does.
    Same.points(cutting(piece), 0, 0, 200, 50, 200, 250, 0, 300, -40, 290, -40, 10);
  }

  @Test
  void aTurnedBackHemMirrorsTheSideSeamsAllowanceToo() {
    var piece =
        Drawn.from(0, 0)
            .line(300, 100, 10)
            .line(300, 200, 0)
            .line(0, 300, 10)
            .hem(0, 0, 30)
            .piece();
    double wide = 10 * Math.sqrt(10) / 3; // the side's allowance measured along the hem
    Same.points(
        cutting(piece),
        0,
        -wide,
        300,
        100 - wide,
        300,
        200 + wide,
        0,
        300 + wide,
        -30,
        290 + wide,
        -30,
        10 - wide);
  }

  @Test
  void aSharpCornerIsSquaredOff() {
    // Half angle with tangent 1/10: the mitre would reach 10 allowances past the corner.
    var piece = polygon(new double[] {10, 10, 0}, 0, 0, 1000, 100, 0, 200);
    double s = Math.sqrt(101);
    double limit = Cutter.MITRE_LIMIT * 10;
    // The side moved out: y = x/10 - 10 s/10 with s = sqrt(101); at x = 1000 + limit.
    double y = (1000 + limit) / 10 - s;
    Same.points(cutting(piece), 0, -s, 1000 + limit, y, 1000 + limit, 200 - y, 0, 200 + s);
  }

  @Test
  void aStepInAllowanceOnAStraightLineIsSquare() {
    var piece = polygon(new double[] {10, 25, 0, 0, 0}, 0, 0, 100, 0, 200, 0, 200, 100, 0, 100);
    Same.points(cutting(piece), 0, -10, 100, -10, 100, -25, 200, -25, 200, 100, 0, 100);
  }

  @Test
  void anEqualAllowanceOnAStraightLineMakesNoCorner() {
    var piece = polygon(new double[] {10, 10, 0, 0, 0}, 0, 0, 100, 0, 200, 0, 200, 100, 0, 100);
    Same.points(cutting(piece), 0, -10, 200, -10, 200, 100, 0, 100);
  }

  @Test
  void anInnerCornerIsCutWhereTheLinesCross() {
    var piece =
        polygon(
            new double[] {10, 10, 10, 20, 10, 10},
            0,
            0,
            200,
            0,
            200,
            100,
            100,
            100,
            100,
            200,
            0,
            200);
    Same.points(cutting(piece), -10, -10, 210, -10, 210, 110, 120, 110, 120, 210, -10, 210);
  }

  @Test
  void aHalfPieceEndsOnItsFoldLine() {
    // Neckline slanting to the fold at 45 degrees, hem square to it.
    var piece =
        Drawn.from(0, 0)
            .fold(300, 0)
            .line(350, 50, 10)
            .line(350, 100, 10)
            .line(0, 100, 10)
            .hem(0, 0, 30)
            .piece();
    CutPiece cut = Cutter.cut(piece, 1, 1);
    double r = 10 * Math.sqrt(2);
    Same.points(cut.cutting(), -30, 0, 300 + r, 0, 360, 60 - r, 360, 110, -30, 110);
    assertEquals(-30, cut.fold().orElseThrow().from().x(), 1e-9);
    assertEquals(300 + r, cut.fold().orElseThrow().to().x(), 1e-9);
    Same.points(
        cut.opened().cutting(),
        -30,
        -110,
        360,
        -110,
        360,
        r - 60,
        300 + r,
        0,
        360,
        60 - r,
        360,
        110,
        -30,
        110);
  }

  @Test
  void clothThatShrinksOnceCutIsCutLarger() {
    var piece = polygon(new double[] {10, 10, 10, 10}, 0, 0, 200, 0, 200, 100, 0, 100);
    var cut = Cutter.cut(piece, 1 / (1 - 0.05), 1 / (1 - 0.02)).cutting().box();
    assertEquals(220 / 0.95, cut.length(), 1e-9);
    assertEquals(120 / 0.98, cut.width(), 1e-9);
  }

  @Test
  void atABluntCornerAWiderAllowanceStepsSquare() {
    // The top edge turns by the angle of 7-24-25, some 16 degrees.
    var stepped = polygon(new double[] {0, 0, 0, 25, 0}, 0, 0, 100, 0, 100, 96, 76, 103, 0, 103);
    Same.points(cutting(stepped), 0, 0, 100, 0, 100, 96, 76, 103, 76, 128, 0, 128);
  }

  @Test
  void whereAHalfPieceRunsUnevenlyItsFoldIsStraightened() {
    var piece =
        Drawn.from(0, 0).fold(300, 0.04).line(300, 100, 10).line(0, 100, 10).line(0, 0, 10).piece();
    CutPiece cut = Cutter.cut(piece, 1, 1);
    assertEquals(cut.fold().orElseThrow().from().y(), cut.fold().orElseThrow().to().y(), 1e-9);
    assertEquals(0, cut.cutting().box().minY(), 1e-9);
  }

  @Test
  void aPieceThatMayLieEitherWayGrowsByTheLargerShrinkage() {
    var piece =
        Drawn.from(0, 0)
            .line(200, 0, 0)
            .line(200, 100, 0)
            .line(0, 100, 0)
            .line(0, 0, 0)
            .grain(Grain.EITHER)
            .piece();
    var box = Cutter.cut(piece, 1.02, 1.05).cutting().box();
    assertEquals(210, box.length(), 1e-9);
    assertEquals(105, box.width(), 1e-9);
  }

  @Test
  void aPieceLaidAcrossGrowsAcrossAlongItsDrawnX() {
    var piece =
        Drawn.from(0, 0)
            .line(200, 0, 0)
            .line(200, 100, 0)
            .line(0, 100, 0)
            .line(0, 0, 0)
            .grain(Grain.ACROSS)
            .piece();
    var box = Cutter.cut(piece, 1.02, 1.05).cutting().box();
    assertEquals(210, box.length(), 1e-9);
    assertEquals(102, box.width(), 1e-9);
  }

  @Test
  void aWideAllowanceOnAVeryShortEdgeStepsSquareAtBothEnds() {
    // A corner cut off at 45 degrees, its edge 10 times the root of 2 long.
    var piece = polygon(new double[] {0, 0, 40, 0, 0}, 0, 0, 200, 0, 200, 90, 190, 100, 0, 100);
    double out = 40 / Math.sqrt(2);
    Same.points(
        cutting(piece),
        0,
        0,
        200,
        0,
        200,
        90,
        200 + out,
        90 + out,
        190 + out,
        100 + out,
        190,
        100,
        0,
        100);
  }

  /** One edge all round, with a nick of 12 degrees where it begins. */
  @Test
  void aClosedLineMeetsItselfAtItsNickAlone() {
    Path nicked =
        new Path(
            List.of(
                new Segment.Cubic(at(0, -98), at(55, -103.8), at(100, -55), at(100, 0)),
                new Segment.Cubic(at(100, 0), at(100, 55), at(55, 100), at(0, 100)),
                new Segment.Cubic(at(0, 100), at(-55, 100), at(-100, 55), at(-100, 0)),
                new Segment.Cubic(at(-100, 0), at(-100, -55), at(-55, -103.8), at(0, -98))));
    Outline line = cutting(Drawn.from(0, -98).edge(nicked, 8, false).piece());
    double nick = 8 * Math.hypot(55, 5.8) / 55;
    double off =
        line.points().stream().mapToDouble(p -> p.distance(at(0, -98 - nick))).min().orElseThrow();
    assertEquals(0, off, 0.05);
    Outline drawn = Outline.of(nicked.flattened(0.01));
    assertTrue(line.points().stream().allMatch(p -> Math.abs(drawn.distance(p) - 8) < 0.1));
    assertEquals(8, line.distance(at(100, 0)), 0.1);
  }

  private static Point at(double x, double y) {
    return new Point(x, y);
  }
}
