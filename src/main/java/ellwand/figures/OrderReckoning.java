package ellwand.figures;

import ellwand.figures.OrderCloth.OrderMarker;
import ellwand.figures.OrderCloth.SizeCost;
import ellwand.figures.OrderCloth.Sum;
import ellwand.order.CutOrderPlan;
import ellwand.order.MarkerLengths;
import ellwand.order.PlannedLay;
import ellwand.order.SizeMix;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Works out the figures of a plan. */
public final class OrderReckoning {

  private final String cloth;
  private final CutOrderPlan plan;
  private final Map<SizeMix, Figures> markers;
  private final MarkerLengths estimate;
  private final List<SizeMix> mixes;

  /**
   * @param cloth name of the cloth, empty if none is known
   * @param markers figures of those that were made; empty if lengths were given
   * @param estimate lengths that were first planned with
   */
  public OrderReckoning(
      String cloth, CutOrderPlan plan, Map<SizeMix, Figures> markers, MarkerLengths estimate) {
    this.cloth = cloth;
    this.plan = plan;
    this.markers = Map.copyOf(markers);
    this.estimate = estimate;
    this.mixes = plan.lays().stream().map(PlannedLay::mix).distinct().toList();
  }

  /** What any plan takes. */
  public static Sum sum(CutOrderPlan plan) {
    double perMetre = plan.order().cost().clothPerMetre();
    double boughtMm = plan.order().colours().stream().mapToDouble(plan::boughtMm).sum();
    return new Sum(
        plan.lays().size(),
        plan.clothMm(),
        plan.order().cost().lay() * plan.lays().size(),
        plan.clothMm() / 1000 * perMetre,
        boughtMm / 1000 * perMetre);
  }

  /** The name of a mix's files. */
  public String name(SizeMix mix) {
    return (cloth.isEmpty() ? "marker" : cloth) + "-" + (mixes.indexOf(mix) + 1);
  }

  /**
   * All of them.
   *
   * @param firstLay number of the first lay
   */
  public OrderCloth figures(int firstLay, Sum plain, Optional<OrderCloth.Revision> revision) {
    List<LayTicket> lays = new ArrayList<>();
    plan.lays().forEach(lay -> lays.add(ticket(firstLay + lays.size(), lay)));
    Map<String, Integer> garments = new LinkedHashMap<>();
    Map<String, Double> byColour = new LinkedHashMap<>();
    Map<String, Double> toBuy = new LinkedHashMap<>();
    for (String colour : plan.order().colours()) {
      garments.put(
          colour, plan.order().sizes().stream().mapToInt(size -> plan.cut(colour, size)).sum());
      byColour.put(colour, plan.clothMm(colour));
      if (plan.order().cost().goods().isPresent()) {
        toBuy.put(colour, plan.boughtMm(colour));
      }
    }
    return new OrderCloth(
        cloth,
        garments,
        lays,
        mixes.stream().map(this::marker).toList(),
        byColour,
        toBuy,
        sizes(),
        utilisation(),
        sum(plan),
        plan.atLeast().lays(),
        plan.proved(),
        plain,
        revision,
        plan.misses().stream().map(Object::toString).toList());
  }

  private LayTicket ticket(int number, PlannedLay lay) {
    Map<String, Map<String, Integer>> cut = new LinkedHashMap<>();
    Map<String, Double> clothMm = new LinkedHashMap<>();
    for (String colour : lay.plies().keySet()) {
      Map<String, Integer> bySize = new LinkedHashMap<>();
      lay.mix().garments().forEach((size, n) -> bySize.put(size, times(lay, colour) * n));
      cut.put(colour, bySize);
      clothMm.put(colour, plan.clothMm(lay, colour));
    }
    double lengths = clothMm.values().stream().mapToDouble(Double::doubleValue).sum();
    double endLoss = plan.order().limits().endLossMm();
    return new LayTicket(
        number,
        cloth,
        name(lay.mix()),
        lay.mix().garments(),
        plan.order().spreading(),
        lay.plies(),
        cut,
        lay.lengthMm(),
        clothMm,
        lengths * endLoss / (lay.lengthMm() + endLoss));
  }

  /** How often the plies of a colour cut the marker's garments. */
  private int times(PlannedLay lay, String colour) {
    return lay.plies().get(colour)
        / plan.order().spreading().pliesTogether()
        * plan.order().spreading().garmentsTogether();
  }

  private OrderMarker marker(SizeMix mix) {
    double length =
        plan.lays().stream().filter(l -> l.mix().equals(mix)).findFirst().orElseThrow().lengthMm();
    return new OrderMarker(
        name(mix),
        mix.garments(),
        length,
        estimate.lengthMm(mix),
        Optional.ofNullable(markers.get(mix)));
  }

  /** Cloth goes to the garments of a lay by the least that each takes, lays by the head. */
  private List<SizeCost> sizes() {
    Map<String, Double> cloth = new LinkedHashMap<>();
    Map<String, Double> money = new LinkedHashMap<>();
    Map<String, Integer> cut = new LinkedHashMap<>();
    for (PlannedLay lay : plan.lays()) {
      double whole =
          lay.mix().garments().entrySet().stream()
              .mapToDouble(e -> e.getValue() * estimate.leastMm(e.getKey()))
              .sum();
      double clothMm = lay.plies().keySet().stream().mapToDouble(c -> plan.clothMm(lay, c)).sum();
      double boughtMm =
          lay.plies().keySet().stream()
              .mapToDouble(c -> plan.clothMm(lay, c) * plan.boughtMm(c) / plan.clothMm(c))
              .sum();
      int times = lay.plies().keySet().stream().mapToInt(c -> times(lay, c)).sum();
      lay.mix()
          .garments()
          .forEach(
              (size, n) -> {
                double share = n * estimate.leastMm(size) / whole;
                cloth.merge(size, clothMm * share, Double::sum);
                money.merge(
                    size,
                    boughtMm * share / 1000 * plan.order().cost().clothPerMetre()
                        + plan.order().cost().lay() * n / lay.mix().count(),
                    Double::sum);
                cut.merge(size, times * n, Integer::sum);
              });
    }
    return plan.order().sizes().stream()
        .map(
            size -> {
              int wanted =
                  plan.order().colours().stream().mapToInt(c -> plan.order().wanted(c, size)).sum();
              int garments = cut.getOrDefault(size, 0);
              return new SizeCost(
                  size,
                  wanted,
                  garments,
                  garments == 0 ? 0 : cloth.get(size) / garments,
                  garments == 0 ? 0 : money.get(size) / garments);
            })
        .toList();
  }

  private Optional<Double> utilisation() {
    if (!markers.keySet().containsAll(mixes) || plan.clothMm() == 0) {
      return Optional.empty();
    }
    double area = 0;
    double width = 0;
    for (PlannedLay lay : plan.lays()) {
      Figures marker = markers.get(lay.mix());
      width = marker.widths().usableMm();
      int times = lay.plies().keySet().stream().mapToInt(c -> times(lay, c)).sum();
      area += times * marker.areas().wantedMm2();
    }
    return Optional.of(area / (width * plan.clothMm()));
  }
}
