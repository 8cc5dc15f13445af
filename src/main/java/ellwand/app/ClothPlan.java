package ellwand.app;

import ellwand.figures.OrderCloth;
import ellwand.figures.OrderReckoning;
import ellwand.lay.Marker;
import ellwand.order.CutOrderPlan;
import ellwand.order.MarkerLengths;
import ellwand.order.Order;
import ellwand.order.OrderPlanner;
import ellwand.order.PlannedLay;
import ellwand.work.Request;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * How one cloth of an order is cut.
 *
 * @param markers by name, none if lengths were given
 */
record ClothPlan(CutOrderPlan plan, Map<String, Marker> markers, OrderCloth figures) {

  /** Plans with given marker lengths as they are. */
  static ClothPlan withLengths(Order order, MarkerLengths lengths, Request request) {
    CutOrderPlan plan = OrderPlanner.plan(order, lengths, request);
    OrderCloth figures =
        new OrderReckoning("", plan, Map.of(), lengths)
            .figures(
                1, OrderReckoning.sum(OrderPlanner.oneSizeALay(order, lengths)), Optional.empty());
    return new ClothPlan(plan, Map.of(), figures);
  }

  /**
   * Plans one cloth and makes its markers.
   *
   * @param firstLay number of its first lay
   */
  static ClothPlan withMarkers(Order order, MarkerMaker maker, Request request, int firstLay) {
    WishedMarkers wished = new WishedMarkers(maker);
    TrueLengths lengths = new TrueLengths(order, maker, wished, request);
    TrueLengths.Replanned improved = lengths.improve();
    CutOrderPlan plan = improved.last();
    CutOrderPlan plain = lengths.oneSizeALay();
    OrderReckoning reckoning =
        new OrderReckoning(maker.cloth().name(), plan, wished.figures(plan), lengths.estimate());
    OrderCloth figures =
        reckoning.figures(
            firstLay,
            OrderReckoning.sum(plain),
            Optional.of(
                new OrderCloth.Revision(
                    improved.rounds(),
                    OrderReckoning.sum(improved.first()),
                    OrderReckoning.sum(improved.firstTrue()),
                    lengths.fitsTable(improved.firstTrue()),
                    !sameLays(improved.firstTrue(), plan),
                    1 / lengths.measured().ratio() - 1,
                    maker.made().size(),
                    lengths.unmade(plain).size())));
    Map<String, Marker> markers = new LinkedHashMap<>();
    plan.lays().stream()
        .map(PlannedLay::mix)
        .distinct()
        .forEach(mix -> markers.put(reckoning.name(mix), wished.toCut(mix)));
    return new ClothPlan(plan, markers, figures);
  }

  private static boolean sameLays(CutOrderPlan one, CutOrderPlan other) {
    return one.lays().stream()
        .map(l -> Map.entry(l.mix(), l.plies()))
        .toList()
        .equals(other.lays().stream().map(l -> Map.entry(l.mix(), l.plies())).toList());
  }
}
