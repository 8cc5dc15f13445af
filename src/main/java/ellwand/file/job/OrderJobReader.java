package ellwand.file.job;

import ellwand.cloth.Cloth;
import ellwand.file.source.Folder;
import ellwand.file.source.JobShape;
import ellwand.file.source.Names;
import ellwand.file.source.Sheet;
import ellwand.file.source.SheetReader;
import ellwand.file.source.Spot;
import ellwand.job.Job;
import ellwand.job.OrderJob;
import ellwand.order.Cost;
import ellwand.order.GarmentLengths;
import ellwand.order.Limits;
import ellwand.order.Order;
import ellwand.order.Spreading;
import ellwand.order.Tolerance;
import ellwand.pattern.Style;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Reads the order of a job: with a style, or with a marker length for each size. */
public final class OrderJobReader {

  /** What every order says, with an example of each. */
  private static final Map<String, String> NEEDED =
      new TreeMap<>(
          Map.of("colours", "{red: {S: 4, M: 6}}", "max-plies", "40", "max-garments", "4"));

  private final Spot root;
  private final Spot order;

  private OrderJobReader(Spot root) {
    this.root = root;
    this.order = root.get("order");
  }

  /**
   * Whether a file asks for garments in colours, wherever its order is written.
   *
   * @throws InputException if it cannot be read at all
   */
  public static boolean isOrder(String name, Folder from) {
    Spot root = Spot.root(SheetReader.read(name, from), new ArrayList<>());
    return root.get("order").get("colours").present();
  }

  /**
   * Reads an order from disk.
   *
   * @throws InputException with every problem that could be found
   */
  public static OrderJob read(Path path) {
    return read(path.toString(), Folder.DISK);
  }

  /**
   * Reads an order.
   *
   * @param name that the folder knows it by
   * @param from has the order and the files that it names
   * @throws InputException with every problem that could be found
   */
  public static OrderJob read(String name, Folder from) {
    Sheet sheet = SheetReader.read(name, from);
    JobShape shape = JobShape.of(sheet);
    List<Problem> problems = new ArrayList<>();
    Spot root = Spot.root(sheet, problems);
    boolean styled = root.get("style").present() || root.get("cloths").present();
    Optional<Job> job = styled ? Optional.of(JobReader.read(sheet, shape)) : Optional.empty();
    problems.addAll(shape.problems());
    Optional<OrderJob> read =
        problems.isEmpty() ? new OrderJobReader(root).read(job) : Optional.empty();
    if (!problems.isEmpty()) {
      throw new InputException(problems.stream().distinct().toList());
    }
    return read.orElseThrow();
  }

  private Optional<OrderJob> read(Optional<Job> job) {
    if (!root.holds(
        order.present(),
        "the job has no order:",
        "Add it, with colours:, max-plies: and max-garments:")) {
      return Optional.empty();
    }
    NEEDED.forEach(
        (key, example) ->
            order.holds(
                order.get(key).present(),
                "the order has no " + key + ":",
                "Add it, for example " + key + ": " + example));
    Optional<GarmentLengths> lengths = lengths(job);
    Set<String> sizes =
        job.<Set<String>>map(j -> new LinkedHashSet<>(j.style().sizes()))
            .orElseGet(() -> order.get("lengths").entries().keySet());
    Map<String, Map<String, Integer>> wanted = wanted(sizes);
    List<OrderJob.OfCloth> read = new ArrayList<>();
    Set<String> currencies = new LinkedHashSet<>();
    for (Optional<Cloth> cloth : cloths(job, wanted)) {
      TermsReader terms = new TermsReader(order, cloth);
      ClothPrice price = terms.price(read.isEmpty());
      currencies.add(price.currency());
      ofCloth(job, cloth, wanted, terms, price).ifPresent(read::add);
    }
    order.holds(
        !read.isEmpty() || !order.problems().isEmpty(),
        "no piece of the sizes ordered is cut from any cloth",
        "See cut: of the pieces");
    currencies.remove("");
    order.holds(
        currencies.size() < 2,
        "the cloths' prices are in " + String.join(" and ", currencies) + ", which do not add up",
        "Give all prices in one currency");
    if (!order.problems().isEmpty()) {
      return Optional.empty();
    }
    Unit unit = root.get("unit").text().map(Unit::parse).orElse(Unit.M);
    lengths.ifPresent(known -> checkTable(known, read.get(0).order().limits(), wanted, unit));
    return Optional.of(
        new OrderJob(
            root.sheet().origin(),
            root.get("title").text(),
            unit,
            job,
            lengths,
            read,
            currencies.stream().findFirst().orElse("")));
  }

