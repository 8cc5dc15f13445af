package ellwand.file.job;

import ellwand.file.source.JobShape;
import ellwand.file.source.Names;
import ellwand.file.source.Spot;
import ellwand.geometry.Point;
import ellwand.pattern.GradeRule;
import ellwand.pattern.Sizes;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads {@code sizes:}: the names of the sizes, body measures, and how points move. */
final class SizesReader {

  private static final Set<String> AXES = Set.of("x", "y");

  private final Spot sizes;
  private final List<String> names;
  private final String base;
  private final BodyReader body;

  private SizesReader(Spot sizes, List<String> names, String base) {
    this.sizes = sizes;
    this.names = names;
    this.base = base;
    this.body = new BodyReader(sizes.get("body"), names, base);
  }

  /** The sizes, or nothing if anything about them is wrong. */
  static Optional<Sizes> read(Spot sizes, Spot drawnIn, JobShape shape) {
    if (!shape.holds(sizes) || !shape.holds(drawnIn)) {
      return Optional.empty();
    }
    if (!sizes.present()) {
      return Optional.of(Sizes.only(drawnIn.text().orElse(Sizes.ONE_SIZE)));
    }
    int before = sizes.problems().size();
    Set<String> names = new LinkedHashSet<>();
    for (Spot name : sizes.get("names").items()) {
      String text = name.text().orElse("");
      Names.check(name, text);
      name.holds(names.add(text), "size " + text + " is named twice", "Name it once");
    }
    sizes.holds(
        drawnIn.present(),
        "it is not said in which size the pieces are drawn",
        "Name it with size: in the style");
    if (sizes.problems().size() > before) {
      return Optional.empty();
    }
    String base = drawnIn.text().orElseThrow();
    // Before anything else is read, since every shift counts from the base.
    return drawnIn
        .attempt(() -> new Sizes(List.copyOf(names), base, Map.of()))
        .flatMap(s -> new SizesReader(sizes, s.names(), base).read());
  }

  private Optional<Sizes> read() {
    int before = sizes.problems().size();
    Map<String, Map<String, GradeRule>> rules = new LinkedHashMap<>();
    sizes
        .get("grade")
        .entries()
        .forEach(
            (piece, points) -> {
              Map<String, GradeRule> ofPiece = new LinkedHashMap<>();
              points
                  .entries()
                  .forEach((point, spot) -> rule(spot).ifPresent(r -> ofPiece.put(point, r)));
              rules.put(piece, ofPiece);
            });
    return sizes.problems().size() > before
        ? Optional.empty()
        : sizes.attempt(() -> new Sizes(names, base, rules, body.body()));
  }

  private Optional<GradeRule> rule(Spot spot) {
    if (spot.node().isArray()) {
      return place(spot).flatMap(p -> spot.attempt(() -> new GradeRule.Step(p)));
    }
    if (!names.containsAll(AXES) && AXES.containsAll(spot.entries().keySet())) {
      return withBody(spot);
    }
    Map<String, Point> bySize = new HashMap<>();
    spot.entries()
        .forEach(
            (size, shift) -> {
              if (known(shift, size)
                  && shift.holds(
                      shift.node().isArray(),
                      "the shift in size " + size + " is not [x, y]",
                      "Write for example [0.5, 0.2]")) {
                place(shift).ifPresent(p -> bySize.put(size, p));
              }
            });
    for (String size : names) {
      spot.holds(
          size.equals(base) || spot.get(size).present(),
          "no shift is given for size " + size,
          "Give one for each size but " + base + ", in which the pieces are drawn");
    }
    return bySize.keySet().containsAll(others())
        ? spot.attempt(() -> new GradeRule.EachSize(bySize))
        : Optional.empty();
  }

  private boolean known(Spot spot, String size) {
    return spot.holds(
            names.contains(size),
            "there is no size " + Names.shown(size),
            "Use " + String.join(", ", names))
        && spot.holds(
            !size.equals(base),
            "the pieces are drawn in size " + size + ", so nothing moves there",
            "Take it out");
  }

  private Optional<GradeRule> withBody(Spot spot) {
    Map<String, Double> x = body.growth(spot.get("x"));
    Map<String, Double> y = body.growth(spot.get("y"));
    Map<String, Point> bySize = new HashMap<>();
    others().forEach(size -> bySize.put(size, new Point(x.get(size), y.get(size))));
    return spot.attempt(() -> new GradeRule.EachSize(bySize));
  }

  private List<String> others() {
    return names.stream().filter(n -> !n.equals(base)).toList();
  }

  private static Optional<Point> place(Spot spot) {
    List<Optional<Double>> xy = spot.items().stream().map(Spot::length).toList();
    return xy.stream().allMatch(Optional::isPresent)
        ? Optional.of(new Point(xy.get(0).orElseThrow(), xy.get(1).orElseThrow()))
        : Optional.empty();
  }
}
