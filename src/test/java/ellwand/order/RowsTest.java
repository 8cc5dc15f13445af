package ellwand.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Mixes cut with the markers that are there. */
class RowsTest {

  private static final double GAP = 3;

  private static SizeMix random(SplittableRandom random, int most) {
    Map<String, Integer> garments = new LinkedHashMap<>();
    for (int n = 1 + random.nextInt(most); n > 0; n--) {
      garments.merge(Character.toString('A' + random.nextInt(3)), 1, Integer::sum);
    }
    return new SizeMix(garments);
  }

  @Property(tries = 200)
  void noRowIsShorter(@ForAll long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Map<SizeMix, Double> there = new LinkedHashMap<>();
    for (int n = 0; n < 5; n++) {
      there.put(random(random, 3), 1.0 + random.nextInt(100));
    }
    SizeMix mix = random(random, 4);
    Rows rows = new Rows(there, mm -> mm + GAP);
    double shortest = shortest(there, mix);
    assertEquals(shortest, rows.lengthMm(mix));
    List<SizeMix> row = rows.markers(mix);
    assertEquals(shortest < Double.POSITIVE_INFINITY, !row.isEmpty());
    if (!row.isEmpty()) {
      double lengthMm = row.stream().mapToDouble(there::get).sum() + GAP * (row.size() - 1);
      assertEquals(shortest, lengthMm, 1e-9);
      mix.garments()
          .forEach(
              (size, n) ->
                  assertTrue(row.stream().mapToInt(marker -> marker.count(size)).sum() >= n));
    }
  }

  /** Whatever may be first, and any row behind it. */
  private static double shortest(Map<SizeMix, Double> there, SizeMix mix) {
    return there.entrySet().stream()
        .filter(e -> e.getKey().garments().keySet().stream().anyMatch(s -> mix.count(s) > 0))
        .mapToDouble(
            e ->
                e.getValue()
                    + mix.without(e.getKey()).map(left -> GAP + shortest(there, left)).orElse(0.0))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  @Example
  void theNextMarkerBeginsWhereItMay() {
    SizeMix one = SizeMix.one("A");
    Rows rows = new Rows(Map.of(one, 70.0), mm -> 100 * Math.ceil(mm / 100));
    assertEquals(270, rows.lengthMm(new SizeMix(Map.of("A", 3))));
    assertEquals(List.of(one, one), rows.markers(new SizeMix(Map.of("A", 2))));
    assertEquals(List.of(), rows.markers(SizeMix.one("B")));
  }
}
