package ellwand.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Direction;
import ellwand.order.Spreading.Faces;
import ellwand.order.Spreading.PlyHeadings;
import ellwand.problem.InputException;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** What is wrong with an order is said with its size or colour, and what to do. */
class BadOrdersTest {

  private static void refused(Executable order, String... words) {
    String message = assertThrows(InputException.class, order).getMessage();
    for (String word : words) {
      assertTrue(message.contains(word), message);
    }
  }

  @Test
  void aNegativeQuantity() {
    refused(
        () -> Orders.plain(50, 4, "10=40, 12=-3"),
        "-3",
        "colour red",
        "size 12",
        "Write 0 or more");
  }

  @Test
  void nothingWanted() {
    refused(() -> Orders.plain(50, 4, "10=0, 12=0"), "no garment is wanted", "Give a quantity");
  }

  @Test
  void tooManyGarments() {
    refused(() -> Orders.plain(50, 4, "10=1000001"), "1000001 garments", "Split it");
  }

  @Test
  void noPliesAndNoGarments() {
    refused(() -> Orders.plain(0, 0, "10=4"), "0 plies", "0 garments", "ply limit to 1 or more");
  }

  @Test
  void endLossAndTableWithoutSense() {
    refused(() -> new Limits(1, 1, 0, -1), "a table of 0.0 mm", "end loss is -1.0 mm");
  }

  /** As a search rounds them. */
  @Test
  void aGarmentAsLongAsTheTableIsNotTooLong() {
    Order order =
        new Order(
            Map.of("red", Orders.sizes("10=4")),
            new Limits(10, 2, 1000, 20),
            Tolerance.NONE,
            Cost.NONE,
            Spreading.PLAIN);
    assertEquals(1, Orders.plan(order, length(980.0003), 10).lays().size());
    refused(() -> Orders.plan(order, length(980.002), 10), "size 10", "Use a longer table");
  }

  private static MarkerLengths length(double mm) {
    return new GarmentLengths(Map.of("10", mm));
  }

  @Test
  void toleranceAndCostsBelowNothing() {
    refused(() -> new Tolerance(0, -1), "-1 under", "0 or more");
    refused(() -> new Cost(-1, 0), "a lay costs -1.0");
  }

  @Test
  void aSizeWithoutLength() {
    Order order = Orders.plain(50, 4, "10=40, 12=3");
    refused(
        () -> Orders.plan(order, new GarmentLengths(Map.of("10", 900.0, "14", 900.0)), 1),
        "size 12 is ordered but has no marker length",
        "10, 14");
  }

  @Test
  void aLengthOfNothing() {
    refused(() -> new GarmentLengths(Map.of("10", 0.0)), "size 10", "more than 0");
  }

  @Test
  void aTableShorterThanAGarmentWithItsEndLoss() {
    Order order =
        new Order(
            Map.of("red", Map.of("10", 1, "12", 1)),
            new Limits(10, 2, 1030, 40),
            Tolerance.NONE,
            Cost.NONE,
            Spreading.PLAIN);
    MarkerLengths lengths = new GarmentLengths(Map.of("10", 990.0, "12", 1000.0));
    String message =
        assertThrows(InputException.class, () -> Orders.plan(order, lengths, 1)).getMessage();
    assertEquals(
        "one garment of size 12 needs 1040 mm with end loss, but the table is 1030 mm long."
            + " Use a longer table, or leave out size 12.",
        message);
  }

  @Test
  void spreadingThatTheClothForbids() {
    refused(
        () -> new Spreading(Faces.ALL_UP, PlyHeadings.ALTERNATING, Direction.ONE_WAY, false, false),
        "one-way cloth",
        "all headings one way");
    refused(
        () ->
            new Spreading(
                Faces.FACE_TO_FACE,
                PlyHeadings.ALTERNATING,
                Direction.ONE_WAY_PER_GARMENT,
                true,
                false),
        "half sets",
        "nap");
    refused(
        () -> new Spreading(Faces.ALL_UP, PlyHeadings.ONE_WAY, Direction.ANY_WAY, true, false),
        "half sets",
        "face to face");
  }

  @Test
  void onePlyWhereTwoBelongTogether() {
    Spreading folded =
        new Spreading(Faces.FOLDED, PlyHeadings.ONE_WAY, Direction.ANY_WAY, false, false);
    refused(() -> Orders.spread(1, 4, "10=4", Tolerance.NONE, folded), "two by two", "2 or more");
  }
}
