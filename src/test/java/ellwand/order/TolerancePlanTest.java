package ellwand.order;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** What a tolerance, or mixing sizes, must never do: cost more. */
class TolerancePlanTest {

  private static final int STEPS = 120;

  @Property(tries = 25)
  void neitherAToleranceNorMixedSizesCostMore(
      @ForAll @IntRange(min = 2, max = 6) int sizes,
      @ForAll @IntRange(min = 1, max = 4) int colours,
      @ForAll @Size(min = 24, max = 24) List<@IntRange(min = 1, max = 90) Integer> garments,
      @ForAll @IntRange(max = 3) int over,
      @ForAll @IntRange(max = 1) int under,
      @ForAll @IntRange(max = 60) int layCost) {
    Map<String, Map<String, Integer>> wanted = new LinkedHashMap<>();
    Map<String, Double> lengths = new LinkedHashMap<>();
    int next = 0;
    for (int c = 0; c < colours; c++) {
      Map<String, Integer> bySize = new LinkedHashMap<>();
      for (int s = 0; s < sizes; s++) {
        bySize.put("size " + s, garments.get(next++));
        lengths.put("size " + s, 700.0 + 60 * s);
      }
      wanted.put("colour " + c, bySize);
    }
    Order exact =
        new Order(
            wanted,
            new Limits(40, 4, 5000, 40),
            Tolerance.NONE,
            new Cost(layCost, 8),
            Spreading.PLAIN);
    Order order =
        new Order(
            wanted, exact.limits(), new Tolerance(over, under), exact.cost(), exact.spreading());
    MarkerLengths each = new GarmentLengths(lengths);

    CutOrderPlan plan = Orders.plan(order, each, STEPS);

    assertTrue(plan.cost() <= Orders.plan(exact, each, STEPS).cost() + 1e-9, order::toString);
    assertTrue(plan.cost() <= OrderPlanner.oneSizeALay(order, each).cost() + 1e-9, order::toString);
    assertTrue(plan.cost() >= plan.atLeast().cost() - 1e-9);
    assertTrue(new Numbers(order, each).within(spreads(plan)), order::toString);
  }

  private static List<Spread> spreads(CutOrderPlan plan) {
    Order order = plan.order();
    return plan.lays().stream()
        .map(
            lay ->
                new Spread(
                    order.sizes().stream().mapToInt(s -> lay.mix().count(s)).toArray(),
                    order.colours().stream()
                        .mapToInt(c -> lay.plies().getOrDefault(c, 0))
                        .toArray()))
        .toList();
  }
}
