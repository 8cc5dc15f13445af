package ellwand.order;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** Bounds reckoned by hand. */
class LowerBoundsTest {

  private static LowerBounds bounds(Order order, Map<String, Double> lengths) {
    return LowerBounds.of(new Numbers(order, new GarmentLengths(lengths)));
  }

  @Test
  void garmentsPliesAndEndLossBoundAPlan() {
    Order order =
        new Order(
            Map.of("red", Orders.sizes("10=30, 12=11"), "blue", Orders.sizes("10=5")),
            new Limits(5, 4, 10_000, 100),
            Tolerance.NONE,
            new Cost(10, 2),
            Spreading.PLAIN);
    // Red needs 41 / 4, so 11 plies, blue 2: 13 plies, 3 lays; 35 m + 16.5 m + 1.3 m of end loss.
    LowerBounds bounds = bounds(order, Map.of("10", 1000.0, "12", 1500.0));
    assertEquals(3, bounds.lays());
    assertEquals(52_800, bounds.clothMm(), 1e-9);
    assertEquals(30 + 105.6, bounds.cost(), 1e-9);
  }

  @Test
  void aShortTableBoundsTheGarmentsOfAMarker() {
    Order order =
        new Order(
            Map.of("red", Orders.sizes("10=12")),
            new Limits(2, 4, 2100, 100),
            Tolerance.NONE,
            Cost.NONE,
            Spreading.PLAIN);
    assertEquals(3, bounds(order, Map.of("10", 1000.0)).lays());
  }

  @Test
  void moreSizesThanMarkersHoldNeedMoreLays() {
    Order order = Orders.plain(50, 2, "10=1, 12=1, 14=1, 16=1, 18=1");
    assertEquals(
        3, bounds(order, Map.of("10", 1.0, "12", 1.0, "14", 1.0, "16", 1.0, "18", 1.0)).lays());
  }

  @Test
  void garmentsUnderNeedNotBeCut() {
    Order order = Orders.spread(10, 2, "10=10, 12=3", new Tolerance(0, 4), Spreading.PLAIN);
    assertEquals(6000, bounds(order, Map.of("10", 1000.0, "12", 1000.0)).clothMm(), 1e-9);
  }
}
