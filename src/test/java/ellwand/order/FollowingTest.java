package ellwand.order;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a lining is cut for, once it is known what the first cloth gives. */
class FollowingTest {

  @Test
  void coloursJoinAndNothingMayBeCutTooFew() {
    Order order = Orders.spread(20, 4, "S=9, M=9, L=9", new Tolerance(2, 1), Spreading.PLAIN);
    Map<String, Map<String, Integer>> cut =
        Map.of(
            "ochre", Map.of("S", 3, "M", 4, "L", 1),
            "moss", Map.of("S", 2, "M", 0, "L", 1),
            "grey", Map.of("S", 5, "M", 1, "L", 1));

    Order lining = order.following(cut, Map.of("ochre", "sand", "moss", "sand"), Set.of("S", "M"));

    assertEquals(
        Map.of("sand", Map.of("S", 5, "M", 4), "grey", Map.of("S", 5, "M", 1)), lining.wanted());
    assertEquals(new Tolerance(2, 0), lining.tolerance());
    assertEquals(order.limits(), lining.limits());
  }
}
