package ellwand.file;

import ellwand.cloth.Cloth;
import ellwand.order.Cost;
import ellwand.order.GarmentLengths;
import ellwand.order.Limits;
import ellwand.order.Order;
import ellwand.order.Spreading;
import ellwand.order.Tolerance;
import ellwand.pattern.InputException;
import ellwand.pattern.Problem;
import ellwand.units.Unit;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads the order of a job: with a style, or with a marker length for each size. */
public final class OrderJobReader {

  private final Path path;
  private final Spot root;
  private final Spot order;

  private OrderJobReader(Path path, Spot root) {
    this.path = path;
    this.root = root;
    this.order = root.get("order");
  }

  /**
   * Reads an order.
   *
   * @throws InputException with every problem that could be found
   */
  public static OrderJob read(Path path) {
    Sheet sheet = SheetReader.read(path);
    Shape shape = Shape.of(sheet);
    List<Problem> problems = new ArrayList<>();
    Spot root = Spot.root(sheet, problems);
    boolean styled = root.get("style").present() || root.get("cloths").present();
    Optional<Job> job = styled ? Optional.of(JobReader.read(path)) : Optional.empty();
    problems.addAll(shape.problems());
    Optional<OrderJob> read =
        problems.isEmpty() ? new OrderJobReader(path, root).read(job) : Optional.empty();
    if (!problems.isEmpty()) {
      throw new InputException(problems.stream().distinct().toList());
    }
    return read.orElseThrow();
  }

  private Optional<OrderJob> read(Optional<Job> job) {
    if (!root.holds(order.present(), "the job has no order:", "Say what is wanted, and of which")) {
      return Optional.empty();
    }
    for (String key : List.of("colours", "max-plies", "max-garments")) {
      order.holds(
          order.get(key).present(), "the order has no " + key + ":", "Add it; see the samples");
    }
    Optional<Cloth> cloth = job.flatMap(this::cloth);
    Optional<GarmentLengths> lengths = lengths(job);
    Set<String> sizes =
        job.map(j -> j.style().piecesBySize().keySet())
            .orElseGet(() -> order.get("lengths").entries().keySet());
    Map<String, Map<String, Integer>> wanted = wanted(sizes);
    Price price = price(cloth);
    Optional<Cost> cost = cost(price);
    Optional<Limits> limits = limits();
    Optional<Tolerance> tolerance =
        order.attempt(
            () ->
                new Tolerance(
                    whole(order.get("tolerance").get("over"), 0),
                    whole(order.get("tolerance").get("under"), 0)));
    Optional<Spreading> spreading = new SpreadReader(order.get("spread")).read(job, cloth);
    if (!order.problems().isEmpty()) {
      return Optional.empty();
    }
    checkTable(lengths, limits.orElseThrow(), wanted);
    return order
        .attempt(
            () ->
                new Order(
                    wanted,
                    limits.get(),
                    tolerance.orElseThrow(),
                    cost.orElseThrow(),
                    spreading.orElseThrow()))
        .map(
            o ->
                new OrderJob(
                    path,
                    root.get("title").text(),
                    root.get("unit").text().map(Unit::parse).orElse(Unit.M),
                    o,
                    job.map(j -> new OrderJob.Garments(j, cloth.orElseThrow())),
                    lengths,
                    price.currency()));
  }

  private Optional<Cloth> cloth(Job job) {
    Spot named = order.get("cloth");
    String name = named.text().orElse(job.cloths().get(0).name());
    Optional<Cloth> cloth = job.cloths().stream().filter(c -> c.name().equals(name)).findFirst();
    named.holds(
        cloth.isPresent(),
        "no cloth is called " + Names.shown(name),
        "Use one of " + String.join(", ", job.cloths().stream().map(Cloth::name).toList()));
    return cloth;
  }

  private Optional<GarmentLengths> lengths(Optional<Job> job) {
    Spot spot = order.get("lengths");
    if (job.isPresent()) {
      spot.holds(
          !spot.present(),
          "the style says how long markers are, so the order needs no lengths:",
          "Take them out");
      return Optional.empty();
    }
    order.holds(
        spot.present(),
        "there is neither a style nor a marker length for each size",
        "Add lengths: {\"10\": 1 m, ...}, or style: and cloths:");
    Map<String, Double> bySize = new LinkedHashMap<>();
    spot.entries()
        .forEach((size, length) -> length.lengthAbove0().ifPresent(mm -> bySize.put(size, mm)));
    return order.attempt(() -> new GarmentLengths(bySize));
  }

