package ellwand.file.job;

import ellwand.file.source.Spot;
import ellwand.pattern.Binding;
import ellwand.pattern.Joined;
import ellwand.pattern.Piece;
import ellwand.units.Unit;
import java.util.List;
import java.util.Optional;

/** Reads one binding that is computed from what it binds. */
final class BindingReader {

  private static final List<String> ONLY_DRAWN =
      List.of("outline", "gathered", "edges", "fold", "grain", "notches", "lines", "place");

  /** Longest single strip and allowance of its joins unless said, mm: our own choice. */
  private static final double USUAL_LONGEST_MM = 600;

  private static final double USUAL_JOIN_MM = 6;

  private BindingReader() {}

  /**
   * The binding, or nothing if it is wrong or binds pieces that are.
   *
   * @param pieces every drawn piece of the size, if all could be read
   */
  static Optional<Binding> read(
      String name, Spot spot, PieceHead head, Optional<List<Piece>> pieces) {
    int before = spot.problems().size();
    for (String key : ONLY_DRAWN) {
      spot.get(key)
          .holds(
              !spot.get(key).present(),
              "a binding has no " + key + ": of its own",
              "Take it out, or draw the piece without binding:");
    }
    Spot binding = spot.get("binding");
    Optional<Double> length = length(binding.get("from"), pieces);
    Optional<Double> width = width(binding);
    double longest = binding.get("longest").lengthAbove0().orElse(USUAL_LONGEST_MM);
    double join = binding.get("join").lengthFrom0().orElse(USUAL_JOIN_MM);
    Binding.Way way =
        binding.get("cut-as").text().filter("square"::equals).isPresent()
            ? Binding.Way.SQUARE
            : Binding.Way.STRIPS;
    if (spot.problems().size() > before || length.isEmpty() || width.isEmpty()) {
      return Optional.empty();
    }
    double whole = whole(spot.sheet().units().get("style"));
    return spot.attempt(
        () -> new Binding(name, length.get(), width.get(), way, longest, join, whole, head.cuts()));
  }

  private static Optional<Double> length(Spot from, Optional<List<Piece>> pieces) {
    if (!from.node().isArray()) {
      return from.lengthAbove0();
    }
    List<String> edges = from.items().stream().flatMap(i -> i.text().stream()).toList();
    return pieces.flatMap(p -> from.attempt(() -> Joined.lengthMm(edges, p)));
  }

  private static Optional<Double> width(Spot binding) {
    Spot cut = binding.get("width");
    Spot finished = binding.get("finished");
    if (!binding.holds(
        cut.present() != finished.present(),
        "its width is not said, or said twice",
        "Give width: as it is cut, or finished: as it shows")) {
      return Optional.empty();
    }
    double times = binding.get("doubled").isTrue() ? Binding.DOUBLED : Binding.SINGLE;
    return cut.present() ? cut.lengthAbove0() : finished.lengthAbove0().map(mm -> mm * times);
  }

  private static double whole(Unit unit) {
    return unit == Unit.INCH || unit == Unit.YARD ? Unit.INCH.mm() : Unit.CM.mm();
  }
}
