package ellwand.app;

import ellwand.draw.BundleLabels;
import ellwand.draw.MarkerDrawing;
import ellwand.draw.OrderSheet;
import ellwand.figures.Cautions;
import ellwand.figures.Figures;
import ellwand.figures.OrderFigures;
import ellwand.figures.OrderFigures.Sum;
import ellwand.figures.OrderReckoning;
import ellwand.file.Job;
import ellwand.file.MarkerWriter;
import ellwand.file.OrderJob;
import ellwand.file.OrderWriter;
import ellwand.file.WholeFile;
import ellwand.lay.Marker;
import ellwand.order.CutOrderPlan;
import ellwand.order.MarkerLengths;
import ellwand.order.Order;
import ellwand.order.OrderPlanner;
import ellwand.order.SizeMix;
import ellwand.pattern.InputException;
import ellwand.units.Unit;
import ellwand.work.Effort;
import ellwand.work.Progress;
import ellwand.work.Stop;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Plans an order, makes its markers and writes the report. */
public final class OrderRun {

  /** Steps that planning one size by itself may take, for comparison. */
  private static final Effort ONE_SIZE = Effort.ofSteps(300);

  private OrderRun() {}

  /**
   * A planned order.
   *
   * @param markers by name, none if lengths were given
   * @param unit that lengths are shown in
   */
  public record Made(
      OrderJob job,
      CutOrderPlan plan,
      Map<String, Marker> markers,
      OrderFigures figures,
      Unit unit) {}

  /**
   * Plans an order and makes its markers; given marker lengths are planned with as they are.
   *
   * @param options with the effort for all together
   * @throws InputException if it cannot be planned
   */
  public static Made make(
      OrderJob job, Unit unit, SearchOptions options, Stop stop, Progress progress) {
    try {
      return job.style().isPresent()
          ? withStyle(job, unit, options, stop, progress)
          : withLengths(job, unit, options, stop);
    } catch (InputException e) {
      throw new InputException(
          e.problems().stream()
              .map(p -> p.file().isPresent() ? p : p.at(job.path().toString(), 0))
              .toList());
    }
  }

  private static Made withLengths(OrderJob job, Unit unit, SearchOptions options, Stop stop) {
    MarkerLengths lengths = job.lengths().orElseThrow();
    CutOrderPlan plan =
        OrderPlanner.plan(
            job.order(), lengths, options.effort(), options.seed(), stop, Progress.NONE);
    OrderFigures figures =
        new OrderReckoning(plan, Map.of(), lengths)
            .figures(
                job.title().orElse("Order"),
                "",
                job.currency(),
                plain(job.order(), lengths, options, stop),
                Optional.empty(),
                Cautions.of(Set.of()));
    return new Made(job, plan, Map.of(), figures, unit);
  }

  private static Made withStyle(
      OrderJob job, Unit unit, SearchOptions options, Stop stop, Progress progress) {
    Order order = job.order();
    OrderJob.Garments garments = job.style().orElseThrow();
    MarkerMaker maker = new MarkerMaker(job, unit, options, stop, progress);
    MarkerLengths estimate = maker.estimate(order.sizes());
    TrueLengths lengths = new TrueLengths(order, estimate, maker, options, stop);
    TrueLengths.Improved improved = lengths.improve();
    CutOrderPlan plan = improved.last();
    OrderReckoning reckoning = new OrderReckoning(plan, maker.made(), estimate);
    OrderFigures figures =
        reckoning.figures(
            job.title().orElse(garments.job().style().name()),
            garments.cloth().name(),
            job.currency(),
            plain(order, lengths.measured(), options, stop),
            Optional.of(
                new OrderFigures.Improved(
                    improved.rounds(),
                    OrderReckoning.sum(improved.first()),
                    OrderReckoning.sum(improved.firstTrue()),
                    lengths.fitsTable(improved.firstTrue()),
                    !improved.firstTrue().lays().equals(plan.lays()),
                    1 / lengths.measured().ratio() - 1,
                    maker.made().size())),
            cautions(garments.job(), order, unit));
    Map<String, Marker> markers = new LinkedHashMap<>();
    for (SizeMix mix : plan.lays().stream().map(l -> l.mix()).distinct().toList()) {
      markers.put(reckoning.name(mix), maker.made().get(mix));
    }
    return new Made(job, plan, markers, figures, unit);
  }

  private static List<String> cautions(Job job, Order order, Unit unit) {
    Map<String, Integer> everySize = new LinkedHashMap<>();
    order.sizes().forEach(size -> everySize.put(size, 1));
    return LayRun.cautions(job.withGarments(everySize), unit);
  }

  /** One size a lay, each size planned as well as can be by itself. */
  private static Sum plain(Order order, MarkerLengths lengths, SearchOptions options, Stop stop) {
    int lays = 0;
    double cloth = 0;
    double cost = 0;
    for (String size : order.sizes()) {
      Map<String, Map<String, Integer>> wanted = new LinkedHashMap<>();
      order.colours().forEach(c -> wanted.put(c, Map.of(size, order.wanted(c, size))));
      Order one =
          new Order(wanted, order.limits(), order.tolerance(), order.cost(), order.spreading());
      CutOrderPlan plan =
          OrderPlanner.plan(one, lengths, ONE_SIZE, options.seed(), stop, Progress.NONE);
      lays += plan.lays().size();
      cloth += plan.clothMm();
      cost += plan.cost();
    }
    return new Sum(lays, cloth, cost);
  }

  /**
   * Writes order.json, the cut tickets as a table, the report, the bundle labels and the markers.
   *
   * @return the files written
   */
  public static List<Path> write(Made made, Path folder) {
    Map<Path, byte[]> files = new LinkedHashMap<>();
    made.markers()
        .forEach(
            (name, marker) -> {
              MarkerDrawing drawing =
                  MarkerDrawing.of(marker, Figures.of(marker, List.of()), made.unit());
              files.put(folder.resolve(name + ".svg"), drawing.svg());
              files.put(folder.resolve(name + ".pdf"), drawing.pdf());
              Job job = made.job().style().orElseThrow().job();
              files.put(
                  folder.resolve(name + ".marker.json"),
                  MarkerWriter.bytesInOrder(marker, job, garments(made, name)));
            });
    files.put(folder.resolve("order.json"), OrderWriter.json(made.plan(), made.figures()));
    files.put(folder.resolve("cut-tickets.csv"), OrderWriter.csv(made.figures()));
    files.put(folder.resolve("order.pdf"), OrderSheet.pdf(made.figures(), made.unit()));
    files.put(folder.resolve("bundle-labels.pdf"), BundleLabels.pdf(made.figures()));
    files.forEach(WholeFile::write);
    return List.copyOf(files.keySet());
  }

  private static Map<String, Integer> garments(Made made, String marker) {
    return made.figures().markers().stream()
        .filter(m -> m.name().equals(marker))
        .findFirst()
        .orElseThrow()
        .garments();
  }

  /** What {@code order.json} holds. */
  public static byte[] json(Made made) {
    return OrderWriter.json(made.plan(), made.figures());
  }
}
