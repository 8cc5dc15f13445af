package ellwand.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.problem.InputException;
import ellwand.units.Unit;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Panels, bands and pleats, reckoned by hand. */
class RectanglesTest {

  private static final Cut ONE = new Cut("main", 1, Cut.How.WHOLE);
  private static final Cut FOLDED = new Cut("main", 1, Cut.How.FOLD);
  private static final Gathered.Seams SEAMS = new Gathered.Seams(10, 30, 10, true);

  private static Gathered frill(double joined, String fullness, int panels, Cut cut, Notch... own) {
    return new Gathered(
        "frill",
        Span.given(joined),
        Fullness.parse(fullness),
        200,
        SEAMS,
        panels,
        Grain.ALONG,
        List.of(cut),
        List.of(own));
  }

  private static List<Double> notches(Piece piece) {
    return piece.notches().stream().map(n -> Math.rint(n.atMm() * 1000) / 1000).toList();
  }

  @Test
  void panelsShareTheFullnessAskedFor() {
    // 60 cm at 1.5 are 90 cm; two panels of 45 cm, each with 1 cm at both sides.
    Panels two = frill(600, "1.5", 2, ONE).panels(ONE, 1400);
    assertEquals(470, two.panelMm(), 1e-9);
    assertEquals("2", two.piece().cuts().get(0).toString());
    assertEquals(450, two.piece().edge("top").line().length(), 1e-9);
    assertEquals(List.of("frill: cut as 2 panels 47.0 cm wide with joins"), two.sentences(Unit.CM));
    // On the fold each is drawn to its middle.
    Panels folded = frill(600, "1.5", 2, FOLDED).panels(FOLDED, 1400);
    assertEquals("2 on fold", folded.piece().cuts().get(0).toString());
    assertEquals(225, folded.piece().edge("top").line().length(), 1e-9);
    // Gathered, the two come to what they join.
    assertEquals(300, two.piece().edge("top").sewnMm(), 1e-9);
    assertEquals(150, folded.piece().edge("top").sewnMm(), 1e-9);
    // Cloth of 40 cm: each of the two is split in two, so that the seams asked for stay.
    assertEquals(4, frill(600, "1.5", 2, ONE).panels(ONE, 400).count());
  }

  private static final double DEEP = Notch.USUAL_DEPTH_MM;

  private static List<Notch> doubled(Piece piece) {
    return piece.notches().stream().filter(n -> n.strokes() == 2).toList();
  }

  @Test
  void aNotchFallsOnThePanelThatHoldsIt() {
    // 90 cm in three panels of 30 cm: 40 cm along the top is 10 cm along the second. The hem runs
    // back, so that its 10 cm are on the third.
    Notch top = new Notch("top", 400, 2, DEEP);
    Panels three = frill(600, "1.5", 3, ONE, top, new Notch("hem", 100, 2, DEEP)).panels(ONE, 1400);
    assertEquals(
        List.of("frill panel 1", "frill panel 2", "frill panel 3"),
        three.pieces().stream().map(Piece::name).toList());
    assertEquals(List.of(), doubled(three.pieces().get(0)));
    assertEquals(List.of(new Notch("top", 100, 2, DEEP)), doubled(three.pieces().get(1)));
    assertEquals(List.of(new Notch("hem", 100, 2, DEEP)), doubled(three.pieces().get(2)));
    assertEquals(
        "frill: its own notches do not stand on all panels: cut 1 of frill panel 1 and 1 of frill"
            + " panel 2 and 1 of frill panel 3",
        three.sentences(Unit.CM).get(1));
    assertEquals(
        List.of("2 of frill panels 1+3", "1 of frill panel 2"),
        frill(600, "1.5", 3, ONE, top).panels(ONE, 1400).pieces().stream()
            .map(p -> p.cuts().get(0) + " of " + p.name())
            .toList());
    // At the same place of each they are all alike.
    Panels alike = frill(600, "1.5", 2, ONE, top, new Notch("top", 850, 2, DEEP)).panels(ONE, 1400);
    assertEquals(List.of("frill"), alike.pieces().stream().map(Piece::name).toList());
    assertEquals("2", alike.piece().cuts().get(0).toString());
    assertEquals(List.of(top), doubled(alike.piece()));
  }

  @Test
  void sidesBelongToTheFirstAndTheLastPanel() {
    Panels two =
        pleated(
                new Pleating(Pleating.Kind.KNIFE, 12, 30),
                2,
                new Notch("side", 50, 2, DEEP),
                new Notch("other side", 70, 2, DEEP))
            .panels(ONE, 1400);
    assertEquals("other side", doubled(two.pieces().get(0)).get(0).edge());
    assertEquals("side", doubled(two.pieces().get(1)).get(0).edge());
  }

