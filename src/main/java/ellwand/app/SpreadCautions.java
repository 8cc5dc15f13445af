package ellwand.app;

import ellwand.cloth.Cloth;
import ellwand.cloth.Flaw;
import ellwand.order.SizeMix;
import ellwand.order.Spreading;
import ellwand.pattern.Cut;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What whoever spreads the cloth of an order must know beside the plan, as sentences. */
final class SpreadCautions {

  private SpreadCautions() {}

  /** What comes out mirrored in every second ply. */
  static Optional<String> mirrored(MarkerMaker maker, Spreading spreading, List<String> sizes) {
    if (spreading.faces() != Spreading.Faces.FACE_TO_FACE
        || spreading.halfSets()
        || !spreading.oneHanded()) {
      return Optional.empty();
    }
    String pieces =
        sizes.stream()
            .flatMap(size -> maker.lay(SizeMix.one(size)).wanted().stream())
            .filter(w -> w.how() == Cut.How.WHOLE && !w.cut().symmetric())
            .map(w -> w.cut().name())
            .distinct()
            .collect(Collectors.joining(", "));
    return Optional.of(
        "Cloth "
            + maker.cloth().name()
            + " is spread face to face, so that every second ply cuts mirrored: half of the"
            + " garments have these pieces on the other side: "
            + pieces
            + ".");
  }

  /** What to do about flaws: plies come from all along the cloth, flaws do not. */
  static Optional<String> flawed(Cloth cloth, Unit unit) {
    List<Flaw> flaws = cloth.flaws();
    if (flaws.isEmpty()) {
      return Optional.empty();
    }
    double along = flaws.stream().mapToDouble(flaw -> flaw.outline().box().length()).sum();
    return Optional.of(
        "Cloth %s has flaws (%s), which the plan leaves aside: cut each out across the whole width"
                .formatted(
                    cloth.name(), flaws.stream().map(Flaw::name).collect(Collectors.joining(", ")))
            + " before spreading, and have %s of cloth more, besides an end loss at each cut."
                .formatted(new Length(along).show(unit)));
  }
}
