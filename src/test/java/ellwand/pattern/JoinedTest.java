package ellwand.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is sewn to edges is as long as all of them, counted by hand. */
class JoinedTest {

  /** 20 cm high; a half opens at its middle, which upper meets and side does not. */
  static Piece part(String name, double upper, String... cuts) {
    Point a = new Point(0, 0);
    Point b = new Point(200, 0);
    Point c = new Point(200, upper);
    Point d = new Point(0, upper);
    List<Cut> all = new ArrayList<>();
    List<String> cloths = List.of("main", "lining");
    for (int i = 0; i < cuts.length; i++) {
      if (!cuts[i].isEmpty()) {
        all.add(Cut.parse(cloths.get(i), cuts[i]));
      }
    }
    boolean half = all.stream().anyMatch(cut -> cut.how() == Cut.How.FOLD);
    return new Piece(
        name,
        List.of(
            new Edge("middle", Path.line(a, b), half ? 0 : 10, false),
            new Edge("upper", Path.line(b, c), 10, false),
            new Edge("side", Path.line(c, d), 10, false),
            new Edge("hem", Path.line(d, a), 10, false)),
        half ? Optional.of("middle") : Optional.empty(),
        Grain.ALONG,
        List.of(),
        List.of(),
        all);
  }

  private static Gathered gathered(
      String cut, double fullness, List<String> edges, Piece... pieces) {
    GatheredPlan plan =
        new GatheredPlan(
            "frill",
            new Extent.OfEdges(edges),
            fullness,
            new Extent.Given(100),
            new Gathered.Seams(10, 10, 10, false),
            Grain.ALONG,
            List.of(Cut.parse("main", cut)));
    return (Gathered)
        plan.addedTo(new PieceSet(List.of(pieces), List.of(), List.of()), "M").rectangles().get(0);
  }

  // A quarter is 15 cm at the waist: four of them 60 cm, with 1 cm at each side 62 cm.
  @ParameterizedTest
  @CsvSource({"4, 620", "2 pairs, 620", "2, 320", "pair, 320", "1, 170", "3, 470"})
  void aBandIsAsLongAsAllQuarters(String cut, double cutWidthMm) {
    assertEquals(
        cutWidthMm,
        gathered("1", 1, List.of("quarter.upper"), part("quarter", 150, cut)).cutWidthMm("main"),
        1e-9);
  }

  @Test
  void aHalfsEdgeCountsOnceOpenedAcrossTheFoldAndTwiceBesideIt() {
    Piece half = part("body", 150, "1 on fold");
    Joined joined = Joined.of(List.of("body.upper", "body.side"), List.of(half), Optional.empty());
    // 2 x 15 cm in one, and 20 cm on either side.
    assertEquals("body.upper + 2 x body.side", joined.toString());
    assertEquals(300 + 400, joined.mm(), 1e-9);
    Piece twice = part("body", 150, "2 on fold");
    assertEquals(
        "2 x body.upper + 4 x body.side",
        Joined.of(List.of("body.upper", "body.side"), List.of(twice), Optional.empty()).toString());
  }

  @Test
  void howOftenAnEdgeIsSewnCanBeSaid() {
    Piece lined = part("body", 150, "2 on fold");
    // Two layers of 30 cm that are sewn as one.
    assertEquals(300, gathered("1", 1, List.of("1 x body.upper"), lined).finishedWidthMm(), 1e-9);
    assertEquals(
        Optional.empty(),
        gathered("1", 1, List.of("1 x body.upper"), lined).caution("main", Unit.CM));
    assertEquals(
        "frill: it joins 2 x body.upper, 60.0 cm, as often as cut; where layers are sewn as one,"
            + " say how often: 1 x body.upper",
        gathered("1", 1, List.of("body.upper"), lined).caution("main", Unit.CM).orElseThrow());
  }

  @Test
  void whatIsCutAsOftenAsItsEdgeJoinsOneEach() {
    Gathered cuff = gathered("pair", 1.5, List.of("sleeve.hem"), part("sleeve", 220, "pair"));
    assertEquals(330, cuff.finishedWidthMm(), 1e-9);
    assertEquals(Optional.empty(), cuff.caution("main", Unit.CM));
    assertEquals("frill: each of 2 joins sleeve.hem, 22.0 cm", cuff.notes("main", Unit.CM).get(0));
    Gathered two = gathered("2", 1, List.of("4 x quarter.upper"), part("quarter", 150, "4"));
    assertEquals(300, two.finishedWidthMm(), 1e-9);
    assertEquals(
        "frill: each of 2 joins 2 x quarter.upper, 30.0 cm", two.notes("main", Unit.CM).get(0));
  }

