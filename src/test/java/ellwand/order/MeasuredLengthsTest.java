package ellwand.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import ellwand.order.MeasuredLengths.Unmade;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** True marker lengths given back to the planner. */
class MeasuredLengthsTest {

  private static final MarkerLengths ESTIMATE =
      new GarmentLengths(Map.of("10", 1000.0, "12", 1200.0));

  private static MeasuredLengths hoped(Map<SizeMix, Double> measured) {
    return new MeasuredLengths(ESTIMATE, measured, mm -> mm + 2, Unmade.HOPED);
  }

  @Test
  void whatWasMeasuredIsTrueAndTheRestIsCorrected() {
    MarkerLengths lengths = hoped(Map.of(new SizeMix(Map.of("10", 1, "12", 1)), 1980.0));
    assertEquals(1980, lengths.lengthMm(new SizeMix(Map.of("12", 1, "10", 1))));
    assertEquals(1800, lengths.lengthMm(new SizeMix(Map.of("10", 2))), 1e-9);
    assertEquals(900, lengths.leastMm("10"), 1e-9);
  }

  @Test
  void longerThanEstimatedLeavesTheLowerBoundAlone() {
    MarkerLengths lengths = hoped(Map.of(new SizeMix(Map.of("10", 1)), 1100.0));
    assertEquals(1320, lengths.lengthMm(SizeMix.one("12")), 1e-9);
    assertEquals(1200, lengths.leastMm("12"));
  }

  @Test
  void howManyGarmentsFillTheWidthIsToldApart() {
    MarkerLengths lengths =
        hoped(Map.of(new SizeMix(Map.of("10", 1)), 1100.0, new SizeMix(Map.of("10", 2)), 1900.0));
    assertEquals(1320, lengths.lengthMm(SizeMix.one("12")), 1e-9);
    assertEquals(2280, lengths.lengthMm(new SizeMix(Map.of("12", 2))), 1e-9);
    assertEquals(3000, lengths.lengthMm(new SizeMix(Map.of("10", 3))), 1e-9);
  }

  @Test
  void nothingIsTakenForLongerThanARowOfWhatWasMade() {
    Map<SizeMix, Double> made =
        Map.of(SizeMix.one("10"), 600.0, new SizeMix(Map.of("10", 2, "12", 1)), 5000.0);
    assertEquals(1202, hoped(made).lengthMm(new SizeMix(Map.of("10", 2))));
    MeasuredLengths sure = new MeasuredLengths(ESTIMATE, made, mm -> mm + 2, Unmade.SURE);
    assertEquals(1202, sure.lengthMm(new SizeMix(Map.of("10", 2))));
    assertEquals(5000, sure.lengthMm(SizeMix.one("12")), "a larger one");
    MeasuredLengths two =
        new MeasuredLengths(ESTIMATE, Map.of(SizeMix.one("10"), 600.0), mm -> mm + 2, Unmade.SURE);
    assertEquals(Double.POSITIVE_INFINITY, two.lengthMm(SizeMix.one("12")));
  }

  @Test
  void whatIsLikelyIsAsLongAsAllThatWasMadeTells() {
    Map<SizeMix, Double> made = Map.of(SizeMix.one("10"), 1100.0);
    SizeMix three = new SizeMix(Map.of("12", 3));
    assertEquals(3600, hoped(made).lengthMm(three), 1e-9);
    MeasuredLengths likely = new MeasuredLengths(ESTIMATE, made, mm -> mm + 2, Unmade.LIKELY);
    assertEquals(3960, likely.lengthMm(three), 1e-9);
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
            hoped(
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