  /** The slow way: every notch is found again where its panel begins. */
  @Property(tries = 300)
  void noNotchIsLostOrMoved(
      @ForAll @DoubleRange(min = 0, max = 900) double at,
      @ForAll @IntRange(min = 1, max = 7) int panels,
      @ForAll boolean hem) {
    Notch notch = new Notch(hem ? "hem" : "top", at, 2, DEEP);
    Panels made = frill(600, "1.5", panels, ONE, notch).panels(ONE, 1400);
    assertEquals(panels, made.pieces().stream().mapToInt(p -> p.cuts().get(0).count()).sum());
    List<Piece> holding = made.pieces().stream().filter(p -> !doubled(p).isEmpty()).toList();
    assertEquals(1, holding.size());
    String name = holding.get(0).name();
    int panel = panels == 1 ? 1 : Integer.parseInt(name.substring(name.lastIndexOf(' ') + 1));
    double width = 900.0 / panels;
    double start = (hem ? panels - panel : panel - 1) * width;
    assertEquals(at, start + doubled(holding.get(0)).get(0).atMm(), 1e-5);
  }

  @Test
  void panelsOnTheFoldHoldNone() {
    Gathered two = frill(600, "1.5", 2, FOLDED, new Notch("top", 100, 1, DEEP));
    assertThrows(InputException.class, () -> two.panels(FOLDED, 1400));
    assertEquals(
        1, doubled(frill(600, "1.5", 0, FOLDED, new Notch("top", 100, 2, DEEP)).piece()).size());
  }

  @Test
  void aBandHasNotchesOfItsOwnBesideThoseAtItsQuarters() {
    Notch own = new Notch("far edge", 630, 2, DEEP);
    Piece piece = band(1, 30, true, Grain.ALONG, ONE, own).piece();
    assertEquals(5, piece.notches().size());
    assertEquals(List.of(own), doubled(piece));
    for (Notch wrong :
        List.of(
            new Notch("far edge", 631, 1, DEEP),
            new Notch("far edge", 1, 1, 11),
            new Notch("top", 1, 1, DEEP))) {
      Band band = band(1, 30, true, Grain.ALONG, ONE, wrong);
      InputException refused = assertThrows(InputException.class, band::piece);
      assertEquals(Optional.of(wrong.edge()), refused.problems().get(0).edge());
    }
  }

  @Test
  void aQuarterOfTheWholeIsMarkedWherePanelsAreAlike() {
    assertEquals(List.of(225.0, 450.0, 675.0), notches(frill(600, "1.5", 0, ONE).piece()));
    assertEquals(List.of(225.0), notches(frill(600, "1.5", 0, FOLDED).piece()));
    assertEquals(List.of(225.0), notches(frill(600, "1.5", 2, ONE).panels(ONE, 1400).piece()));
    assertEquals(List.of(), notches(frill(600, "1.5", 2, FOLDED).panels(FOLDED, 1400).piece()));
    // A notch never goes through its seam.
    Gathered narrow =
        new Gathered(
            "frill", 600, 1.5, 200, new Gathered.Seams(2, 30, 10, true), Grain.ALONG, List.of(ONE));
    assertEquals(2, narrow.piece().notches().get(0).depthMm());
  }

  @Test
  void twoForALengthThatWasGivenAreAsFullAsBothTogether() {
    Gathered two = frill(600, "1.5", 0, new Cut("main", 2, Cut.How.WHOLE));
    assertEquals(
        "frill: 2 cut from main, each for 60.0 cm at a fullness of 1.5; if all are sewn to the same"
            + " 60.0 cm, it is 3: then write panels: 2 and cut 1",
        two.caution("main", Unit.CM).orElseThrow());
    assertEquals(Optional.empty(), frill(600, "1.5", 2, ONE).caution("main", Unit.CM));
  }

  @Test
  void aRibIsShorterThanItsEdge() {
    assertEquals(480, frill(600, "0.8", 0, ONE).piece().edge("top").line().length(), 1e-9);
  }

