package ellwand.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Fold;
import ellwand.figures.OrderCloth;
import ellwand.file.job.OrderJobReader;
import ellwand.job.OrderJob;
import ellwand.lay.Lay;
import ellwand.lay.Wanted;
import ellwand.nest.Nester;
import ellwand.nest.Tried;
import ellwand.order.CutOrderPlan;
import ellwand.order.MarkerLengths;
import ellwand.order.Order;
import ellwand.order.OrderPlanner;
import ellwand.order.SizeMix;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import ellwand.work.Stop;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** An order that is stopped at any moment, or never. */
class StoppedOrderTest {

  private static final double EPS = 1e-6;

  /** So long that no plan has a marker that was not made if it can do without. */
  private static final double FAR_MM = 1e5;

  /** Lengths of the markers that were searched for. */
  private final Map<SizeMix, Double> made = new HashMap<>();

  private List<Tried> search(Lay lay, List<Fold> folds, Request request) {
    List<Tried> tried = Nester.nest(lay, folds, request);
    Map<String, Integer> garments = new LinkedHashMap<>();
    lay.wanted().forEach((Wanted w) -> garments.merge(w.size(), w.garment(), Math::max));
    made.merge(new SizeMix(garments), tried.get(0).marker().orElseThrow().lengthMm(), Math::min);
    return tried;
  }

  @Property(tries = 20)
  void costsNoMoreThanOneSizeALay(
      @ForAll @IntRange(max = 100_000) int seed, @ForAll @IntRange(max = 16) int moment) {
    made.clear();
    AtomicInteger polls = new AtomicInteger();
    Stop stop = new Stop(() -> polls.incrementAndGet() >= 1 << moment);
    OrderJob job = RandomOrder.of(seed);
    Request request = Request.of(Effort.ofSteps(200), new Seed(1)).with(stop);
    PlannedOrder planned = OrderRun.make(job, job.unit(), request, this::search);
    CutOrderPlan plan = planned.plans().get(0);
    Order order = plan.order();
    order
        .colours()
        .forEach(
            colour ->
                order
                    .sizes()
                    .forEach(
                        size -> assertEquals(order.wanted(colour, size), plan.cut(colour, size))));

    OrderCloth figures = planned.figures().cloths().get(0);
    double plain = figures.plain().cost();
    assertTrue(plan.cost() <= plain + EPS, plan.cost() + " and as shown " + plain);

    CutOrderPlan plainMade = OrderPlanner.oneSizeALay(order, onlyMade(order));
    if (plainMade.lays().stream().allMatch(lay -> lay.lengthMm() < FAR_MM)) {
      // Markers of a lay are chosen by what they cut: rounded up it may be a step a colour more.
      double most = plainMade.cost() + order.colours().size() * step(order) + EPS;
      assertTrue(plan.cost() <= most, plan.cost() + ", " + plainMade.cost());
      assertTrue(plain <= most, plain + " shown, " + plainMade.cost());
    } else {
      assertTrue(figures.plainEstimated(), "some of its markers were not made");
    }
  }

  /** What a step of the shop costs. */
  private static double step(Order order) {
    double mm = order.cost().goods().orElseThrow().shopStepMm();
    return order.cost().clothPerMetre() * mm / 1000;
  }

  /** Laid piece after piece, a tunic of the largest size is longer than the table. */
  @Example
  void stoppedAtOnceItFitsTheTable() {
    OrderJob job = OrderJobReader.read(Path.of("sample-markers/beck-tunic/order.yaml"));
    Request request = Request.of(Effort.ofSteps(200), new Seed(1)).with(new Stop(() -> true));
    PlannedOrder planned = OrderRun.make(job, job.unit(), request);
    for (CutOrderPlan plan : planned.plans()) {
      assertTrue(plan.stoppedEarly());
      plan.lays()
          .forEach(lay -> assertTrue(plan.order().limits().hold(lay.lengthMm()), lay::toString));
    }
  }

  private MarkerLengths onlyMade(Order order) {
    return new MarkerLengths() {
      @Override
      public Set<String> sizes() {
        return Set.copyOf(order.sizes());
      }

      @Override
      public double lengthMm(SizeMix mix) {
        return made.getOrDefault(mix, FAR_MM * mix.count());
      }

      @Override
      public double leastMm(String size) {
        return 1;
      }
    };
  }
}
