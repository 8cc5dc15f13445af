package ellwand.file.job;

import ellwand.file.source.Spot;
import ellwand.pattern.Allowance;
import ellwand.pattern.Extent;
import ellwand.pattern.Gathered;
import ellwand.pattern.GatheredPlan;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads one rectangle that is computed from what it is gathered onto. */
final class GatheredReader {

  private static final Set<String> EDGES = Set.of(Gathered.TOP, Gathered.HEM, Gathered.SIDE);

  private static final List<String> ONLY_DRAWN = List.of("outline", "fold", "notches", "lines");

  private GatheredReader() {}

  /**
   * The rectangle, or nothing if it is wrong.
   *
   * @param sizes that there are
   */
  static Optional<GatheredPlan> read(String name, Spot spot, PieceHead head, List<String> sizes) {
    int before = spot.problems().size();
    for (String key : ONLY_DRAWN) {
      spot.get(key)
          .holds(
              !spot.get(key).present(),
              "a gathered rectangle has no " + key + ": of its own",
              "Take it out, or draw the piece without gathered:");
    }
    Optional<Gathered.Seams> seams = seams(spot.get("edges"), head);
    Spot gathered = spot.get("gathered");
    Optional<Extent> joined = ExtentReader.read(gathered.get("from"), sizes);
    Optional<Extent> length = ExtentReader.read(gathered.get("length"), sizes);
    if (spot.problems().size() > before
        || seams.isEmpty()
        || joined.isEmpty()
        || length.isEmpty()) {
      return Optional.empty();
    }
    return spot.attempt(
        () ->
            new GatheredPlan(
                name,
                joined.get(),
                gathered.get("fullness").node().asDouble(),
                length.get(),
                seams.get(),
                head.grain(),
                head.cuts()));
  }

  private static Optional<Gathered.Seams> seams(Spot edges, PieceHead head) {
    edges
        .entries()
        .forEach(
            (name, edge) -> {
              edge.holds(
                  EDGES.contains(name),
                  "a gathered rectangle has no edge of this name",
                  "Use " + String.join(", ", EDGES.stream().sorted().toList()));
              edge.holds(
                  !edge.get("from").present() && !edge.get("to").present(),
                  "the edges of a gathered rectangle run where they must",
                  "Take from: and to: out");
            });
    Optional<Allowance> top = allowance(edges.get(Gathered.TOP), head);
    Optional<Allowance> hem = allowance(edges.get(Gathered.HEM), head);
    Optional<Allowance> side = allowance(edges.get(Gathered.SIDE), head);
    if (top.isEmpty() || hem.isEmpty() || side.isEmpty()) {
      return Optional.empty();
    }
    boolean turnedBack = edges.get(Gathered.HEM).get("turned-back").isTrue();
    return Optional.of(new Gathered.Seams(top.get(), hem.get(), side.get(), turnedBack));
  }

  private static Optional<Allowance> allowance(Spot edge, PieceHead head) {
    Spot own = edge.get("allowance");
    return own.present()
        ? head.own(own).map(a -> head.allowance().map(a::or).orElse(a))
        : head.allowance();
  }
}