  @Test
  void wholeWidthsAreTakenWhereTheFullnessAllows() {
    // 138 cm usable less 2 cm of sides: 136 cm. 80 cm at 1.5 to 2 are 120 to 160 cm.
    Panels one = frill(800, "1.5 to 2", 0, ONE).panels(ONE, 1380);
    assertEquals(1, one.count());
    assertEquals(1380, one.panelMm(), 1e-9);
    assertEquals(
        List.of(
            "frill: a fullness of 1.7, of the 1.5 to 2 asked for: one whole width of the cloth, so"
                + " that nothing is left beside it"),
        one.sentences(Unit.CM));
    // 150 cm want 225 to 300 cm: two widths are 272 cm.
    Panels two = frill(1500, "1.5 to 2", 0, ONE).panels(ONE, 1380);
    assertEquals(2, two.count());
    assertEquals(1360, two.piece().edge("top").line().length(), 1e-9);
    // 100 cm want 150 to 200 cm: one width is too little, two are too much.
    Panels none = frill(1000, "1.5 to 2", 0, ONE).panels(ONE, 1380);
    assertEquals(
        "frill: a fullness of 1.5, the least asked for: one whole width would be 1.36, 2 whole"
            + " widths would be 2.72",
        none.sentences(Unit.CM).get(0));
    assertEquals(1500, none.count() * none.piece().edge("top").line().length(), 1e-9);
  }

  @Property(tries = 300)
  void theChosenFullnessIsWithinItsBounds(
      @ForAll @DoubleRange(min = 200, max = 3000) double joined,
      @ForAll @DoubleRange(min = 300, max = 1600) double usable,
      @ForAll @IntRange(min = 0, max = 4) int panels) {
    Panels made = frill(joined, "1.5 to 2.25", panels, ONE).panels(ONE, usable);
    double width = made.count() * made.piece().edge("top").line().length();
    assertTrue(width >= 1.5 * joined - 1e-6 && width <= 2.25 * joined + 1e-6, width + "");
    assertTrue(made.panelMm() <= usable + 1e-6, made.panelMm() + "");
    assertEquals(0, made.count() % Math.max(1, panels));
    if (made.wholeWidths()) {
      assertTrue(made.panelMm() > usable - 0.11, made.panelMm() + " of " + usable);
    }
  }

  private static Band band(
      double share, double overlap, boolean doubled, Grain grain, Cut cut, Notch... own) {
    return new Band(
        "band",
        Span.given(600),
        share,
        overlap,
        40,
        doubled,
        new Band.Seams(Allowance.of(10), Allowance.of(10), Allowance.of(10)),
        grain,
        List.of(cut),
        List.of(own));
  }

  @Test
  void aWaistbandIsAsLongAsItsWaistAndItsOverlap() {
    Piece piece = band(1, 30, true, Grain.ALONG, ONE).piece();
    assertEquals(630, piece.edge("joined edge").line().length(), 1e-9);
    assertEquals(80, piece.edge("end").sewnMm(), 1e-9);
    assertEquals(1, piece.innerLines().size());
    assertEquals(40, piece.innerLines().get(0).line().start().y(), 1e-9);
    assertEquals(List.of(150.0, 300.0, 450.0, 600.0), notches(piece));
    assertEquals(
        "band: 63.0 cm long, all of the 60.0 cm that it joins and 3.0 cm to overlap",
        band(1, 30, true, Grain.ALONG, ONE).notes("main", Unit.CM).get(0));
  }

  @Test
  void aCuffIsAShareOfItsWrist() {
    Piece half = band(0.8, 0, true, Grain.ACROSS, FOLDED).piece();
    assertEquals(240, half.edge("joined edge").line().length(), 1e-9);
    assertEquals(300, half.edge("joined edge").sewnMm(), 1e-9);
    assertEquals(List.of(120.0), notches(half));
    assertEquals(Optional.of("fold"), half.fold());
    assertEquals(
        "band: 48.0 cm long, 80 % of the 60.0 cm that it joins",
        band(0.8, 0, true, Grain.ACROSS, ONE).notes("main", Unit.CM).get(0));
  }

  @ParameterizedTest
  @CsvSource({
    "30, ACROSS, with an overlap its ends are not alike",
    "0, ALONG, it lies along the grain"
  })
  void notEveryBandHasAHalf(double overlap, String grain, String why) {
    Grain of = grain.equals("ALONG") ? Grain.ALONG : Grain.ACROSS;
    String said =
        assertThrows(InputException.class, () -> band(1, overlap, true, of, FOLDED)).getMessage();
    assertTrue(said.contains(why), said);
  }

  private static Pleated pleated(Pleating pleating, int panels, Notch... own) {
    return new Pleated(
        "skirt",
        Span.given(600),
        pleating,
        300,
        SEAMS,
        panels,
        Grain.ALONG,
        List.of(ONE),
        List.of(own));
  }

