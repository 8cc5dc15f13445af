package ellwand.cloth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RepeatTest {

  /** 1000 mm between selvedges of 10 mm. */
  private static final Cloth PLAIN =
      new Cloth(
          "main",
          Goods.wide(1020).selvedge(10),
          Laying.in(Fold.LENGTHWISE).heading(Direction.ONE_WAY),
          Selling.USUAL);

  private static double foldedWidth(Repeat repeat) {
    return LaidCloth.of(PLAIN.repeating(repeat), Fold.LENGTHWISE).bands().get(0).widthMm();
  }

  @Test
  void theFoldLiesOnTheMirrorLineNearestTheMiddle() {
    // The middle is 510 mm from the edge; bars at 30 + k 60: 510 is one.
    assertEquals(500, foldedWidth(Repeat.even(0, 60, 0, 30)), 1e-9);
    // Bars at k 60: half way between those at 480 and 540.
    assertEquals(500, foldedWidth(Repeat.even(0, 60, 0, 0)), 1e-9);
    // Bars at 7 + k 60 mirror at 7 + k 30: 517 from the edge leaves 1010 - 517 beyond it.
    assertEquals(493, foldedWidth(Repeat.even(0, 60, 0, 7)), 1e-9);
    // The columns of a half drop mirror at their middles only: 487 from the edge.
    assertEquals(
        477, foldedWidth(new Repeat(60, 60, true, true, true, 0, 7, Optional.empty())), 1e-9);
    assertEquals(500, foldedWidth(Repeat.even(60, 0, 0, 0)), 1e-9);
  }

  @Test
  void bothPliesShowTheSameAtEveryPlace() {
    Repeat repeat = Repeat.even(0, 60, 0, 17);
    Band band = LaidCloth.of(PLAIN.repeating(repeat), Fold.LENGTHWISE).bands().get(0);
    for (double y = 0; y < band.widthMm(); y += 13) {
      double upper = band.layers().get(0).open(y) + 10 - 17;
      double lower = band.layers().get(1).open(y) + 10 - 17;
      // Alike in a mirror: the sum of the two is a whole number of repeats.
      assertEquals(0, Math.IEEEremainder(upper + lower, 60), 1e-9);
    }
  }

  /** Whatever the fold, what lies on what is alike, place by place. */
  @Test
  void pliesShowTheSameInEveryFold() {
    Repeat repeat = Repeat.even(60, 60, 0, 17);
    Cloth checks = PLAIN.repeating(repeat);
    List<LaidCloth> ways =
        List.of(
            LaidCloth.of(checks, Fold.PART, 7 + 30 * 8),
            LaidCloth.of(checks, Fold.DOUBLE, 7 + 30 * 8),
            LaidCloth.of(checks, Fold.TURNED));
    for (LaidCloth way : ways) {
      for (Band band : way.bands()) {
        for (double y = band.lowY(); band.plies() == 2 && y < band.highY(); y += 13) {
          double upper = band.layers().get(0).open(y) + 10 - 17;
          double lower = band.layers().get(1).open(y) + 10 - 17;
          assertTrue(upper + 7 >= 0 && upper + 7 <= 1000, way.fold() + " " + upper);
          assertEquals(0, Math.IEEEremainder(upper + lower, 60), 1e-9);
        }
      }
    }
  }

  @Test
  void aFoldOffTheMirrorLinesIsNone() {
    Cloth checks = PLAIN.repeating(Repeat.even(60, 60, 0, 17));
    for (Fold fold : List.of(Fold.LENGTHWISE, Fold.PART, Fold.DOUBLE)) {
      assertTrue(LaidCloth.canFold(checks, fold, 7 + 30 * 8));
      assertThrows(IllegalArgumentException.class, () -> LaidCloth.of(checks, fold, 250));
    }
  }

  /** Rings lie on rings; stripes round a tube only if it holds whole half repeats. */
  @Test
  void aTubeFoldsOnMirrorLinesOrIsCutOpen() {
    assertEquals(Optional.empty(), tube(Repeat.even(60, 0, 0, 0)).barred(Fold.TUBULAR));
    assertEquals(Optional.empty(), tube(Repeat.even(0, 50, 0, 25)).barred(Fold.TUBULAR));
    assertEquals(
        Problem.of(
            "its folds are not both on mirror lines of its repeat",
            "Lay the tube so that the middle of a stripe is on a fold (start: {across: 0}), or cut it"
                + " open"),
        tube(Repeat.even(0, 50, 0, 10)).barred(Fold.TUBULAR).orElseThrow());
    assertEquals(Optional.empty(), tube(Repeat.even(0, 50, 0, 10)).barred(Fold.OPEN));
  }

  private static Cloth tube(Repeat repeat) {
    return new Cloth(
        "rib",
        Goods.wide(500).tube(true).repeating(Optional.of(repeat)),
        Laying.in(Fold.TUBULAR).heading(Direction.ONE_WAY),
        Selling.USUAL);
  }

  @Test
  void anUnevenRepeatDoesNotFoldAndIsCutOneWay() {
    Repeat uneven = new Repeat(0, 60, false, true, false, 0, 0, Optional.empty());
    assertTrue(uneven.headingShows());
    assertEquals(
        Problem.of(
            "its repeat has no mirror line to fold at, so that the plies would not match",
            "Lay it open"),
        PLAIN.repeating(uneven).barred(Fold.LENGTHWISE).orElseThrow());
    assertEquals(Optional.empty(), PLAIN.repeating(uneven).barred(Fold.OPEN));
    // Stripes across may be uneven along: the fold does not mind.
    Repeat across = new Repeat(60, 0, false, false, true, 0, 0, Optional.empty());
    assertEquals(Optional.empty(), PLAIN.repeating(across).barred(Fold.LENGTHWISE));
  }

  @Test
  void refusesWhatRepeatsNothing() {
    assertThrows(InputException.class, () -> Repeat.even(0, 0, 0, 0));
    assertThrows(
        InputException.class, () -> new Repeat(60, 0, true, true, true, 0, 0, Optional.empty()));
  }
}
