package ellwand.figures;

import ellwand.figures.ToBuy.Kind;
import ellwand.pattern.Style;
import ellwand.pattern.Trim;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Works out which trims some garments take, and what of them to buy. */
public final class Trimmings {

  /** Nobody buys another step or pack for less than this share of it. */
  private static final double NOT_WORTH_A_STEP = 1e-6;

  private final Style style;

  public Trimmings(Style style) {
    this.style = style;
  }

  /**
   * What to buy for garments, in the order of the style; pieces of different lengths apart.
   *
   * @param garments by size
   */
  public List<ToBuy> toBuy(Map<String, Integer> garments) {
    List<ToBuy> list = new ArrayList<>();
    for (Trim trim : style.design().trims()) {
      Map<Optional<Double>, Double> byLength = new LinkedHashMap<>();
      garments.forEach(
          (size, many) ->
              style
                  .amount(trim, size)
                  .ifPresent(a -> byLength.merge(a.eachMm(), many * a.much(), Double::sum)));
      byLength.forEach((each, much) -> list.add(toBuy(trim, each, inSteps(trim, much))));
    }
    return list;
  }

  private ToBuy toBuy(Trim trim, Optional<Double> each, double much) {
    return new ToBuy(
        Kind.TRIM,
        trim.name(),
        "",
        trim.widthMm(),
        trim.byLength() ? Optional.of(much) : each,
        trim.byLength() ? OptionalInt.empty() : OptionalInt.of((int) Math.round(much)),
        trim.byLength() ? 1 : (int) trim.step(),
        trim.price().of(much),
        trim.price().currency());
  }

  private static double inSteps(Trim trim, double much) {
    return Math.ceil(much / trim.step() - NOT_WORTH_A_STEP) * trim.step();
  }

  /** What the trims of one garment of each size cost, without what is bought too much. */
  public Map<String, Double> costBySize() {
    Map<String, Double> cost = new LinkedHashMap<>();
    style.sizes().forEach(size -> cost.put(size, cost(size)));
    return cost;
  }

  private double cost(String size) {
    return style.design().trims().stream()
        .mapToDouble(
            trim -> style.amount(trim, size).map(a -> trim.price().of(a.much())).orElse(0.0))
        .sum();
  }
}
