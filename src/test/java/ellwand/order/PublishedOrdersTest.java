package ellwand.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Worked orders from 'Cutting plan', after Carr and Latham's Technology of Clothing Manufacture.
 * The third answer is the least that garments / (plies x garments a marker) allows: 1300 / 375.
 */
class PublishedOrdersTest {

  @ParameterizedTest
  @CsvSource({
    "50, 4, '10=40, 12=90, 14=80, 16=25, 18=25', 2",
    "60, 4, '12=100, 14=160, 16=120, 18=60', 2",
    "75, 5, 'S=300, M=600, L=400', 4"
  })
  void isCutInTheFewestLays(int maxPlies, int maxGarments, String sizes, int lays) {
    CutOrderPlan plan = Orders.plan(Orders.plain(maxPlies, maxGarments, sizes));

    assertEquals(lays, plan.lays().size());
    assertEquals(lays, plan.atLeast().lays());
    assertEquals(Map.of("red", Orders.sizes(sizes)), plan.cut());
    assertTrue(plan.proved());
    for (PlannedLay lay : plan.lays()) {
      assertTrue(lay.totalPlies() <= maxPlies, lay.toString());
      assertTrue(lay.mix().count() <= maxGarments, lay.toString());
    }
  }
}