  @ParameterizedTest
  // 60 cm; a knife pleat takes twice its depth, a box or inverted pleat four times.
  @CsvSource({"KNIFE, 12, 30, 1320", "BOX, 6, 25, 1200", "INVERTED, 1, 50, 800"})
  void pleatsTakeTheirDepths(Pleating.Kind kind, int count, double depth, double width) {
    Pleated made = pleated(new Pleating(kind, count, depth), 0);
    assertEquals(width, made.finishedWidthMm(), 1e-9);
    assertEquals(width, made.piece().edge("top").line().length(), 1e-9);
  }

  @Test
  void aKiltOfFullness3IsPleatedOnceOver() {
    // Three times the cloth: every pleat is as deep as it shows. Common practice for kilts.
    Pleating kilt = Pleating.full(Pleating.Kind.KNIFE, 20, 3, 600);
    assertEquals(30, kilt.depthMm(), 1e-9);
    assertEquals(1800, pleated(kilt, 0).finishedWidthMm(), 1e-9);
    assertEquals(Optional.empty(), pleated(kilt, 0).caution("main", Unit.CM));
    assertEquals(
        "skirt: 20 knife pleats 3.0 cm deep, one every 3.0 cm, fold 180.0 cm to 60.0 cm, a fullness"
            + " of 3",
        pleated(kilt, 0).notes("main", Unit.CM).get(0));
    // About 3.2 cm deep: 600 x 2 / 64 is 18.75, so 19 of 3.16 cm.
    assertEquals(19, Pleating.deep(Pleating.Kind.KNIFE, 32, 3, 600).count());
    assertEquals(
        1800, pleated(Pleating.deep(Pleating.Kind.KNIFE, 32, 3, 600), 0).finishedWidthMm(), 1e-9);
  }

  @Property(tries = 200)
  void foldedPleatsComeBackToWhatTheyJoin(
      @ForAll Pleating.Kind kind,
      @ForAll @IntRange(min = 1, max = 30) int count,
      @ForAll @DoubleRange(min = 2, max = 60) double depth,
      @ForAll @DoubleRange(min = 300, max = 2000) double usable) {
    Pleated made = pleated(new Pleating(kind, count, depth), 0);
    double each = (made.finishedWidthMm() / count) + 20;
    if (each > usable) {
      assertThrows(InputException.class, () -> made.panels(ONE, usable));
      return;
    }
    Panels panels = made.panels(ONE, usable);
    assertTrue(panels.panelMm() <= usable + 1e-6);
    assertEquals(0, count % panels.count());
    // The slow way: unfold pleat by pleat, each fold going under by its depth and back.
    double flat = 0;
    for (int i = 0; i < count; i++) {
      flat += 600.0 / count;
      for (int fold = 0; fold < (kind == Pleating.Kind.KNIFE ? 1 : 2); fold++) {
        flat += depth + depth;
      }
    }
    assertEquals(flat, panels.count() * panels.piece().edge("top").line().length(), 1e-6);
    assertEquals(600, panels.count() * panels.piece().edge("top").sewnMm(), 1e-6);
    long folds =
        panels.piece().innerLines().stream()
            .filter(l -> l.name().equals(Pleated.FOLD_LINE))
            .count();
    assertEquals((kind == Pleating.Kind.KNIFE ? 1L : 2L) * count / panels.count(), folds);
  }

  @Test
  void pleatsAreSharedOutWhole() {
    // 132 cm: three panels of four pleats are 44 cm and 2 cm of sides.
    Pleated skirt = pleated(new Pleating(Pleating.Kind.KNIFE, 12, 30), 0);
    assertEquals(3, skirt.panels(ONE, 500).count());
    assertEquals(4, skirt.panels(ONE, 459).count());
    assertThrows(InputException.class, () -> pleated(new Pleating(Pleating.Kind.KNIFE, 12, 30), 5));
  }

  @Test
  void pleatsThatLieOverOneAnotherAreToldOf() {
    Pleated skirt = pleated(new Pleating(Pleating.Kind.BOX, 12, 30), 0);
    assertEquals(
        "skirt: pleats 3.0 cm deep lie over one another, since there is one every 5.0 cm; make them"
            + " shallower or fewer unless that is meant",
        skirt.caution("main", Unit.CM).orElseThrow());
  }

  @Test
  void aWidthThatTheClothDecidesIsNotMeasured() {
    PieceSet pieces = new PieceSet(List.of(), List.of(), List.of(frill(600, "1.5 to 2", 0, ONE)));
    Extent hem = new Extent.OfEdges(List.of("frill.hem"));
    assertThrows(InputException.class, () -> hem.span("M", pieces, List.of(ONE)));
    assertEquals(200, new Extent.OfEdges(List.of("frill.side")).mm("M", pieces), 1e-9);
  }
}
