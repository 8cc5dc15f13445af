package ellwand.app;

import ellwand.cloth.Cloth;
import ellwand.cutting.CutPiece;
import ellwand.draw.sheet.Unprinted;
import ellwand.figures.OrderFigures;
import ellwand.figures.Safety;
import ellwand.figures.Shopping;
import ellwand.figures.ToBuy;
import ellwand.figures.Trimmings;
import ellwand.figures.Washing;
import ellwand.job.Job;
import ellwand.job.OrderJob;
import ellwand.lay.Marker;
import ellwand.order.Order;
import ellwand.order.Spreading;
import ellwand.pattern.Piece;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Unit;
import ellwand.work.Request;
import ellwand.work.Spending;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Plans an order and makes its markers. */
public final class OrderRun {

  private OrderRun() {}

  /**
   * Plans an order and makes its markers; given marker lengths are planned with as they are. Each
   * cloth after the first is planned for the garments that the first gives.
   *
   * @param request with the effort for all together
   * @throws InputException if it cannot be planned
   */
  public static PlannedOrder make(OrderJob job, Unit unit, Request request) {
    return make(job, unit, request, Hands.OWN);
  }

  /**
   * The same with markers made by others.
   *
   * @see #make(OrderJob, Unit, Request)
   */
  public static PlannedOrder make(OrderJob job, Unit unit, Request request, Hands hands) {
    try {
      return job.style().isPresent()
          ? withStyle(job, job.style().get(), unit, request, hands)
          : withLengths(job, unit, request);
    } catch (InputException e) {
      throw new InputException(
          e.problems().stream()
              .map(p -> p.file().isPresent() ? p : p.at(job.origin().path(), 0))
              .toList());
    }
  }

  private static PlannedOrder withLengths(OrderJob job, Unit unit, Request request) {
    ClothPlan plan =
        ClothPlan.withLengths(job.cloths().get(0).order(), job.lengths().orElseThrow(), request);
    OrderFigures figures =
        new OrderFigures(
            job.title().orElse("Order"),
            job.currency(),
            List.of(plan.figures()),
            Safety.of(Set.of()));
    return new PlannedOrder(job, List.of(plan.plan()), Map.of(), figures, unit);
  }

  private static PlannedOrder withStyle(
      OrderJob job, Job style, Unit unit, Request request, Hands hands) {
    // Their markers are numbered, so none gets the name of another file.
    Format.refuseClashes(style, style.cloths().stream().map(Cloth::name).toList(), List.of());
    Spending effort = new Spending(request.effort());
    List<MarkerMaker> makers = new ArrayList<>();
    for (OrderJob.OfCloth of : job.cloths()) {
      makers.add(
          new MarkerMaker(style, of.cloth().orElseThrow(), of.order().spreading(), unit, hands));
    }
    List<String> sizes = job.cloths().get(0).order().sizes();
    List<Problem> noRoom = makers.stream().flatMap(m -> m.noRoom(sizes).stream()).toList();
    if (!noRoom.isEmpty()) {
      throw new InputException(noRoom);
    }
    double pieces = makers.stream().mapToInt(m -> m.pieces(sizes)).sum();
    List<ClothPlan> plans = new ArrayList<>();
    int lays = 0;
    for (int i = 0; i < makers.size(); i++) {
      MarkerMaker maker = makers.get(i);
      OrderJob.OfCloth of = job.cloths().get(i);
      Order order =
          plans.isEmpty()
              ? of.order()
              : of.order().following(plans.get(0).plan().cut(), of.colours(), maker.cut(sizes));
      Request part = request.with(effort.take(maker.pieces(sizes) / pieces));
      plans.add(ClothPlan.withMarkers(order, maker, part, lays + 1));
      lays += plans.get(i).plan().lays().size();
    }
    List<String> cautions = new ArrayList<>();
    Unprinted.caution(job.cloths().stream().flatMap(c -> c.order().colours().stream()))
        .ifPresent(cautions::add);
    for (OrderJob.OfCloth of : job.cloths()) {
      SpreadCautions.flawed(of.cloth().orElseThrow(), unit).ifPresent(cautions::add);
    }
    for (int i = 0; i < makers.size(); i++) {
      Spreading spreading = job.cloths().get(i).order().spreading();
      SpreadCautions.mirrored(makers.get(i), spreading, sizes).ifPresent(cautions::add);
    }
    cautions.addAll(cautions(style, sizes, unit));
    Trimmings trims = new Trimmings(style.style());
    OrderFigures figures =
        new OrderFigures(
            job.title().orElse(style.heading()),
            job.currency(),
            plans.stream().map(ClothPlan::figures).toList(),
            new Shopping(toBuy(job, plans, trims)),
            style.style().design().trims().isEmpty() ? Map.of() : trims.costBySize(),
            cautions);
    Map<String, Marker> markers = new LinkedHashMap<>();
    plans.forEach(plan -> markers.putAll(plan.markers()));
    return new PlannedOrder(
        job, plans.stream().map(ClothPlan::plan).toList(), markers, figures, unit);
  }

  /** Every cloth in its colours, and the trims of all garments that are cut. */
  private static List<ToBuy> toBuy(OrderJob job, List<ClothPlan> plans, Trimmings trims) {
    List<ToBuy> items = new ArrayList<>();
    for (int i = 0; i < plans.size(); i++) {
      Cloth cloth = job.cloths().get(i).cloth().orElseThrow();
      double perMetre = job.cloths().get(i).order().cost().clothPerMetre();
      Map<String, Double> byColour = plans.get(i).figures().toBuyByColour();
      byColour.forEach(
          (colour, mm) ->
              items.add(
                  Shopping.cloth(
                      cloth.name(),
                      colour,
                      cloth.widthMm(),
                      mm,
                      mm / Unit.M.mm() * perMetre,
                      job.currency())));
    }
    items.removeIf(item -> item.lengthMm().orElse(0.0) == 0);
    Map<String, Integer> garments = new LinkedHashMap<>();
    plans.get(0).figures().sizes().forEach(size -> garments.put(size.size(), size.cut()));
    items.addAll(trims.toBuy(garments));
    return items;
  }

  private static List<String> cautions(Job job, List<String> sizes, Unit unit) {
    Map<String, Integer> everySize = new LinkedHashMap<>();
    sizes.forEach(size -> everySize.put(size, 1));
    Job all = job.withGarments(everySize);
    List<String> cautions = new ArrayList<>();
    for (Cloth cloth : job.cloths()) {
      List<Piece> pieces =
          sizes.stream()
              .flatMap(size -> JobLays.cutPieces(all, size, cloth).stream())
              .map(CutPiece::piece)
              .toList();
      Washing.bought(cloth, pieces, 0, unit).ifPresent(cautions::add);
    }
    cautions.addAll(JobCautions.of(all, unit));
    return cautions;
  }
}