  private Map<String, Map<String, Integer>> wanted(Set<String> sizes) {
    Map<String, Map<String, Integer>> wanted = new LinkedHashMap<>();
    order
        .get("colours")
        .entries()
        .forEach(
            (colour, bySize) -> {
              Names.check(bySize, colour);
              Map<String, Integer> garments = new LinkedHashMap<>();
              bySize
                  .entries()
                  .forEach((size, count) -> garments.put(size, garments(size, count, sizes)));
              wanted.put(colour, garments);
            });
    return wanted;
  }

  private static int garments(String size, Spot count, Set<String> sizes) {
    count.holds(
        sizes.contains(size),
        "size " + Names.shown(size) + " is ordered, but nothing is known of it",
        "Use one of " + String.join(", ", sizes));
    return whole(count, 0);
  }

  /** A whole number of 0 or more; reported otherwise. */
  private static int whole(Spot spot, int unlessSaid) {
    if (!spot.present()) {
      return unlessSaid;
    }
    long number = spot.node().asLong();
    return spot.holds(number >= 0, "there cannot be " + number + " of it", "Write 0 or more")
            && spot.holds(
                number <= Order.MOST_GARMENTS,
                number + " is more than any order has",
                "Write at most " + Order.MOST_GARMENTS)
        ? (int) number
        : unlessSaid;
  }

  private Optional<Limits> limits() {
    Spot table = order.get("table");
    Optional<Double> tableMm =
        table.present() ? table.lengthAbove0() : Optional.of(Double.POSITIVE_INFINITY);
    Optional<Double> endLoss =
        order.get("end-loss").present() ? order.get("end-loss").lengthFrom0() : Optional.of(0.0);
    if (tableMm.isEmpty() || endLoss.isEmpty()) {
      return Optional.empty();
    }
    int plies = whole(order.get("max-plies"), 1);
    int garments = whole(order.get("max-garments"), 1);
    order
        .get("max-plies")
        .holds(plies > 0, "a lay of no plies cuts nothing", "Set max-plies: to 1 or more");
    order
        .get("max-garments")
        .holds(
            garments > 0, "a marker of no garments cuts nothing", "Set max-garments: to 1 or more");
    return plies > 0 && garments > 0
        ? order.attempt(() -> new Limits(plies, garments, tableMm.get(), endLoss.get()))
        : Optional.empty();
  }

  private Price price(Optional<Cloth> cloth) {
    Spot spot = order.get("cost").get("cloth");
    Price ofCloth = cloth.map(c -> new Price(c.pricePerMetre(), c.currency())).orElse(Price.NONE);
    return spot.text().flatMap(t -> spot.attempt(() -> Price.parse(t))).orElse(ofCloth);
  }

  private Optional<Cost> cost(Price price) {
    Spot minute = order.get("cost").get("minute");
    double perMinute = minute.present() ? minute.node().asDouble() : 0;
    Spot lay = order.get("cost").get("lay");
    Optional<Double> perLay =
        lay.present()
            ? lay.attempt(() -> LayCost.parse(lay.node().asText()).money(perMinute))
            : Optional.of(0.0);
    return perLay.flatMap(l -> order.attempt(() -> new Cost(l, price.perMetre())));
  }

  private void checkTable(
      Optional<GarmentLengths> lengths, Limits limits, Map<String, Map<String, Integer>> wanted) {
    lengths.ifPresent(
        known ->
            known
                .bySize()
                .forEach(
                    (size, mm) -> {
                      boolean ordered =
                          wanted.values().stream().anyMatch(c -> c.getOrDefault(size, 0) > 0);
                      order
                          .get("table")
                          .holds(
                              !ordered || mm + limits.endLossMm() <= limits.tableMm() + 1e-6,
                              "the table is shorter than a garment of size "
                                  + size
                                  + " with its end loss",
                              "Use a longer table, or leave out size " + size);
                    }));
  }
}
