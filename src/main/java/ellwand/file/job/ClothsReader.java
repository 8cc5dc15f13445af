package ellwand.file.job;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Flaw;
import ellwand.cloth.Fold;
import ellwand.cloth.Goods;
import ellwand.cloth.Laying;
import ellwand.cloth.Repeat;
import ellwand.cloth.Selling;
import ellwand.cloth.Shrinkage;
import ellwand.cloth.Wishes;
import ellwand.file.source.JobShape;
import ellwand.file.source.Names;
import ellwand.file.source.Spelling;
import ellwand.file.source.Spot;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads {@code cloths:}. */
final class ClothsReader {

  private final JobShape shape;

  ClothsReader(JobShape shape) {
    this.shape = shape;
  }

  /** Those that are right, in the order written; problems of the others are reported. */
  List<Cloth> read(Spot cloths) {
    List<Cloth> read = new ArrayList<>();
    cloths
        .entries()
        .forEach(
            (name, spot) -> {
              Names.check(spot, name);
              if (shape.holds(spot)) {
                cloth(name, spot).ifPresent(read::add);
              }
            });
    return read;
  }

  /** Those of which the pieces of one garment may come from several bolts. */
  static Set<String> severalBolts(Spot cloths) {
    return cloths.entries().entrySet().stream()
        .filter(cloth -> cloth.getValue().get("several-bolts").isTrue())
        .map(Map.Entry::getKey)
        .collect(Collectors.toSet());
  }

  /** It was called buffer up to 0.1.0; that is read for one version more. */
  private static Spot fusingMargin(Spot cloth) {
    Spot margin = cloth.get("fusing-margin");
    Spot older = cloth.get("buffer");
    older.holds(
        !(margin.present() && older.present()),
        "buffer is the older word for fusing-margin, and both are given",
        "Take buffer: out");
    return margin.present() ? margin : older;
  }

  private Optional<Cloth> cloth(String name, Spot spot) {
    int before = spot.problems().size();
    double width = spot.get("width").lengthAbove0().orElse(0.0);
    double margin = fusingMargin(spot).lengthFrom0().orElse(0.0);
    double selvedge = spot.get("selvedge").lengthFrom0().orElse(0.0);
    double gap = spot.get("gap").lengthFrom0().orElse(0.0);
    double ends = spot.get("ends").lengthFrom0().orElse(0.0);
    Optional<Double> step = spot.get("shop-step").lengthAbove0();
    Optional<Repeat> repeat = RepeatReader.read(spot.get("repeat"));
    Direction direction = direction(spot.get("direction"), repeat);
    boolean tubular = spot.get("tubular").isTrue();
    spot.get("selvedge")
        .holds(!tubular || selvedge + margin == 0, "a tube has no selvedge", "Leave selvedge: out");
    Spot tolerance = spot.get("grain-tolerance");
    double degrees =
        tolerance.text().flatMap(t -> tolerance.attempt(() -> Degrees.parse(t))).orElse(0.0);
    List<Fold> folds = folds(spot.get("fold"), tubular, direction);
    Shrinkage shrinkage = shrinkage(spot.get("shrinkage"));
    List<Flaw> flaws = FlawsReader.read(spot, tubular);
    Optional<Wishes> wishes = WishesReader.read(spot);
    Spot priceSpot = spot.get("price");
    ClothPrice price =
        priceSpot
            .text()
            .flatMap(t -> priceSpot.attempt(() -> ClothPrice.parse(t)))
            .orElse(ClothPrice.NONE);
    if (spot.problems().size() > before || wishes.isEmpty()) {
      return Optional.empty();
    }
    return spot.attempt(
            () ->
                new Cloth(
                        name,
                        Goods.wide(width)
                            .selvedge(selvedge)
                            .tube(tubular)
                            .shrinking(shrinkage)
                            .repeating(repeat)
                            .flawed(flaws),
                        Laying.in(folds).heading(direction).gap(gap).ends(ends).offGrain(degrees),
                        Selling.inSteps(step.orElse(Selling.USUAL_STEP_MM))
                            .at(price.perMetre(), price.currency())
                            .at(widthPrices(spot.get("prices"))),
                        wishes.get())
                    .withFusingMargin(margin))
        .flatMap(cloth -> lying(cloth, spot.get("fold")));
  }

