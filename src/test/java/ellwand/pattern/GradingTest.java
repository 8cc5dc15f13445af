package ellwand.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import ellwand.units.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Pieces drawn in other sizes, against points worked out by hand. */
class GradingTest {

  private static final double EXACT = 1e-9;

  /** Half a bodice 400 long, 150 wide, its neckline a curve that ends square to the fold. */
  private static Draft bodice() {
    return new Draft(
        "front",
        List.of(
            node("hem", 0, 0),
            node("hem side", 0, 150),
            bare(200, 150),
            node("underarm", 300, 150),
            node("neck", 400, 60),
            new Draft.Node(
                Optional.of("neck centre"),
                new Point(340, 0),
                Optional.of(new Draft.Curve(new Point(370, 50), new Point(340, 30))))),
        List.of(
            new Draft.NamedEdge("side", "hem side", "underarm", OptionalDouble.of(15), false),
            new Draft.NamedEdge("neckline", "neck", "neck centre", OptionalDouble.of(6), false),
            new Draft.NamedEdge("centre", "neck centre", "hem", OptionalDouble.empty(), false)),
        10,
        Optional.of("centre"),
        Grain.ALONG,
        List.of(new Notch("side", 100, 1, 3)),
        List.of(
            new InnerLine("middle", Path.line(new Point(0, 0), new Point(340, 0))),
            new InnerLine("pocket", Path.line(new Point(50, 40), new Point(50, 120)))),
        List.of(new Cut("main", 1, Cut.How.FOLD)));
  }

  private static Draft.Node node(String name, double x, double y) {
    return new Draft.Node(Optional.of(name), new Point(x, y), Optional.empty());
  }

  private static Draft.Node bare(double x, double y) {
    return new Draft.Node(Optional.empty(), new Point(x, y), Optional.empty());
  }

  private static Sizes sizes(Map<String, GradeRule> rules) {
    return new Sizes(List.of("98", "104", "110", "116"), "104", Map.of("front", rules));
  }

  private static GradeRule step(double x, double y) {
    return new GradeRule.Step(new Point(x, y));
  }

  private static void assertPlace(double x, double y, Point actual) {
    assertEquals(x, actual.x(), EXACT);
    assertEquals(y, actual.y(), EXACT);
  }

  @Test
  void namedPointsMoveByStepsAndTheOthersBetweenThem() {
    Sizes sizes =
        sizes(Map.of("underarm", step(9, 5), "hem side", step(0, 5), "neck", step(12, 1)));
    Draft larger = sizes.graded(bodice(), "116");
    assertPlace(0, 160, larger.nodes().get(1).at());
    // Two thirds of the way from hem side to underarm: 2/3 of 18 further along.
    assertPlace(212, 160, larger.nodes().get(2).at());
    assertPlace(318, 160, larger.nodes().get(3).at());
    assertPlace(424, 62, larger.nodes().get(4).at());
    assertPlace(340, 0, larger.nodes().get(5).at());
    Draft smaller = sizes.graded(bodice(), "98");
    assertPlace(291, 145, smaller.nodes().get(3).at());
    assertEquals(bodice(), sizes.graded(bodice(), "104"));
  }

  @Test
  void aTableGivesEachSizeItsOwnShift() {
    GradeRule rule =
        new GradeRule.EachSize(
            Map.of("98", new Point(-1, -2), "110", new Point(3, 4), "116", new Point(9, 5)));
    Sizes sizes = sizes(Map.of("underarm", rule));
    assertPlace(303, 154, sizes.graded(bodice(), "110").nodes().get(3).at());
    assertPlace(309, 155, sizes.graded(bodice(), "116").nodes().get(3).at());
  }

  @Test
  void handlesKeepTheirDirectionAndGrowWithTheChord() {
    // Chord of the neckline: (60, 60) before, (66, 66) after, so handles grow by a tenth.
    Sizes sizes = sizes(Map.of("neck", step(6, 6)));
    Draft.Curve curve = sizes.graded(bodice(), "110").nodes().get(5).arriving().orElseThrow();
    assertPlace(406 - 33, 66 - 11, curve.control1());
    assertPlace(340, 33, curve.control2());
  }

