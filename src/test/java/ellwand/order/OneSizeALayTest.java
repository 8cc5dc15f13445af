package ellwand.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class OneSizeALayTest {

  private static final int ORDERS = 60;

  private static List<Spread> plan(Numbers numbers) {
    List<Spread> plan = new OneSizeALay(numbers).plan();
    assertTrue(numbers.within(plan));
    for (Spread spread : plan) {
      assertTrue(numbers.fits(spread.mix()) && spread.totalTurns() <= numbers.maxTurns);
      assertEquals(1, java.util.Arrays.stream(spread.mix()).filter(n -> n > 0).count());
    }
    return plan;
  }

  @Test
  void oneSizeByItselfIsMostlyAsCheapAsCanBe() {
    SplittableRandom random = new SplittableRandom(4);
    int cheap = 0;
    for (int i = 0; i < ORDERS; i++) {
      Map<String, Map<String, Integer>> wanted = new LinkedHashMap<>();
      for (int c = random.nextInt(2); c >= 0; c--) {
        wanted.put("colour " + c, Map.of("10", 1 + random.nextInt(6)));
      }
      Order order =
          new Order(
              wanted,
              new Limits(2 + random.nextInt(5), 1 + random.nextInt(3), 4000, 30),
              new Tolerance(random.nextInt(2), random.nextInt(2)),
              new Cost(random.nextInt(3), 1 + random.nextInt(10)),
              Spreading.PLAIN);
      MarkerLengths lengths = new GarmentLengths(Map.of("10", 1000.0));
      plan(new Numbers(order, lengths));
      double cheapest = EveryPlan.cheapest(order, lengths);
      double cost = OrderPlanner.oneSizeALay(order, lengths).cost();
      assertTrue(cost <= 1.1 * cheapest, "order " + i + ": " + order);
      cheap += cost < cheapest + 1e-6 ? 1 : 0;
    }
    // A few plies a lay, shared between colours, is what it does not weigh.
    assertTrue(cheap >= ORDERS * 9 / 10, cheap + " of " + ORDERS);
  }

  @Test
  void aLargeOrderIsSplitOverTheLaysThatItsPliesAskFor() {
    Numbers numbers = new Numbers(Orders.large(0), Orders.childrensLengths());
    assertTrue(plan(numbers).size() <= 32);
  }

  @Test
  void hundredsOfThousandsOfGarmentsAreNoTrouble() {
    Order order = Orders.plain(1000, 50, "10=600000, 12=17");
    plan(new Numbers(order, Orders.metreEach(order)));
  }
}
