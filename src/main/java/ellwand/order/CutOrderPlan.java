package ellwand.order;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which lays, with which sizes and how many plies, cut an order.
 *
 * @param atLeast what no plan can undercut, with the same marker lengths
 * @param proved no plan is cheaper (or, without costs, takes less cloth, then fewer lays), with the
 *     same marker lengths
 * @param misses sizes and colours that no plan can cut within tolerance; empty if all is well
 * @param stoppedEarly stopped by the user before the effort was spent
 */
public record CutOrderPlan(
    Order order,
    List<PlannedLay> lays,
    LowerBounds atLeast,
    boolean proved,
    List<Miss> misses,
    boolean stoppedEarly) {

  public CutOrderPlan {
    lays = List.copyOf(lays);
    misses = List.copyOf(misses);
  }

  /** Garments cut by colour, then size; every size of the order in every colour. */
  public Map<String, Map<String, Integer>> cut() {
    Map<String, Map<String, Integer>> cut = new LinkedHashMap<>();
    for (String colour : order.colours()) {
      Map<String, Integer> sizes = new LinkedHashMap<>();
      order.sizes().forEach(size -> sizes.put(size, cut(colour, size)));
      cut.put(colour, sizes);
    }
    return cut;
  }

  /** Garments cut of one colour and size. */
  public int cut(String colour, String size) {
    Spreading spreading = order.spreading();
    return lays.stream()
        .mapToInt(
            lay ->
                lay.plies().getOrDefault(colour, 0)
                    / spreading.pliesTogether()
                    * spreading.garmentsTogether()
                    * lay.mix().count(size))
        .sum();
  }

  /** Cloth of one colour, with end loss, mm. */
  public double clothMm(String colour) {
    return lays.stream().mapToDouble(lay -> clothMm(lay, colour)).sum();
  }

  /** Cloth that one lay takes of one colour, with end loss, mm. */
  public double clothMm(PlannedLay lay, String colour) {
    Spreading spreading = order.spreading();
    return (lay.lengthMm() + order.limits().endLossMm())
        * (lay.plies().getOrDefault(colour, 0) / spreading.pliesTogether())
        * spreading.lengthsTogether();
  }

  /** Cloth of all colours, with end loss, mm. */
  public double clothMm() {
    return order.colours().stream().mapToDouble(this::clothMm).sum();
  }

  /** What is bought of one colour, mm; what is cut of it if no cloth is known. */
  public double boughtMm(String colour) {
    return order.cost().boughtMm(clothMm(colour));
  }

  /** What is to be paid, in the user's money; 0 if no cost was given. */
  public double cost() {
    double boughtMm = order.colours().stream().mapToDouble(this::boughtMm).sum();
    return order.cost().lay() * lays.size() + order.cost().clothPerMetre() * boughtMm / 1000;
  }

  /** How many different markers have to be made. */
  public int markers() {
    return (int) lays.stream().map(PlannedLay::mix).distinct().count();
  }
}
