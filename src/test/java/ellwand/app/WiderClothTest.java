package ellwand.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Fold;
import ellwand.figures.Comparison;
import ellwand.figures.Comparison.WidthTried;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What fits on narrow cloth fits on wider, and what can lie folded can lie open. */
class WiderClothTest {

  private static final double ROUNDING_MM = 1e-6;

  @TempDir private Path folder;

  private static String pieces(Random dice) {
    StringBuilder pieces = new StringBuilder();
    for (int i = 0; i < 5; i++) {
      String cut = List.of("pair", "1", "2", "2 pairs").get(dice.nextInt(4));
      int length = 15 + dice.nextInt(40);
      int width = 8 + dice.nextInt(30);
      pieces.append(
          String.format(
              Locale.ROOT,
              "    p%d: {cut: {main: %s}, outline: [[0, 0], [%d, 0], [%d, %d], [0, %d]]}%n",
              i,
              cut,
              length,
              length - dice.nextInt(10),
              width,
              width));
    }
    return pieces.toString();
  }

  /** Widths not in order; few steps, so that a search alone would often be unlucky. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void neverTakesMore(long seed) throws IOException {
    Random dice = new Random(seed);
    Comparison comparison =
        Comparing.compared(
            folder,
            pieces(dice),
            "selvedge: 1, direction: %s, fold: %s, shop-step: 1 mm"
                .formatted(
                    dice.nextBoolean() ? "one way" : "any way",
                    seed == 1 ? "open" : "[lengthwise fold, part fold, double fold, open]"),
            List.of(1400.0, 1150.0, 1500.0, 1420.0, 1440.0),
            60);
    assertEquals(seed == 1 ? 5 : 20, comparison.rows().size());
    for (WidthTried one : comparison.rows()) {
      for (WidthTried other : comparison.rows()) {
        boolean sameFold = one.tried().fold() == other.tried().fold();
        if (one.widthMm() >= other.widthMm()
            && other.tried().possible()
            && (sameFold || one.tried().fold() == Fold.OPEN)) {
          assertTrue(
              one.tried().clothLengthMm() <= other.tried().clothLengthMm() + ROUNDING_MM,
              () -> one + " takes more than " + other);
        }
      }
    }
  }
}
