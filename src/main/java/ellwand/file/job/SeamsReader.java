package ellwand.file.job;

import ellwand.file.source.Spot;
import ellwand.pattern.Piece;
import ellwand.pattern.Seam;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads {@code seams:}: {@code [a.edge, b.edge]} or {@code {join: [.., ..], ease: 1 cm}}. */
final class SeamsReader {

  private SeamsReader() {}

  /**
   * The seams whose edges are all there; the others are reported.
   *
   * @param pieces of any one size
   */
  static List<Seam> read(Spot seams, List<Piece> pieces) {
    List<Seam> read = new ArrayList<>();
    for (Spot spot : seams.items()) {
      boolean plain = spot.node().isArray();
      List<Spot> sides = (plain ? spot : spot.get("join")).items();
      Optional<Double> ease = plain ? Optional.of(0.0) : ease(spot.get("ease"));
      ease.map(mm -> new Seam(edges(sides.get(0)), edges(sides.get(1)), mm))
          .filter(seam -> spot.attempt(() -> seam.mismatchMm(pieces)).isPresent())
          .ifPresent(read::add);
    }
    return read;
  }

  private static Optional<Double> ease(Spot spot) {
    return spot.present() ? spot.length() : Optional.of(0.0);
  }

  private static List<String> edges(Spot side) {
    return side.node().isArray()
        ? side.items().stream().map(e -> e.node().asText()).toList()
        : List.of(side.node().asText());
  }
}
