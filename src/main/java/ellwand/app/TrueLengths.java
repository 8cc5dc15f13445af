package ellwand.app;

import ellwand.lay.Marker;
import ellwand.order.CutOrderPlan;
import ellwand.order.MarkerLengths;
import ellwand.order.MeasuredLengths;
import ellwand.order.Order;
import ellwand.order.OrderPlanner;
import ellwand.order.PlannedLay;
import ellwand.order.SizeMix;
import ellwand.pattern.InputException;
import ellwand.pattern.Problem;
import ellwand.work.Progress;
import ellwand.work.Stop;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Plans with estimated marker lengths, makes the markers, and plans again with their true lengths
 * until the plan asks for no other marker.
 *
 * <p>A tenth of the effort plans first, and a twentieth each time again; half makes the first
 * markers, and half of what is left those of each later plan.
 */
final class TrueLengths {

  /** Plans made at the most; then the best whose markers are all made is kept. */
  private static final int ROUNDS = 8;

  private static final double FIRST_PLAN = 0.1;
  private static final double LATER_PLAN = 0.05;
  private static final double FIRST_MARKERS = 0.5;
  private static final double LEAST = 0.02;

  private static final Comparator<CutOrderPlan> BEST =
      Comparator.comparingDouble(CutOrderPlan::cost)
          .thenComparingDouble(CutOrderPlan::clothMm)
          .thenComparingInt(plan -> plan.lays().size());

  private final Order order;
  private final MarkerLengths estimate;
  private final MarkerMaker maker;
  private final SearchOptions options;
  private final Stop stop;

  TrueLengths(
      Order order, MarkerLengths estimate, MarkerMaker maker, SearchOptions options, Stop stop) {
    this.order = order;
    this.estimate = estimate;
    this.maker = maker;
    this.options = options;
    this.stop = stop;
  }

  /**
   * What came of it.
   *
   * @param first the plan made with estimated lengths
   * @param firstTrue the same plan with the true lengths of its markers
   * @param last the plan that is kept, with true lengths
   * @param rounds how many plans were made
   */
  record Improved(CutOrderPlan first, CutOrderPlan firstTrue, CutOrderPlan last, int rounds) {}

  Improved improve() {
    CutOrderPlan first = plan(estimate, FIRST_PLAN);
    double left = 1 - FIRST_PLAN;
    CutOrderPlan plan = first;
    Optional<CutOrderPlan> best = Optional.empty();
    int round = 1;
    while (true) {
      List<SizeMix> fresh =
          plan.lays().stream().map(PlannedLay::mix).distinct().filter(m -> !maker.has(m)).toList();
      double share = Math.max(LEAST, round == 1 ? FIRST_MARKERS : left / 2);
      maker.make(fresh, share);
      left -= share;
      CutOrderPlan made = withTrueLengths(plan);
      if (fitsTable(made)) {
        best = Optional.of(best.filter(b -> BEST.compare(b, made) <= 0).orElse(made));
      }
      if (fresh.isEmpty() || round >= ROUNDS && best.isPresent() || round >= 3 * ROUNDS) {
        break;
      }
      if (stop.wanted() && best.isPresent()) {
        break;
      }
      plan = plan(measured(), LATER_PLAN);
      left -= LATER_PLAN;
      round++;
    }
    return new Improved(
        first, withTrueLengths(first), best.orElseThrow(TrueLengths::noneFits), round);
  }

  private CutOrderPlan plan(MarkerLengths lengths, double share) {
    return OrderPlanner.plan(
        order, lengths, options.effort().part(share), options.seed(), stop, Progress.NONE);
  }

  /** What is known of lengths by now. */
  MeasuredLengths measured() {
    Map<SizeMix, Double> lengths = new HashMap<>();
    maker.made().forEach((mix, marker) -> lengths.put(mix, marker.clothLengthMm()));
    return new MeasuredLengths(estimate, lengths);
  }

  /** The plan with the lengths of its markers, all of which are made. */
  private CutOrderPlan withTrueLengths(CutOrderPlan plan) {
    Map<SizeMix, Marker> markers = maker.made();
    return new CutOrderPlan(
        plan.order(),
        plan.lays().stream()
            .map(
                lay ->
                    new PlannedLay(lay.mix(), lay.plies(), markers.get(lay.mix()).clothLengthMm()))
            .toList(),
        plan.atLeast(),
        // Other markers are only estimated, so nothing is proved.
        false,
        plan.misses(),
        stop.wanted());
  }

  boolean fitsTable(CutOrderPlan plan) {
    return plan.lays().stream()
        .allMatch(
            lay -> lay.lengthMm() + order.limits().endLossMm() <= order.limits().tableMm() + 1e-3);
  }

  private static InputException noneFits() {
    return new InputException(
        Problem.of(
            "no plan was found whose markers fit on the table",
            "Search longer with --effort, or use a longer table"));
  }
}
