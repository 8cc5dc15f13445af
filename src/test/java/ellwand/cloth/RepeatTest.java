package ellwand.cloth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RepeatTest {

  /** 1000 mm between selvedges of 10 mm. */
  private static final Cloth PLAIN =
      new Cloth(
          "main",
          1020,
          10,
          0,
          Direction.ONE_WAY,
          List.of(Fold.LENGTHWISE),
          Shrinkage.NONE,
          0,
          100,
          0,
          "");

  private static double foldedWidth(Repeat repeat) {
    return LaidCloth.of(PLAIN.repeating(repeat), Fold.LENGTHWISE).bands().get(0).widthMm();
  }

  @Test
  void theFoldLiesOnTheBarNearestTheMiddle() {
    // The middle is 510 mm from the edge; bars at 30 + k 60: 510 is one.
    assertEquals(500, foldedWidth(Repeat.even(0, 60, 0, 30)), 1e-9);
    // Bars at k 60: 480 and 540 from the edge; the nearer fold leaves 470 on its narrower side.
    assertEquals(470, foldedWidth(Repeat.even(0, 60, 0, 0)), 1e-9);
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

  @Test
  void anUnevenRepeatDoesNotFoldAndIsCutOneWay() {
    Repeat uneven = new Repeat(0, 60, false, true, false, 0, 0, Optional.empty());
    assertTrue(uneven.headingShows());
    assertTrue(PLAIN.repeating(uneven).barred(Fold.LENGTHWISE).orElseThrow().contains("open"));
    assertEquals(Optional.empty(), PLAIN.repeating(uneven).barred(Fold.OPEN));
    // Stripes across may be uneven along: the fold does not mind.
    Repeat across = new Repeat(60, 0, false, false, true, 0, 0, Optional.empty());
    assertEquals(Optional.empty(), PLAIN.repeating(across).barred(Fold.LENGTHWISE));
  }

  @Test
  void refusesWhatRepeatsNothing() {
    assertThrows(IllegalArgumentException.class, () -> Repeat.even(0, 0, 0, 0));
    assertThrows(
        IllegalArgumentException.class,
        () -> new Repeat(60, 0, true, true, true, 0, 0, Optional.empty()));
  }
}
