package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is bought for a tunic of plain panels, worked by hand: eight of 8 x 20 in for the skirt,
 * eight of 8 x 13 for the top, and half an inch of allowance all round, so 9 x 21 and 9 x 14 as
 * cut.
 *
 * <p>At no place along the cloth can more panels lie abreast than its width holds nines; so none
 * can lie shorter than in as many columns. A column is a sum of 21 and 14 long, a multiple of 7.
 * All panels in one column would be 8 x 21 + 8 x 14 = 280 in.
 */
class LengthToBuyTest {

  private static final double INCH = 25.4;
  private static final double EIGHTH_YARD = 4.5 * INCH;

  /** In columns of 36, 45, 54 and 60 in: the widths of the table below. */
  private static final String WIDTHS = "36in,45in,54in,60in";

  /**
   * By hand. 36 in: four columns of 21 + 21 + 14 + 14 = 70, and 4 x 70 = 280. 45 in: four of 21 +
   * 21 + 14 and one of four 14 = 56, and 5 x 56 = 280. 54 in: two of 21 + 21 and four of 21 + 14 +
   * 14 = 49; six columns come to 280 / 6 = 46.7 at least, and the next multiple of 7 is 49. 60 in
   * holds six nines too.
   */
  private static final double[] MARKER_INCHES = {70, 56, 49, 49};

  /** Without ends, up to an eighth of a yard, 4.5 in. */
  private static final double[] EIGHTHS = {16, 13, 11, 11};

  /**
   * Cloth needed at another width, row '2 yd at 35-36 in': 1 5/8 at 44-45, 1 3/8 at 52-54, 1 1/4 at
   * 58-60; a home-sewing chart that is widely reprinted, here as on sewwithsarah.com.
   */
  private static final double[] CHART_EIGHTHS = {16, 13, 11, 10};

  private static final String TUNIC =
      """
      ellwand: 1
      unit: in
      style:
        name: Panel tunic
        size: M
        allowance: 1/2
        pieces:
          skirt panel: {cut: {main: 8}, outline: [[0, 0], [20, 0], [20, 8], [0, 8]]}
          top panel: {cut: {main: 8}, outline: [[0, 0], [13, 0], [13, 8], [0, 8]]}
      cloths:
        main: {gap: 0, fold: open, direction: any way, shop-step: 1/8 yd, %s}
      order: {garments: {M: 1}}
      """;

  @TempDir private Path folder;

  @Test
  void inEachWidthOfTheChartItIsWhatTheHandFindsAndWhatTheChartSays() throws IOException {
    Path job = Files.writeString(folder.resolve("job.yaml"), TUNIC.formatted("width: 36"));
    Ran ran =
        Ran.of(
            "compare",
            job,
            "--widths",
            WIDTHS,
            "--effort",
            "3000steps",
            "--threads",
            1,
            "--json",
            "--out",
            folder.resolve("out"));
    assertEquals(0, ran.code(), ran.err());
    JsonNode rows = ran.json();
    assertEquals(MARKER_INCHES.length, rows.size(), ran.out());
    for (int i = 0; i < rows.size(); i++) {
      JsonNode row = rows.get(i);
      double bought = row.get("toBuy").asDouble() / EIGHTH_YARD;
      assertEquals(EIGHTHS[i], bought, 1e-6, row::toString);
      // Never shorter than the hand finds, and longer by no more than what is bought.
      assertBetween(MARKER_INCHES[i], 4.5 * EIGHTHS[i], row.get("clothLength").asDouble());
      // The chart goes by eighths, and holds for garments in general.
      assertEquals(CHART_EIGHTHS[i], bought, 1 + 1e-6, row::toString);
    }
  }

  /** Everything that comes on top of the marker, in the order in which it comes. */
  @Test
  void endsShrinkageSelvedgesAndTheShopsStepComeOnTop() throws IOException {
    Marked marked =
        Marked.lay(
            folder,
            TUNIC.formatted(
                "width: 50, selvedge: 1 1/2, ends: 2, price: USD 8 per yd, shrinkage: {along: 3 %,"
                    + " across: 4 %, when: before cutting}"),
            "3000steps");
    JsonNode figures = marked.figures().get("cloths").get(0);
    // Across: 50 in are 50 x 0.96 = 48 once washed; less two selvedges of 1 1/2 that is 45.
    assertEquals(45 * INCH, figures.get("usableWidthMm").asDouble(), 1e-6);
    // Along: five columns of 56; with 2 in of ends 58 once washed, 58 / 0.97 = 59.79 as bought.
    assertBetween(56, 57, marked.clothLengthMm());
    // That is 13.29 eighths of a yard, so 14, or 1 3/4 yd; at 8 a yard 14.00.
    assertEquals(14 * EIGHTH_YARD, figures.get("lengthToBuyMm").asDouble(), 1e-6);
    assertEquals(14.00, figures.get("cost").asDouble(), 1e-9);
  }

  private static void assertBetween(double leastInches, double mostInches, double mm) {
    assertTrue(mm > leastInches * INCH - 1e-3 && mm < mostInches * INCH + 1e-3, mm + " mm");
  }
}
