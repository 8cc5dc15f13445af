package ellwand.bench;

import ellwand.order.Cost;
import ellwand.order.GarmentLengths;
import ellwand.order.Limits;
import ellwand.order.MarkerLengths;
import ellwand.order.Order;
import ellwand.order.Spreading;
import ellwand.order.Tolerance;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * An order made at random: fewer garments in the outer sizes; 100 plies, 4 garments a marker, 12 m
 * of table, 4 cm of end loss; a lay costs 15, a metre of cloth 8.
 */
record GeneratedOrder(Order order, MarkerLengths lengths) {

  private static final double FIRST_MM = 700;
  private static final double NEXT_MM = 50;

  static GeneratedOrder of(int sizes, int colours, int garments, int over, int under, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Map<String, Map<String, Integer>> wanted = new LinkedHashMap<>();
    Map<String, Double> lengths = new LinkedHashMap<>();
    for (int c = 1; c <= colours; c++) {
      Map<String, Integer> bySize = new LinkedHashMap<>();
      for (int s = 0; s < sizes; s++) {
        String size = Integer.toString(92 + 6 * s);
        // From a half at either end to three halves in the middle.
        double share = 1.5 - Math.abs(2.0 * s - (sizes - 1)) / Math.max(1, sizes - 1);
        double mean = (double) garments / colours / sizes * share;
        bySize.put(size, (int) Math.round(mean * (0.7 + 0.6 * random.nextDouble())));
        lengths.put(size, FIRST_MM + NEXT_MM * s);
      }
      wanted.put("colour " + c, bySize);
    }
    return new GeneratedOrder(
        new Order(
            wanted,
            new Limits(100, 4, 12_000, 40),
            new Tolerance(over, under),
            new Cost(15, 8),
            Spreading.PLAIN),
        new GarmentLengths(lengths));
  }
}
