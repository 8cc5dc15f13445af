package ellwand.app;

import ellwand.figures.OrderCloth;
import ellwand.figures.OrderReckoning;
import ellwand.lay.Marker;
import ellwand.order.CutOrderPlan;
import ellwand.order.MarkerLengths;
import ellwand.order.Miss;
import ellwand.order.Order;
import ellwand.order.OrderPlanner;
import ellwand.order.PlannedLay;
import ellwand.work.Effort;
import ellwand.work.Progress;
import ellwand.work.Stop;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How one cloth of an order is cut.
 *
 * @param markers by name, none if lengths were given
 */
record ClothPlan(CutOrderPlan plan, Map<String, Marker> markers, OrderCloth figures) {

  /** Steps that planning one size by itself may take, for comparison. */
  private static final Effort ONE_SIZE = Effort.ofSteps(300);

  /** Plans with given marker lengths as they are. */
  static ClothPlan withLengths(
      Order order, MarkerLengths lengths, SearchOptions options, Stop stop) {
    CutOrderPlan mixed =
        OrderPlanner.plan(order, lengths, options.effort(), options.seed(), stop, Progress.NONE);
    CutOrderPlan plain = plain(mixed, lengths, options, stop);
    // A short search among all mixes can miss what is plain.
    CutOrderPlan plan = better(plain, mixed) ? plain : mixed;
    OrderCloth figures =
        new OrderReckoning("", plan, Map.of(), lengths)
            .figures(1, OrderReckoning.sum(plain), Optional.empty());
    return new ClothPlan(plan, Map.of(), figures);
  }

  /**
   * Plans one cloth and makes its markers.
   *
   * @param firstLay number of its first lay
   */
  static ClothPlan withMarkers(
      Order order, MarkerMaker maker, SearchOptions options, Stop stop, int firstLay) {
    TrueLengths lengths = new TrueLengths(order, maker, options, stop);
    TrueLengths.Improved improved = lengths.improve();
    CutOrderPlan plan = improved.last();
    OrderReckoning reckoning =
        new OrderReckoning(maker.cloth().name(), plan, maker.made(), lengths.estimate());
    OrderCloth figures =
        reckoning.figures(
            firstLay,
            OrderReckoning.sum(plain(plan, lengths.measured(), options, stop)),
            Optional.of(
                new OrderCloth.Improved(
                    improved.rounds(),
                    OrderReckoning.sum(improved.first()),
                    OrderReckoning.sum(improved.firstTrue()),
                    lengths.fitsTable(improved.firstTrue()),
                    !sameLays(improved.firstTrue(), plan),
                    1 / lengths.measured().ratio() - 1,
                    maker.made().size())));
    Map<String, Marker> markers = new LinkedHashMap<>();
    plan.lays().stream()
        .map(PlannedLay::mix)
        .distinct()
        .forEach(mix -> markers.put(reckoning.name(mix), maker.made().get(mix)));
    return new ClothPlan(plan, markers, figures);
  }

  private static boolean sameLays(CutOrderPlan one, CutOrderPlan other) {
    return one.lays().stream()
        .map(l -> Map.entry(l.mix(), l.plies()))
        .toList()
        .equals(other.lays().stream().map(l -> Map.entry(l.mix(), l.plies())).toList());
  }

  private static boolean better(CutOrderPlan plain, CutOrderPlan mixed) {
    return plain.misses().isEmpty() && (!mixed.misses().isEmpty() || plain.cost() < mixed.cost());
  }

  /** One size a lay, each size planned as well as can be by itself. */
  private static CutOrderPlan plain(
      CutOrderPlan plan, MarkerLengths lengths, SearchOptions options, Stop stop) {
    Order order = plan.order();
    List<PlannedLay> lays = new ArrayList<>();
    List<Miss> misses = new ArrayList<>();
    for (String size : order.sizes()) {
      Map<String, Map<String, Integer>> wanted = new LinkedHashMap<>();
      order.colours().forEach(c -> wanted.put(c, Map.of(size, order.wanted(c, size))));
      Order one =
          new Order(wanted, order.limits(), order.tolerance(), order.cost(), order.spreading());
      CutOrderPlan alone =
          OrderPlanner.plan(one, lengths, ONE_SIZE, options.seed(), stop, Progress.NONE);
      lays.addAll(alone.lays());
      misses.addAll(alone.misses());
    }
    return new CutOrderPlan(order, lays, plan.atLeast(), false, misses, plan.stoppedEarly());
  }
}
