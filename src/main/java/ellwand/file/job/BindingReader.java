package ellwand.file.job;

import ellwand.file.source.Spot;
import ellwand.pattern.Binding;
import ellwand.pattern.BindingPlan;
import ellwand.pattern.Extent;
import java.util.List;
import java.util.Optional;

/** Reads one binding that is computed from what it binds. */
final class BindingReader {

  private static final List<String> ONLY_DRAWN =
      List.of("outline", "gathered", "edges", "fold", "grain", "notches", "lines", "place");

  private BindingReader() {}

  /**
   * The binding, or nothing if it is wrong.
   *
   * @param sizes that there are
   */
  static Optional<BindingPlan> read(String name, Spot spot, PieceHead head, List<String> sizes) {
    int before = spot.problems().size();
    for (String key : ONLY_DRAWN) {
      spot.get(key)
          .holds(
              !spot.get(key).present(),
              "a binding has no " + key + ": of its own",
              "Take it out, or draw the piece without binding:");
    }
    Spot binding = spot.get("binding");
    Optional<Extent> length = ExtentReader.read(binding.get("from"), sizes);
    Optional<Double> width = width(binding);
    double longest = binding.get("longest").lengthAbove0().orElse(Binding.USUAL_LONGEST_MM);
    double join = binding.get("join").lengthFrom0().orElse(Binding.USUAL_JOIN_MM);
    Binding.CutAs cutAs =
        binding.get("cut-as").text().filter("square"::equals).isPresent()
            ? Binding.CutAs.SQUARE
            : Binding.CutAs.STRIPS;
    if (spot.problems().size() > before || length.isEmpty() || width.isEmpty()) {
      return Optional.empty();
    }
    double whole = Binding.wholeMm(spot.sheet().units().get("style"));
    return spot.attempt(
        () ->
            new BindingPlan(
                name, length.get(), width.get(), cutAs, longest, join, whole, head.cuts()));
  }

  private static Optional<Double> width(Spot binding) {
    Spot cut = binding.get("width");
    Spot finished = binding.get("finished");
    if (!binding.holds(
        cut.present() != finished.present(),
        cut.present() ? "its width is said twice" : "it is not said how wide the binding is",
        "Give width: as it is cut, or finished: as it shows")) {
      return Optional.empty();
    }
    boolean doubled = binding.get("doubled").isTrue();
    return cut.present()
        ? cut.lengthAbove0()
        : finished.lengthAbove0().map(mm -> Binding.cutWidthMm(mm, doubled));
  }
}