  /** Prices a metre by width, mm. */
  private static Map<Double, Double> widthPrices(Spot spot) {
    Map<Double, Double> prices = new LinkedHashMap<>();
    for (Spot entry : spot.items()) {
      Optional<Double> width = entry.get("width").lengthAbove0();
      Spot price = entry.get("price");
      price
          .text()
          .flatMap(t -> price.attempt(() -> ClothPrice.parse(t)))
          .ifPresent(p -> width.ifPresent(w -> prices.put(w, p.perMetre())));
    }
    return prices;
  }

  /** The cloth if there is a way to lie that it allows; those that it does not allow are told. */
  private static Optional<Cloth> lying(Cloth cloth, Spot fold) {
    boolean any = !fold.present() || fold.node().asText().equals("any");
    for (Fold f : cloth.folds()) {
      Optional<Problem> why = cloth.barred(f);
      if (!any) {
        why.ifPresent(
            p ->
                fold.report(
                    Problem.of(
                        "'%s' is not possible with cloth %s: %s"
                            .formatted(f.words(), cloth.name(), p.what()),
                        p.remedy())));
      }
    }
    return cloth.possibleFolds().isEmpty() ? Optional.empty() : Optional.of(cloth);
  }

  /** A repeat without mirror line shows a heading, whatever is said. */
  private static Direction direction(Spot spot, Optional<Repeat> repeat) {
    Direction said = spot.text().map(ClothsReader::direction).orElse(Direction.ANY_WAY);
    return repeat.map(r -> r.direction(said)).orElse(said);
  }

  private static Direction direction(String words) {
    return Arrays.stream(Direction.values())
        .filter(d -> d.words().equals(words))
        .findFirst()
        .orElseThrow();
  }

  private static List<Fold> folds(Spot spot, boolean tubular, Direction direction) {
    if (!spot.present() || spot.node().asText().equals("any")) {
      return Cloth.anyFold(tubular, direction);
    }
    List<Spot> named = spot.node().isArray() ? spot.items() : List.of(spot);
    List<Fold> folds = new ArrayList<>();
    for (Spot one : named) {
      if (!one.holds(
          !one.node().asText().equals("any"),
          "any stands among other ways to lie",
          "Write fold: any alone, or name the ways without it")) {
        continue;
      }
      one.attempt(() -> fold(one.node().asText()))
          .filter(f -> one.holds(!folds.contains(f), "this fold is named twice", "Name it once"))
          .ifPresent(folds::add);
    }
    return folds;
  }

  private static Fold fold(String words) {
    List<Fold> ways = Arrays.stream(Fold.values()).filter(f -> f == f.asOnePly()).toList();
    List<String> known = ways.stream().map(Fold::words).toList();
    return ways.stream()
        .filter(f -> f.words().equals(words))
        .findFirst()
        .orElseThrow(
            () ->
                InputException.of(
                    "'" + Names.shown(words) + "' is not a way to lay cloth",
                    Spelling.nearest(words, known)
                        .map(near -> "Perhaps " + near + " is meant")
                        .orElse("Use " + String.join(", ", known) + ", any")));
  }

  private static Shrinkage shrinkage(Spot spot) {
    double along = share(spot.get("along"));
    double across = share(spot.get("across"));
    Shrinkage.When when =
        spot.get("when").text().filter("after"::equals).isPresent()
            ? Shrinkage.When.AFTER
            : Shrinkage.When.BEFORE_CUTTING;
    return new Shrinkage(along, across, when);
  }

  private static double share(Spot spot) {
    return spot.text().flatMap(t -> spot.attempt(() -> Share.parse(t))).orElse(0.0);
  }
}
