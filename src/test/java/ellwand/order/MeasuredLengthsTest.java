package ellwand.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** True marker lengths given back to the planner. */
class MeasuredLengthsTest {

  private static final MarkerLengths ESTIMATE =
      new GarmentLengths(Map.of("10", 1000.0, "12", 1200.0));

  @Test
  void whatWasMeasuredIsTrueAndTheRestIsCorrected() {
    MarkerLengths lengths =
        new MeasuredLengths(ESTIMATE, Map.of(new SizeMix(Map.of("10", 1, "12", 1)), 1980.0));
    assertEquals(1980, lengths.lengthMm(new SizeMix(Map.of("12", 1, "10", 1))));
    assertEquals(1800, lengths.lengthMm(new SizeMix(Map.of("10", 2))), 1e-9);
    assertEquals(900, lengths.leastMm("10"), 1e-9);
  }

  @Test
  void longerThanEstimatedLeavesTheLowerBoundAlone() {
    MarkerLengths lengths =
        new MeasuredLengths(ESTIMATE, Map.of(new SizeMix(Map.of("10", 1)), 1100.0));
    assertEquals(1320, lengths.lengthMm(SizeMix.one("12")), 1e-9);
    assertEquals(1200, lengths.leastMm("12"));
  }

  @Test
  void howManyGarmentsFillTheWidthIsToldApart() {
    MarkerLengths lengths =
        new MeasuredLengths(
            ESTIMATE,
            Map.of(new SizeMix(Map.of("10", 1)), 1100.0, new SizeMix(Map.of("10", 2)), 1900.0));
    assertEquals(1320, lengths.lengthMm(SizeMix.one("12")), 1e-9);
    assertEquals(2280, lengths.lengthMm(new SizeMix(Map.of("12", 2))), 1e-9);
    assertEquals(3000, lengths.lengthMm(new SizeMix(Map.of("10", 3))), 1e-9);
  }

  @Test
  void aTrueLengthChangesThePlan() {
    Order order =
        new Order(
            Map.of("red", Orders.sizes("10=10, 12=10")),
            new Limits(20, 2, 4000, 40),
            Tolerance.NONE,
            Cost.NONE,
            Spreading.PLAIN);
    CutOrderPlan planned = Orders.plan(order, ESTIMATE, 100);
    assertEquals(new SizeMix(Map.of("10", 1, "12", 1)), planned.lays().get(0).mix());

    // Mixed sizes nest badly here, equal ones as estimated.
    CutOrderPlan again =
        Orders.plan(
            order,
            new MeasuredLengths(
                ESTIMATE,
                Map.of(
                    new SizeMix(Map.of("10", 1, "12", 1)), 2500.0,
                    new SizeMix(Map.of("10", 2)), 2000.0,
                    new SizeMix(Map.of("12", 2)), 2400.0)),
            100);
    assertNotEquals(planned.lays(), again.lays());
    assertEquals(2, again.lays().size());
    assertEquals(5 * 2040 + 5 * 2440, again.clothMm(), 1e-6);
  }
}
