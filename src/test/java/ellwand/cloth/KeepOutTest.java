package ellwand.cloth;

import static org.junit.jupiter.api.Assertions.assertEquals;

import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class KeepOutTest {

  /** 1000 mm between selvedges of 10 mm. */
  private static Cloth cloth(Flaw... flaws) {
    return new Cloth(
            "main",
            Goods.wide(1020).selvedge(10),
            Laying.in(Fold.OPEN, Fold.LENGTHWISE),
            Selling.USUAL)
        .flawed(List.of(flaws));
  }

  private static Flaw box(double x0, double y0, double x1, double y1) {
    return new Flaw("stain", Outline.of(new Box(x0, y0, x1, y1)));
  }

  private static List<Box> barred(Fold fold, Flaw... flaws) {
    return barred(cloth(flaws), LaidCloth.of(cloth(flaws), fold), 0, 0);
  }

  /** On a stretch that reaches from the cut end, or from the first stretch, to 10 m. */
  private static List<Box> barred(Cloth cloth, LaidCloth laid, double acrossMm, int stretch) {
    return laid.stretches().get(stretch).stream()
        .flatMap(
            band ->
                KeepOut.of(
                    cloth,
                    band,
                    acrossMm,
                    stretch == 0 ? 0 : acrossMm,
                    stretch == 0 && acrossMm > 0 ? acrossMm : 10_000)
                    .stream())
        .map(k -> rounded(k.outline().box()))
        .toList();
  }

  private static Box rounded(Box b) {
    return new Box(round(b.minX()), round(b.minY()), round(b.maxX()), round(b.maxY()));
  }

  private static double round(double mm) {
    return Math.round(mm * 1e6) / 1e6;
  }

  @Test
  void openClothIsBarredWhereTheFlawIsCountedFromTheFirstCuttableLine() {
    assertEquals(List.of(new Box(100, 190, 150, 240)), barred(Fold.OPEN, box(100, 200, 150, 250)));
  }

  @Test
  void aFoldBringsBothHalvesToTheSamePlace() {
    // 300 mm to either side of the fold, which lies 510 mm from the edge.
    Box laid = new Box(0, 300, 50, 320);
    assertEquals(List.of(laid), barred(Fold.LENGTHWISE, box(0, 810, 50, 830)));
    assertEquals(List.of(laid), barred(Fold.LENGTHWISE, box(0, 190, 50, 210)));
  }

  @Test
  void aFlawAcrossTheFoldBarsAsFarAsItReachesOnEachPly() {
    assertEquals(
        List.of(new Box(0, 0, 50, 10), new Box(0, 0, 50, 90)),
        barred(Fold.LENGTHWISE, box(0, 500, 50, 600)));
  }

  @Test
  void whatIsOffTheClothBarsNothing() {
    assertEquals(List.of(), barred(Fold.OPEN, box(0, 0, 50, 10)));
    assertEquals(List.of(new Box(0, 0, 50, 100)), barred(Fold.OPEN, box(-20, 0, 50, 110)));
  }

  @Test
  void anUnevenEndBarsWhatLiesBeforeIt() {
    Flaw end = Flaw.cutEnd(List.of(new Point(20, 0), new Point(0, 510), new Point(40, 1020)));
    List<Box> barred = barred(Fold.OPEN, end);
    assertEquals(40, barred.stream().mapToDouble(Box::maxX).max().orElseThrow(), 1);
    assertEquals(0, barred.stream().mapToDouble(Box::minX).min().orElseThrow(), 1e-9);
  }

  @Test
  void aRoundFlawIsBarredToItsFullRadius() {
    Outline line = Flaw.round("hole", new Point(0, 0), 10).outline();
    assertEquals(10, line.distance(new Point(0, 0)), 1e-9);
    // Area of the polygon about a circle of radius r: n r^2 tan(pi / n).
    assertEquals(32 * 100 * Math.tan(Math.PI / 32), line.area(), 1e-6);
  }

  /** Worked out with a strip of paper: the first 600 mm lie face down on the next. */
  @Test
  void foldedAcrossTheFirstLengthLiesFaceDownFromTheFoldOn() {
    Cloth cloth = cloth(box(100, 210, 150, 260), box(700, 310, 720, 320));
    LaidCloth laid = LaidCloth.of(cloth, Fold.CROSSWISE);
    assertEquals(
        List.of(new Box(450, 200, 500, 250), new Box(100, 300, 120, 310)),
        barred(cloth, laid, 600, 0));
    // Behind the double zone lies what is farther than twice 600 mm from the cut end.
    assertEquals(List.of(), barred(cloth, laid, 600, 1));
    Cloth farther = cloth(box(1300, 10, 1400, 20));
    assertEquals(
        List.of(new Box(700, 0, 800, 10)),
        barred(farther, LaidCloth.of(farther, Fold.CROSSWISE), 600, 1));
  }

  /** Cut off and turned round, then over: its left selvedge comes to lie on the right one. */
  @Test
  void turnedRoundTheFirstLengthKeepsItsHeadingButNotItsSide() {
    Cloth cloth = cloth(box(100, 210, 150, 260), box(700, 310, 720, 320));
    assertEquals(
        List.of(new Box(100, 750, 150, 800), new Box(100, 300, 120, 310)),
        barred(cloth, LaidCloth.of(cloth, Fold.TURNED), 600, 0));
  }

  @Test
  void eachHalfOfADoubleFoldBarsWhatLiesUnderIt() {
    // 300 mm are folded over to the left, up to a meeting line; 180 mm from the other side.
    Cloth cloth = cloth(box(0, 30, 50, 40), box(0, 350, 50, 360), box(0, 1000, 50, 1010));
    LaidCloth laid = LaidCloth.of(cloth, Fold.DOUBLE, 300);
    assertEquals(
        List.of(new Box(0, 270, 50, 280), new Box(0, 40, 50, 50), new Box(0, 320, 50, 330)),
        barred(cloth, laid, 0, 0));
  }

  @Test
  void aTubeIsBarredRoundIt() {
    Cloth flat =
        new Cloth(
            "main",
            Goods.wide(500)
                .tube(true)
                .flawed(List.of(box(0, 600, 50, 630), box(100, -20, 150, 10))),
            Laying.in(Fold.TUBULAR).heading(Direction.ONE_WAY),
            Selling.inSteps(50));
    LaidCloth laid = LaidCloth.of(flat, Fold.TUBULAR);
    // 100 mm beyond the far fold on the back; over the near fold 10 mm in front, 20 mm behind.
    assertEquals(
        List.of(new Box(100, 0, 150, 10), new Box(0, 370, 50, 400), new Box(100, 0, 150, 20)),
        barred(flat, laid, 0, 0));
    // Cut open at that fold, the same flaw lies at either side.
    assertEquals(
        List.of(new Box(0, 600, 50, 630), new Box(100, 0, 150, 10), new Box(100, 980, 150, 1000)),
        barred(flat, laid, 0, 1));
  }

  @Test
  void aRemnantMissesWhatItsBoxPromises() {
    Outline slanted =
        Outline.of(
            List.of(
                new Point(100, 50), new Point(900, 50), new Point(700, 650), new Point(100, 650)));
    Remnant remnant = Remnant.of("offcut", "main", slanted, List.of());
    assertEquals(800, remnant.lengthMm(), 1e-9);
    assertEquals(600, remnant.widthMm(), 1e-9);
    Cloth laid = remnant.laidAs(cloth());
    assertEquals(800, laid.lengthMm(), 1e-9);
    assertEquals(
        Optional.of(200 * 600 / 2.0),
        laid.flaws().stream().map(f -> f.outline().area()).findFirst());
    assertEquals(600, laid.usableWidthMm(), 1e-9);
  }
}
