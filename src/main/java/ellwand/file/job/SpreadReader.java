package ellwand.file.job;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.file.source.Spot;
import ellwand.job.Job;
import ellwand.order.Spreading;
import ellwand.order.Spreading.Faces;
import ellwand.order.Spreading.PlyHeadings;
import ellwand.problem.Problem;
import java.util.List;
import java.util.Optional;

/** Reads {@code spread:}, how the plies of an order's lays lie on one another. */
final class SpreadReader {

  private static final List<String> FACES = List.of("all up", "face to face", "folded");
  private static final List<String> HEADINGS = List.of("one way", "alternating");

  private final Spot spread;

  SpreadReader(Spot spread) {
    this.spread = spread;
  }

  /** All the same way unless said; nothing if it cannot be. */
  Optional<Spreading> read(Optional<Job> job, Optional<Cloth> cloth) {
    Faces faces =
        spread
            .get("faces")
            .text()
            .map(w -> Faces.values()[FACES.indexOf(w)])
            .orElseGet(() -> cloth.map(Faces::usual).orElse(Faces.ALL_UP));
    PlyHeadings headings =
        spread
            .get("headings")
            .text()
            .map(w -> PlyHeadings.values()[HEADINGS.indexOf(w)])
            .orElse(PlyHeadings.ONE_WAY);
    Spot halfSets = spread.get("half-sets");
    Fold fold = faces.fold();
    if (halfSets.isTrue() && faces == Faces.FACE_TO_FACE) {
      cloth
          .flatMap(c -> c.barred(Fold.FACE_TO_FACE))
          .ifPresent(
              why ->
                  halfSets.report(
                      Problem.of(
                          "half sets cannot be cut from this cloth, since " + why.what(),
                          "Put whole garments into the marker")));
    }
    spread
        .get("faces")
        .holds(
            cloth.isEmpty() || cloth.get().folds().contains(fold),
            "this spreading needs " + fold.words() + " among the ways the cloth may lie",
            "Add " + fold.words() + " to fold: of the cloth, or spread it otherwise");
    boolean oneHanded =
        spread.get("asymmetric").isTrue()
            // As it was called up to 0.1.0; read for one version more.
            || spread.get("one-handed").isTrue()
            || job.isPresent()
                && cloth.isPresent()
                && Spreading.oneHanded(job.get().style(), cloth.get().name());
    return spread.attempt(
        () ->
            new Spreading(
                faces,
                headings,
                cloth.map(Cloth::direction).orElse(Direction.ANY_WAY),
                halfSets.isTrue(),
                oneHanded));
  }
}
