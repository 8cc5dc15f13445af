package ellwand.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Cloth;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** The planner against {@link EveryPlan}. */
class SmallOrdersTest {

  @Test
  void smallOrdersAreAsCheapAsCanBe() {
    asCheapAsCanBe(200, 20, random -> Optional.empty());
  }

  /** Sold by a step of a tenth of a metre to two metres, some of it washed first. */
  @Test
  void smallOrdersAreAsCheapAsCanBeByWhatIsBought() {
    asCheapAsCanBe(
        100,
        21,
        random ->
            Optional.of(
                Orders.sold(
                    100 + random.nextInt(20) * 100,
                    random.nextInt(2) * random.nextInt(8) / 100.0)));
  }

  private static void asCheapAsCanBe(
      int orders, long seed, Function<SplittableRandom, Optional<Cloth>> goods) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < orders; i++) {
      int sizes = 1 + random.nextInt(3);
      Order order = order(random, sizes, goods.apply(random));
      MarkerLengths lengths = lengths(random, sizes);
      double cheapest = EveryPlan.cheapest(order, lengths);

      CutOrderPlan plan = Orders.plan(order, lengths, 200);

      assertEquals(cheapest, plan.cost(), 1e-6, "order " + i + ": " + order);
      assertTrue(plan.proved());
      assertWithinTolerance(plan);
    }
  }

  private static Order order(SplittableRandom random, int sizes, Optional<Cloth> goods) {
    Map<String, Map<String, Integer>> wanted = new LinkedHashMap<>();
    int colours = 1 + random.nextInt(2);
    for (int c = 0; c < colours; c++) {
      Map<String, Integer> bySize = new LinkedHashMap<>();
      for (int s = 0; s < sizes; s++) {
        bySize.put("size " + s, (s == 0 ? 1 : 0) + random.nextInt(6 / colours));
      }
      wanted.put("colour " + c, bySize);
    }
    return new Order(
        wanted,
        new Limits(2 + random.nextInt(5), 1 + random.nextInt(3), 1500 + random.nextInt(3000), 30),
        new Tolerance(random.nextInt(2), random.nextInt(2)),
        new Cost(random.nextInt(20), 1 + random.nextInt(10), goods),
        Spreading.PLAIN);
  }

  private static MarkerLengths lengths(SplittableRandom random, int sizes) {
    Map<String, Double> lengths = new LinkedHashMap<>();
    for (int s = 0; s < sizes; s++) {
      lengths.put("size " + s, 600.0 + random.nextInt(700));
    }
    return new GarmentLengths(lengths);
  }

  private static void assertWithinTolerance(CutOrderPlan plan) {
    Order order = plan.order();
    plan.cut()
        .forEach(
            (colour, bySize) ->
                bySize.forEach(
                    (size, cut) -> {
                      int wanted = order.wanted(colour, size);
                      int over = wanted == 0 ? 0 : order.tolerance().over();
                      int nearest =
                          Math.max(
                              wanted - order.tolerance().under(), Math.min(wanted + over, cut));
                      assertEquals(nearest, cut, colour + ", " + size);
                    }));
  }
}