  @Test
  void warnsWhereAllTogetherAreNotAsFullAsAsked() {
    Gathered two =
        gathered(
            "2",
            1.5,
            List.of("front.upper", "back.upper"),
            part("front", 140, "1 on fold"),
            part("back", 160, "1 on fold"));
    // Each is 1.5 x (28 + 32) = 90 cm, both 180 cm, on 60 cm 3 to 1.
    assertEquals(900, two.finishedWidthMm(), 1e-9);
    assertEquals(
        "frill: 2 cut from main are 180.0 cm in all for the 60.0 cm of front.upper + back.upper, a"
            + " fullness of 3 in place of 1.5; cut another number, or say how often each edge is"
            + " sewn, for example 2 x front.upper",
        two.caution("main", Unit.CM).orElseThrow());
  }

  private static Binding binding(String cut, List<String> edges, Piece... pieces) {
    BindingPlan plan =
        new BindingPlan(
            "tape",
            new Extent.OfEdges(edges),
            40,
            Binding.CutAs.STRIPS,
            1000,
            6,
            10,
            List.of(Cut.parse("main", cut)));
    return plan.addedTo(new PieceSet(List.of(pieces), List.of(), List.of()), "M").bindings().get(0);
  }

  @Test
  void twoBindingsGoRoundOneArmholeEachAndOneRoundBoth() {
    Piece front = part("front", 140, "1 on fold");
    Piece back = part("back", 160, "pair");
    List<String> armhole = List.of("front.side", "back.side");
    // An armhole is 20 + 20 cm.
    assertEquals(800, binding("1", armhole, front, back).length().mm(), 1e-9);
    assertEquals(400, binding("2", armhole, front, back).length().mm(), 1e-9);
    assertEquals(Optional.empty(), binding("2", armhole, front, back).caution("main", Unit.CM));
    // Three cannot share two.
    assertEquals(
        "tape: 3 cut from main are 240.0 cm in all for the 80.0 cm of 2 x front.side + 2 x"
            + " back.side, 160.0 cm too long; cut another number, or say how often each edge is"
            + " sewn, for example 2 x front.side",
        binding("3", armhole, front, back).caution("main", Unit.CM).orElseThrow());
  }

  @Test
  void eachClothCountsItsOwn() {
    Piece quarter = part("quarter", 150, "4", "1");
    List<Piece> pieces = List.of(quarter);
    List<String> waist = List.of("quarter.upper");
    assertEquals(600, Joined.of(waist, pieces, Optional.of("main")).mm(), 1e-9);
    assertEquals(150, Joined.of(waist, pieces, Optional.of("lining")).mm(), 1e-9);
    // Not cut from it: as from its first.
    assertEquals(600, Joined.of(waist, pieces, Optional.of("felt")).mm(), 1e-9);
    assertEquals(
        List.of("size M, lining: band.upper is 45.00 cm too long for quarter.upper"),
        new Seam(List.of("band.upper"), waist, 0)
            .sentences("M", List.of(quarter, part("band", 600, "1", "1")), Unit.CM));
  }

  private static List<String> seam(List<String> one, List<String> other, Piece... pieces) {
    return new Seam(one, other, 0).sentences("M", List.of(pieces), Unit.CM);
  }

  @Test
  void aSeamComparesAllThatIsSewn() {
    Piece quarter = part("quarter", 150, "2 pairs");
    List<String> waist = List.of("quarter.upper");
    assertEquals(
        List.of(
            "size M: band.upper is 45.00 cm too short for 4 x quarter.upper; where layers are sewn"
                + " as one, say how often: 1 x quarter.upper"),
        seam(List.of("band.upper"), waist, quarter, part("band", 150, "1")));
    assertEquals(List.of(), seam(List.of("band.upper"), waist, quarter, part("band", 600, "1")));
    // Two bands of 30 cm, each on two quarters.
    assertEquals(List.of(), seam(List.of("band.upper"), waist, quarter, part("band", 300, "2")));
    // A collar of two layers.
    assertEquals(
        List.of(),
        seam(
            List.of("1 x collar.upper"),
            List.of("body.upper"),
            part("collar", 300, "2"),
            part("body", 150, "1 on fold")));
  }

  @Test
  void aSeamThatIsThereSeveralTimesIsMeasuredOnce() {
    assertEquals(
        List.of("size M: front.upper is 1.00 cm too short for back.upper"),
        seam(
            List.of("front.upper"),
            List.of("back.upper"),
            part("front", 140, "pair"),
            part("back", 150, "pair")));
  }

  @Test
  void edgesThatAreNotThereOrThereTwiceAreNamed() {
    List<Piece> pieces = List.of(part("end", 140, "1 on fold"));
    assertEquals(
        "no edge is called end.rum. Use one of end.middle, end.upper, end.side, end.hem.\n"
            + "no edge is called side.rim. Write piece.edge, for example end.middle; a computed"
            + " piece stands above those that join it.\n"
            + "end.upper stands there twice. It counts as often as it is cut; say otherwise with a"
            + " number, for example 2 x end.upper.",
        assertThrows(
                InputException.class,
                () ->
                    Joined.of(
                        List.of("end.rum", "end.upper", "2 x side.rim", "2 x end.upper"),
                        pieces,
                        Optional.empty()))
            .getMessage());
  }
}
