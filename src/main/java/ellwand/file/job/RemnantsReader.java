package ellwand.file.job;

import ellwand.cloth.Flaw;
import ellwand.cloth.Remnant;
import ellwand.file.source.JobShape;
import ellwand.file.source.Names;
import ellwand.file.source.Spot;
import ellwand.geometry.Outline;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads {@code remnants:}. */
final class RemnantsReader {

  private final JobShape shape;

  RemnantsReader(JobShape shape) {
    this.shape = shape;
  }

  /**
   * Those that are right, in the order written.
   *
   * @param cloths that remnants may be pieces of
   */
  List<Remnant> read(Spot remnants, Spot cloths) {
    List<Remnant> read = new ArrayList<>();
    remnants
        .entries()
        .forEach(
            (name, spot) -> {
              Names.check(spot, name);
              if (shape.holds(spot)) {
                remnant(name, spot, cloths).ifPresent(read::add);
              }
            });
    return read;
  }

  private static Optional<Remnant> remnant(String name, Spot spot, Spot cloths) {
    Set<String> names = cloths.entries().keySet();
    int before = spot.problems().size();
    Spot of = spot.get("cloth");
    String cloth = of.text().orElseGet(() -> names.stream().findFirst().orElse(""));
    of.holds(
        names.contains(cloth),
        "no cloth is called " + Names.shown(cloth),
        "Use one of " + String.join(", ", names));
    List<Flaw> flaws = FlawsReader.read(spot, cloths.get(cloth).get("tubular").isTrue());
    if (spot.get("outline").present()) {
      spot.holds(
          !spot.get("length").present() && !spot.get("width").present(),
          "it has an outline: and a length: or width:",
          "Give the outline alone, or length and width");
      Optional<Outline> outline = FlawsReader.outline(spot.get("outline"));
      return spot.problems().size() > before
          ? Optional.empty()
          : outline.map(o -> Remnant.of(name, cloth, o, flaws));
    }
    Optional<Double> length = spot.get("length").lengthAbove0();
    Optional<Double> width = spot.get("width").lengthAbove0();
    Optional<Double> selvedge = spot.get("selvedge").lengthFrom0();
    if (!spot.holds(
            spot.get("length").present() && spot.get("width").present(),
            "it is not said how large the remnant is",
            "Give length: and width:, or outline: with its corners")
        || spot.problems().size() > before) {
      return Optional.empty();
    }
    return Optional.of(new Remnant(name, cloth, length.get(), width.get(), selvedge, flaws));
  }
}
