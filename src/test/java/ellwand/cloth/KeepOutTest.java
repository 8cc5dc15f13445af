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
            1020,
            10,
            0,
            Direction.ANY_WAY,
            List.of(Fold.OPEN, Fold.LENGTHWISE),
            Shrinkage.NONE,
            0,
            100,
            0,
            "")
        .flawed(List.of(flaws));
  }

  private static Flaw box(double x0, double y0, double x1, double y1) {
    return new Flaw("stain", Outline.of(new Box(x0, y0, x1, y1)));
  }

  private static List<Box> barred(Fold fold, Flaw... flaws) {
    Cloth cloth = cloth(flaws);
    return KeepOut.of(cloth, LaidCloth.of(cloth, fold)).stream()
        .map(k -> k.outline().box())
        .toList();
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

  @Test
  void clothWithFlawsLiesInOneStretch() {
    assertEquals(1, LaidCloth.of(cloth(box(0, 0, 1, 1)), Fold.LENGTHWISE).stretches().size());
    assertEquals(2, LaidCloth.of(cloth(), Fold.LENGTHWISE).stretches().size());
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