  @Property
  void theNecklineStaysSquareToTheFold(
      @ForAll @DoubleRange(min = -20, max = 20) double x,
      @ForAll @DoubleRange(min = -20, max = 20) double y) {
    Sizes sizes = sizes(Map.of("neck", step(x, y), "neck centre", step(y, 0)));
    Draft.Node centre = sizes.graded(bodice(), "110").nodes().get(5);
    assertEquals(centre.at().x(), centre.arriving().orElseThrow().control2().x(), 1e-9);
  }

  @Property
  void aCurveThatRunsOnFromALineStillDoes(
      @ForAll @DoubleRange(min = -8, max = 8) double x,
      @ForAll @DoubleRange(min = -8, max = 8) double y) {
    Draft smooth =
        new Draft(
            "front",
            List.of(
                node("a", 0, 0),
                node("b", 100, 0),
                new Draft.Node(
                    Optional.of("c"),
                    new Point(180, 80),
                    Optional.of(new Draft.Curve(new Point(140, 0), new Point(180, 40)))),
                node("d", 0, 80)),
            List.of(),
            10,
            Optional.empty(),
            Grain.ALONG,
            List.of(),
            List.of(),
            List.of(new Cut("main", 1, Cut.How.WHOLE)));
    Draft moved = sizes(Map.of("b", step(x, y))).graded(smooth, "110");
    Point line = moved.nodes().get(1).at().minus(moved.nodes().get(0).at()).unit();
    Point handle =
        moved.nodes().get(2).arriving().orElseThrow().control1().minus(moved.nodes().get(1).at());
    assertEquals(0, line.cross(handle.unit()), 1e-9);
    assertTrue(line.dot(handle) > 0);
  }

  @Test
  void notchesKeepTheirShareAndEdgesTheirAllowance() {
    Piece piece = sizes(Map.of("underarm", step(30, 0))).graded(bodice(), "110").piece();
    // The side seam grows from 300 to 330: a notch a third along stays a third along. Whichever
    // way round the piece is listed, it is measured from the edge's first point.
    Notch notch = piece.notches().get(0);
    double length = piece.edge("side").line().length();
    assertEquals(330, length, 1e-6);
    assertEquals(110, Math.min(notch.atMm(), length - notch.atMm()), 1e-6);
    assertEquals(15, piece.edge("side").allowanceMm());
    assertEquals(6, piece.edge("neckline").allowanceMm());
  }

  @Test
  void innerLinesGoWithTheOutlineOrByTheirOwnRule() {
    Sizes sizes = sizes(Map.of("neck centre", step(7, 0), "pocket", step(2, 1)));
    Draft larger = sizes.graded(bodice(), "110");
    Path middle = larger.innerLines().get(0).line();
    assertPlace(0, 0, middle.start());
    assertPlace(347, 0, middle.end());
    Path pocket = larger.innerLines().get(1).line();
    assertPlace(52, 41, pocket.start());
    assertPlace(52, 121, pocket.end());
  }

  @Test
  void theBaseMustBeOneOfTheSizes() {
    assertThrows(InputException.class, () -> new Sizes(List.of("S", "M"), "L", Map.of()));
  }

  @Test
  void seamsThatDoNotMatchAreReportedByHowMuch() {
    Sizes sizes = sizes(Map.of("underarm", step(4, 0)));
    Draft back =
        new Draft(
            "back",
            bodice().nodes(),
            bodice().namedEdges(),
            10,
            Optional.of("centre"),
            Grain.ALONG,
            List.of(),
            List.of(),
            bodice().cuts());
    Seam seam = new Seam(List.of("front.side"), List.of("back.side"), 0);
    List<Piece> base = List.of(bodice().piece(), back.piece());
    List<Piece> larger = List.of(sizes.graded(bodice(), "116").piece(), back.piece());
    assertEquals(List.of(), seam.sentences("104", base, Unit.CM));
    // Two steps of 4 mm, on each side of the garment alike.
    assertEquals(8, seam.mismatchMm(larger), 1e-6);
    assertEquals(
        List.of("size 116: front.side is 0.80 cm too long for back.side"),
        seam.sentences("116", larger, Unit.CM));
    Seam eased = new Seam(List.of("back.side"), List.of("front.side"), 12.7);
    assertEquals(
        List.of(
            "size 116: back.side is 0.81 in too short for front.side, counting 0.50 in of ease"),
        eased.sentences("116", larger, Unit.INCH));
  }
}
