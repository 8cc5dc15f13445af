package ellwand.order;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.Selling;
import ellwand.cloth.Shrinkage;
import ellwand.rule.Trial;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Collectors;

/** Orders for tests, and how they are planned there. */
final class Orders {

  private Orders() {}

  /** {@code "10=40, 12=90"}: garments by size. */
  static Map<String, Integer> sizes(String text) {
    Map<String, Integer> sizes = new LinkedHashMap<>();
    for (String entry : text.split(",\\s*")) {
      String[] sides = entry.split("=");
      sizes.put(sides[0], Integer.parseInt(sides[1]));
    }
    return sizes;
  }

  /** One colour on a long table, no end loss, no costs, nothing over or under. */
  static Order plain(int maxPlies, int maxGarments, String sizes) {
    return spread(maxPlies, maxGarments, sizes, Tolerance.NONE, Spreading.PLAIN);
  }

  static Order spread(
      int maxPlies, int maxGarments, String sizes, Tolerance tolerance, Spreading spreading) {
    return new Order(
        Map.of("red", sizes(sizes)),
        new Limits(maxPlies, maxGarments, Double.POSITIVE_INFINITY, 0),
        tolerance,
        Cost.NONE,
        spreading);
  }

  /** Cloth that the shop sells in such steps, and that shrinks so much along before it is cut. */
  static Cloth sold(double stepMm, double shrinkage) {
    Cloth plain = Trial.cloth(1400, 0, Direction.ANY_WAY, Fold.OPEN);
    return new Cloth(
        "serge",
        plain.goods().shrinking(new Shrinkage(shrinkage, 0, Shrinkage.When.BEFORE_CUTTING)),
        plain.laying(),
        Selling.inSteps(stepMm));
  }

  /** A metre for each garment of any size of the order. */
  static MarkerLengths metreEach(Order order) {
    return new GarmentLengths(
        order.sizes().stream().collect(Collectors.toMap(size -> size, size -> 1000.0)));
  }

  static CutOrderPlan plan(Order order, MarkerLengths lengths, long steps) {
    return OrderPlanner.plan(order, lengths, Request.of(Effort.ofSteps(steps), new Seed(1)));
  }

  static CutOrderPlan plan(Order order) {
    return plan(order, metreEach(order), 1000);
  }

  /** Eight sizes in six colours, about 5,000 garments, fewer in the outer sizes. */
  static Order large(int over) {
    double[] share = {0.5, 0.8, 1, 1.2, 1.2, 1, 0.8, 0.5};
    SplittableRandom random = new SplittableRandom(7);
    Map<String, Map<String, Integer>> wanted = new LinkedHashMap<>();
    for (String colour : "red blue green grey navy ecru".split(" ")) {
      Map<String, Integer> sizes = new LinkedHashMap<>();
      for (int s = 0; s < share.length; s++) {
        double garments = 5000 / 6.0 / 7 * share[s] * (0.7 + 0.6 * random.nextDouble());
        sizes.put(Integer.toString(92 + 6 * s), (int) Math.round(garments));
      }
      wanted.put(colour, sizes);
    }
    return new Order(
        wanted,
        new Limits(100, 4, 12_000, 40),
        new Tolerance(over, 0),
        new Cost(15, 8),
        Spreading.PLAIN);
  }

  /** Lengths for {@link #large}: 700 mm for size 92, 50 mm more for each next one. */
  static MarkerLengths childrensLengths() {
    Map<String, Double> lengths = new LinkedHashMap<>();
    for (int s = 0; s < 8; s++) {
      lengths.put(Integer.toString(92 + 6 * s), 700.0 + 50 * s);
    }
    return new GarmentLengths(lengths);
  }
}
