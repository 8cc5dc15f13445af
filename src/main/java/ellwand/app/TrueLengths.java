package ellwand.app;

import ellwand.order.AreaLengths;
import ellwand.order.CutOrderPlan;
import ellwand.order.MarkerLengths;
import ellwand.order.MeasuredLengths;
import ellwand.order.MeasuredLengths.Unmade;
import ellwand.order.Order;
import ellwand.order.OrderPlanner;
import ellwand.order.PlannedLay;
import ellwand.order.SizeMix;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.work.Effort;
import ellwand.work.Progress;
import ellwand.work.Request;
import ellwand.work.Spending;
import ellwand.work.Stop;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * Plans with estimated marker lengths, makes the markers, and plans again with their true lengths
 * until the plan asks for no other marker.
 *
 * <p>A tenth of the effort plans first, and a twentieth each time again; half makes the first
 * markers, and half of what is left those of each later plan. What then remains searches again for
 * the markers that are kept, longer where more cloth is spread. Whenever that ends, what is sure is
 * compared beyond the effort ({@link #settle}). Where the cutter has wishes, they are sought for
 * these with some effort more.
 */
final class TrueLengths {

  /** Plans made at the most; then the best whose markers are all made is kept. */
  private static final int ROUNDS = 8;

  private static final double FIRST_PLAN = 0.1;
  private static final double LATER_PLAN = 0.05;
  private static final double FIRST_MARKERS = 0.5;
  private static final double LEAST = 0.02;

  /** To plan with what is sure, beyond the effort. */
  private static final Effort SURE_PLAN = Effort.ofSteps(200);

  /** For single garments that seem too long. */
  private static final double ALONE = 0.05;

  /** What wishes may take beyond the effort; the search for them begins with the shortest anew. */
  private static final double PLEASING = 0.3;

  /** Plies that lie double waste what is cut once, which no area tells: one marker is tried. */
  private static final double PROBE = 0.03;

  private static final int PROBE_GARMENTS = 2;

  private static final Comparator<CutOrderPlan> BEST =
      Comparator.comparingDouble(CutOrderPlan::cost)
          .thenComparingDouble(CutOrderPlan::clothMm)
          .thenComparingInt(plan -> plan.lays().size());

  private final Order order;
  private final MarkerMaker maker;
  private final WishedMarkers wished;
  private final Request request;
  private final MarkerLengths estimate;
  private final Spending effort;

  /** All markers of these are made. */
  private final List<CutOrderPlan> plans = new ArrayList<>();

  /**
   * @param wished takes up what is cut in place of the shortest
   */
  TrueLengths(Order order, MarkerMaker maker, WishedMarkers wished, Request request) {
    this.order = order;
    this.maker = maker;
    this.wished = wished;
    this.request = request;
    this.effort = new Spending(request.effort());
    AreaLengths byArea = maker.estimate(order.sizes());
    this.estimate = maker.liesDouble() ? maker.probed(byArea, probe(), take(PROBE)) : byArea;
  }

  private Request take(double share) {
    return request.with(effort.take(share));
  }

  private SizeMix probe() {
    String size = order.sizes().get(order.sizes().size() / 2);
    return new SizeMix(Map.of(size, Math.min(PROBE_GARMENTS, order.limits().maxGarments())));
  }

  /** The lengths that are planned with before any marker is made. */
  MarkerLengths estimate() {
    return estimate;
  }

  /**
   * What came of it.
   *
   * @param first the plan made with estimated lengths
   * @param firstTrue the same plan with the true lengths of its markers
   * @param last the plan that is kept, with true lengths
   * @param rounds how many plans were made
   */
  record Replanned(CutOrderPlan first, CutOrderPlan firstTrue, CutOrderPlan last, int rounds) {}

  Replanned improve() {
    CutOrderPlan first = plan(FIRST_PLAN);
    boolean more = consider(first, FIRST_MARKERS);
    int rounds = 1;
    for (; more && goOn(rounds); rounds++) {
      CutOrderPlan next = plan(LATER_PLAN);
      more = goOn(rounds) && consider(next, effort.left() / 2);
    }
    CutOrderPlan found = best();
    if (effort.left() > LEAST && !request.stop().wanted()) {
      maker.polish(clothByMix(found), take(effort.left()));
    }
    settle();
    CutOrderPlan kept = best();
    if (!request.stop().wanted()) {
      double longest = order.limits().tableMm() - order.limits().endLossMm();
      wished.please(clothByMix(kept), request.part(PLEASING), longest);
    }
    return new Replanned(
        first, withTrueLengths(first), with(kept, mix -> wished.toCut(mix).lengthMm()), rounds);
  }

  /** Has a plan to choose from, and makes the markers that it lacks; false if it lacked none. */
  private boolean consider(CutOrderPlan plan, double share) {
    List<SizeMix> fresh = unmade(plan);
    if (!fresh.isEmpty()) {
      maker.make(fresh, take(Math.max(LEAST, share)));
    }
    plans.add(plan);
    return !fresh.isEmpty();
  }

  private boolean goOn(int round) {
    boolean found = fitting().findAny().isPresent();
    boolean over = request.stop().wanted() || effort.over() || round >= ROUNDS;
    return round < 3 * ROUNDS && !(found && over);
  }

  /**
   * Whenever it was stopped, the order costs no more than one size a lay seems to, nor than what
   * the markers that are made can cut: plans with these alone, and with rows of them.
   */
  private void settle() {
    List<SizeMix> alone = order.sizes().stream().map(SizeMix::one).toList();
    maker.makeBriefly(alone.stream().filter(mix -> !maker.has(mix)).toList(), request);
    CutOrderPlan plain = oneSizeALay();
    for (int round = 0; round < ROUNDS && cheaper(plain); round++) {
      maker.makeBriefly(unmade(plain), request);
      plans.add(plain);
      plain = oneSizeALay();
    }
    Request brief = request.with(SURE_PLAN).with(new Stop()).with(Progress.NONE);
    boolean more = true;
    for (int round = 0; round < ROUNDS && more; round++) {
      CutOrderPlan sure = OrderPlanner.plan(order, maker.measured(estimate, Unmade.SURE), brief);
      List<SizeMix> apart = unmade(sure).stream().filter(mix -> !maker.join(mix)).toList();
      maker.makeBriefly(apart, request);
      plans.add(sure);
      more = !apart.isEmpty();
    }
  }

  private boolean cheaper(CutOrderPlan plan) {
    return fitting().noneMatch(made -> BEST.compare(made, plan) <= 0);
  }

  /** The markers that a plan lacks. */
  List<SizeMix> unmade(CutOrderPlan plan) {
    return plan.lays().stream().map(PlannedLay::mix).distinct().filter(m -> !maker.has(m)).toList();
  }

  /** With true lengths as they are now: a marker that became shorter may make another plan best. */
  private CutOrderPlan best() {
    return fitting().min(BEST).orElseThrow(TrueLengths::noneFits);
  }

  private Stream<CutOrderPlan> fitting() {
    return plans.stream().map(this::withTrueLengths).filter(this::fitsTable);
  }

  /**
   * Makes the markers of single garments that seem too long for the table: an estimate is no reason
   * to refuse an order.
   */
  private void tryAlone() {
    for (List<SizeMix> doubtful = doubtful(); !doubtful.isEmpty(); doubtful = doubtful()) {
      maker.make(doubtful, take(ALONE));
      List<Problem> tooLong =
          doubtful.stream()
              .filter(mix -> !onTable(maker.made().get(mix).lengthMm()))
              .map(mix -> maker.tooLong(mix, order.limits()))
              .toList();
      if (!tooLong.isEmpty()) {
        throw new InputException(tooLong);
      }
    }
  }

  private List<SizeMix> doubtful() {
    MarkerLengths known = measured();
    return order.sizes().stream()
        .map(SizeMix::one)
        .filter(mix -> !maker.has(mix) && !onTable(known.lengthMm(mix)))
        .toList();
  }

  private static Map<SizeMix, Double> clothByMix(CutOrderPlan plan) {
    Map<SizeMix, Double> cloth = new LinkedHashMap<>();
    plan.lays()
        .forEach(lay -> cloth.merge(lay.mix(), lay.lengthMm() * lay.totalPlies(), Double::sum));
    return cloth;
  }

  private CutOrderPlan plan(double share) {
    tryAlone();
    Progress named =
        news ->
            request
                .progress()
                .hear(news instanceof Progress.Cheaper c ? c.on(maker.cloth().name()) : news);
    return OrderPlanner.plan(order, measured(), take(share).with(named));
  }

  /** What is known of lengths by now. */
  MeasuredLengths measured() {
    return maker.measured(estimate, Unmade.HOPED);
  }

  /** The plain plan, for comparison: with true lengths where its markers are made. */
  CutOrderPlan oneSizeALay() {
    return OrderPlanner.oneSizeALay(order, maker.measured(estimate, Unmade.LIKELY));
  }

  /** The plan with the lengths of its markers, all of which are made. */
  private CutOrderPlan withTrueLengths(CutOrderPlan plan) {
    return with(plan, mix -> maker.made().get(mix).lengthMm());
  }

  private CutOrderPlan with(CutOrderPlan plan, ToDoubleFunction<SizeMix> lengthMm) {
    return new CutOrderPlan(
        plan.order(),
        plan.lays().stream()
            .map(lay -> new PlannedLay(lay.mix(), lay.plies(), lengthMm.applyAsDouble(lay.mix())))
            .toList(),
        plan.atLeast(),
        // Other markers are only estimated, so nothing is proved.
        false,
        plan.misses(),
        request.stop().wanted());
  }

  boolean fitsTable(CutOrderPlan plan) {
    return plan.lays().stream().allMatch(lay -> onTable(lay.lengthMm()));
  }

  private boolean onTable(double markerMm) {
    return order.limits().hold(markerMm);
  }

  private static InputException noneFits() {
    return new InputException(
        Problem.of(
            "no plan was found whose markers fit on the table",
            "Search longer (--effort), or use a longer table"));
  }
}
