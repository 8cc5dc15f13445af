package ellwand.app;

import ellwand.cloth.Wish;
import ellwand.cloth.Wishes;
import ellwand.cloth.Wishes.Price;
import ellwand.figures.Figures;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.nest.Tried;
import ellwand.order.CutOrderPlan;
import ellwand.order.PlannedLay;
import ellwand.order.SizeMix;
import ellwand.rule.Check;
import ellwand.rule.Rules;
import ellwand.work.Request;
import ellwand.work.Spending;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The markers of one cloth of an order as they are cut: what serves the cutter's wishes. */
final class WishedMarkers {

  private final MarkerMaker maker;

  /** In place of the shortest. */
  private final Map<SizeMix, Marker> pleasing = new HashMap<>();

  WishedMarkers(MarkerMaker maker) {
    this.maker = maker;
  }

  /**
   * Seeks what serves the cutter's wishes, if there are any, for markers that are made.
   *
   * @param weights what each is worth, by the cloth that is spread for it
   * @param request with the effort for all of them
   * @param mostMm how long a marker may be
   */
  void please(Map<SizeMix, Double> weights, Request request, double mostMm) {
    if (!maker.wishes().any()) {
      return;
    }
    double all = weights.values().stream().mapToDouble(w -> w).sum();
    Spending effort = new Spending(request.effort());
    weights.forEach(
        (mix, weight) ->
            pleasing.put(mix, pleasing(mix, request.with(effort.take(weight / all)), mostMm)));
  }

  private Marker pleasing(SizeMix mix, Request request, double mostMm) {
    Marker made = maker.made().get(mix);
    double most = longestMm(made, mostMm);
    Price price = new Price(0, Math.max(0, most - made.clothLengthMm()));
    Lay lay = maker.lay(mix, new Wishes(maker.wishes().asked(), price));
    Tried tried = maker.nest(lay, mix, request);
    // What is shorter by chance is no merit of the wishes.
    tried.marker().map(m -> on(maker.lay(mix), Check.passed(m))).ifPresent(m -> maker.keep(mix, m));
    Marker shortest = maker.made().get(mix);
    // A search that has come less far may begin with a longer one.
    return tried
        .pleasing()
        .filter(m -> m.clothLengthMm() <= longestMm(shortest, mostMm))
        .filter(m -> m.clothLengthMm() < shortest.clothLengthMm() || nearer(m, on(lay, shortest)))
        .map(Check::passed)
        .orElseGet(() -> on(lay, shortest));
  }

  /** Whether it brings the wishes nearer, all together: its search began with another marker. */
  private boolean nearer(Marker marker, Marker shortest) {
    List<Wish> asked = maker.wishes().asked();
    double left = 0;
    for (Wish wish : asked) {
      double now = Rules.amount(wish, marker);
      double then = Rules.amount(wish, shortest);
      left += now == then ? 1 : now / then;
    }
    return left < asked.size();
  }

  private double longestMm(Marker shortest, double mostMm) {
    return Math.min(mostMm, maker.wishes().longestMm(shortest.clothLengthMm()));
  }

  private static Marker on(Lay lay, Marker marker) {
    return marker.of(lay);
  }

  /** The marker to cut: the shortest, or what serves the cutter's wishes in its place. */
  Marker toCut(SizeMix mix) {
    return pleasing.getOrDefault(mix, maker.made().get(mix));
  }

  /** Figures of the markers that a plan cuts. */
  Map<SizeMix, Figures> figures(CutOrderPlan plan) {
    return plan.lays().stream()
        .map(PlannedLay::mix)
        .distinct()
        .collect(Collectors.toMap(Function.identity(), this::figures));
  }

  private Figures figures(SizeMix mix) {
    return Figures.of(
        toCut(mix), maker.bindings(mix), List.of(), Optional.of(maker.made().get(mix)));
  }
}
