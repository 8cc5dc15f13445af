package ellwand.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import ellwand.geometry.Point;
import ellwand.problem.InputException;
import ellwand.units.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class DesignTest {

  private static Gathered gathered(PieceSet pieces, int number) {
    return (Gathered) pieces.rectangles().get(number);
  }

  private static final List<Cut> ONE = List.of(new Cut("main", 1, Cut.How.WHOLE));

  /** 30 x 20 cm, its lower right corner called a; points the one way round or the other. */
  private static Draft flap(boolean clockwise) {
    List<Draft.Node> nodes =
        clockwise
            ? List.of(node("a", 0, 0), node("b", 0, 200), node("c", 300, 200), node("d", 300, 0))
            : List.of(node("a", 0, 0), node("d", 300, 0), node("c", 300, 200), node("b", 0, 200));
    return new Draft(
        "flap",
        nodes,
        List.of(
            new Draft.NamedEdge(
                "lower", "a", clockwise ? "b" : "d", OptionalDouble.empty(), false)),
        10,
        Optional.empty(),
        Grain.ALONG,
        List.of(),
        List.of(),
        ONE);
  }

  private static Draft.Node node(String name, double x, double y) {
    return new Draft.Node(Optional.of(name), new Point(x, y), Optional.empty());
  }

  private static Design design(
      List<Outlined> outlined, List<Computed> computed, List<Match> matches) {
    Sizes sizes =
        new Sizes(
            List.of("S", "M", "L"),
            "M",
            Map.of(
                "flap",
                Map.of(
                    "c", new GradeRule.Step(new Point(20, 0)),
                    "d", new GradeRule.Step(new Point(20, 0)))));
    return new Design("bag", Unit.CM, sizes, outlined, computed, List.of(), matches);
  }

  private static GatheredPlan frill(String name, String onto, Extent length) {
    return new GatheredPlan(
        name,
        new Extent.OfEdges(List.of(onto)),
        2,
        length,
        new Gathered.Seams(10, 10, 10, false),
        Grain.ALONG,
        ONE);
  }

  @Test
  void computedPiecesMeasureTheDrawnOnesOfTheirSizeAndThoseBeforeThem() {
    Extent length = new Extent.BySize(Map.of("S", 40.0, "M", 50.0, "L", 60.0));
    Design design =
        design(
            List.of(new Outlined(flap(false))),
            List.of(
                frill("frill", "flap.lower", length),
                frill("second", "frill.hem", new Extent.Given(30))),
            List.of());
    for (Map.Entry<String, Double> lower : Map.of("S", 280.0, "M", 300.0, "L", 320.0).entrySet()) {
      PieceSet pieces = design.in(lower.getKey());
      assertEquals(2 * lower.getValue(), gathered(pieces, 0).finishedWidthMm(), 1e-9);
      assertEquals(4 * lower.getValue(), gathered(pieces, 1).finishedWidthMm(), 1e-9);
      // Drawn up, its upper edge is as long as what it joins.
      Piece frill = gathered(pieces, 0).piece();
      assertEquals(lower.getValue(), frill.edge(Gathered.TOP).sewnMm(), 1e-9);
    }
    assertEquals(60, gathered(design.in("L"), 0).lengthMm());
    assertEquals(
        List.of("flap", "frill", "second"),
        Style.of(design).pieces("S").stream().map(Piece::name).toList());
  }

  @Test
  void aMarkIsMeasuredFromTheFirstPointOfItsEdgeAsDrawn() {
    for (boolean clockwise : List.of(false, true)) {
      // The one edge has a name of its own, the other is called after its points.
      String unnamed = clockwise ? "b to c" : "d to c";
      Match match = new Match("flap", "lower @ 2", "flap", unnamed + " @ 30 mm", Bars.ACROSS);
      Piece flap =
          design(List.of(new Outlined(flap(clockwise))), List.of(), List.of(match))
              .in("M")
              .drawn()
              .get(0);
      List<Point> marks = flap.asks().marks().stream().map(m -> m.on(flap)).toList();
      assertEquals(0, marks.get(0).distance(clockwise ? new Point(0, 20) : new Point(20, 0)), 1e-9);
      assertEquals(
          0, marks.get(1).distance(clockwise ? new Point(30, 200) : new Point(300, 30)), 1e-9);
    }
  }

  @Test
  void everyProblemKnowsItsPiece() {
    Match match = new Match("flap", "lower @ 40", "flap", "lower", Bars.ACROSS);
    Design beyond = design(List.of(new Outlined(flap(false))), List.of(), List.of(match));
    assertEquals(
        "piece flap: 'lower @ 40' lies beyond the edge, which is 30.0 cm long. Measure from its"
            + " first point.",
        assertThrows(InputException.class, () -> beyond.in("M")).getMessage());
    Design unknown =
        design(
            List.of(new Outlined(flap(false))),
            List.of(
                frill("frill", "flap.upper", new Extent.Given(30)),
                frill("ruche", "flap.lower", new Extent.BySize(Map.of("M", 30.0)))),
            List.of());
    assertEquals(
        "piece frill: no edge is called flap.upper. Use one of flap.lower, flap.d to c, flap.c to"
            + " b, flap.b to a.\n"
            + "piece ruche: no length is given for size L. Give one for each size.",
        assertThrows(InputException.class, () -> unknown.in("L")).getMessage());
  }

  @Test
  void whatNeverCouldBeCutIsNotPlanned() {
    List<Cut> mixed =
        List.of(new Cut("main", 1, Cut.How.FOLD), new Cut("lining", 1, Cut.How.WHOLE));
    assertEquals(
        "piece frill: it is cut on the fold in one cloth and otherwise in another. Cut a rectangle"
            + " that is computed alike in all cloths.",
        assertThrows(
                InputException.class,
                () ->
                    new GatheredPlan(
                        "frill",
                        new Extent.Given(300),
                        2,
                        new Extent.Given(30),
                        new Gathered.Seams(10, 10, 10, false),
                        Grain.ALONG,
                        mixed))
            .getMessage());
  }

  @Test
  void twoPiecesOfOneNameAreRefused() {
    List<Outlined> twice = List.of(new Outlined(flap(false)), new Outlined(flap(true)));
    assertEquals(
        "piece flap: two pieces have this name. Give each piece a name of its own.",
        assertThrows(InputException.class, () -> design(twice, List.of(), List.of())).getMessage());
  }
}