  private Optional<OrderJob.OfCloth> ofCloth(
      Optional<Job> job,
      Optional<Cloth> cloth,
      Map<String, Map<String, Integer>> wanted,
      TermsReader terms,
      ClothPrice price) {
    Optional<Cost> cost = terms.cost(price);
    Optional<Limits> limits = terms.limits();
    Optional<Tolerance> tolerance = terms.tolerance();
    Map<String, String> colours = terms.colours(wanted.keySet());
    Optional<Spreading> spreading = new SpreadReader(terms.term("spread")).read(job, cloth);
    if (!order.problems().isEmpty()) {
      return Optional.empty();
    }
    return order
        .attempt(
            () ->
                new Order(
                    wanted,
                    limits.orElseThrow(),
                    tolerance.orElseThrow(),
                    cost.orElseThrow(),
                    spreading.orElseThrow()))
        .map(o -> new OrderJob.OfCloth(cloth, o, colours));
  }

  /** The cloth that is named, or each that a wanted size is cut from; none without a style. */
  private List<Optional<Cloth>> cloths(
      Optional<Job> job, Map<String, Map<String, Integer>> wanted) {
    if (job.isEmpty()) {
      return List.of(Optional.empty());
    }
    List<Cloth> all = job.get().cloths();
    List<String> names = all.stream().map(Cloth::name).toList();
    Spot named = order.get("cloth");
    if (named.present()) {
      String name = named.node().asText();
      named.holds(
          names.contains(name),
          "no cloth is called " + Names.shown(name),
          "Use one of " + String.join(", ", names));
      return all.stream().filter(c -> c.name().equals(name)).map(Optional::of).toList();
    }
    order
        .get("cloths")
        .entries()
        .forEach(
            (name, spot) ->
                spot.holds(
                    names.contains(name),
                    "no cloth is called " + Names.shown(name),
                    "Use one of " + String.join(", ", names)));
    Style style = job.get().style();
    Set<String> sizes =
        wanted.values().stream().flatMap(m -> m.keySet().stream()).collect(Collectors.toSet());
    return all.stream()
        .filter(c -> sizes.stream().anyMatch(s -> cutFrom(style, s, c.name())))
        .map(Optional::of)
        .toList();
  }

  private static boolean cutFrom(Style style, String size, String cloth) {
    return style.sizes().contains(size)
        && style.pieces(size).stream().anyMatch(p -> p.cutFrom(cloth).isPresent());
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
                  .forEach(
                      (size, count) -> garments.put(size, garments(colour, size, count, sizes)));
              wanted.put(colour, garments);
            });
    return wanted;
  }

  private static int garments(String colour, String size, Spot count, Set<String> sizes) {
    count.holds(
        sizes.isEmpty() || sizes.contains(size),
        "size " + Names.shown(size) + " is ordered, but nothing is known of it",
        "Use one of " + String.join(", ", sizes));
    return TermsReader.whole(
        count,
        0,
        "garments of size %s in colour %s".formatted(Names.shown(size), Names.shown(colour)));
  }

  private void checkTable(
      GarmentLengths lengths, Limits limits, Map<String, Map<String, Integer>> wanted, Unit unit) {
    for (String size : order.get("lengths").entries().keySet()) {
      boolean ordered = wanted.values().stream().anyMatch(c -> c.getOrDefault(size, 0) > 0);
      double needed = lengths.bySize().get(size) + limits.endLossMm();
      if (ordered && needed > limits.tableMm() + 1e-6) {
        order
            .get("table")
            .holds(
                false,
                "a garment of size %s needs %s with its end loss, but the table has only %s"
                    .formatted(
                        size,
                        new Length(needed).show(unit),
                        new Length(limits.tableMm()).show(unit)),
                "Use a longer table, or leave out size " + size);
      }
    }
  }
}
