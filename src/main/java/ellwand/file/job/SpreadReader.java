package ellwand.file.job;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cutting.Cutter;
import ellwand.file.source.Spot;
import ellwand.job.Job;
import ellwand.order.Spreading;
import ellwand.order.Spreading.Faces;
import ellwand.order.Spreading.Headings;
import ellwand.pattern.Cut;
import ellwand.pattern.Piece;
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
            .orElseGet(() -> usual(cloth));
    Headings headings =
        spread
            .get("headings")
            .text()
            .map(w -> Headings.values()[HEADINGS.indexOf(w)])
            .orElse(Headings.ONE_WAY);
    Spot halfSets = spread.get("half-sets");
    Fold fold = faces == Faces.FOLDED ? Fold.LENGTHWISE : Fold.OPEN;
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
        spread.get("one-handed").isTrue()
            || job.isPresent() && cloth.isPresent() && oneHanded(job.get(), cloth.get());
    return spread.attempt(
        () ->
            new Spreading(
                faces,
                headings,
                cloth.map(Cloth::direction).orElse(Direction.ANY_WAY),
                halfSets.isTrue(),
                oneHanded));
  }

  /** All faces up, or folded where the cloth may not lie open. */
  private static Faces usual(Optional<Cloth> cloth) {
    return cloth.isEmpty() || cloth.get().folds().contains(Fold.OPEN) ? Faces.ALL_UP : Faces.FOLDED;
  }

  /** Whether a piece is cut in one hand only. */
  private static boolean oneHanded(Job job, Cloth cloth) {
    return job.style().piecesBySize().values().iterator().next().stream()
        .filter(p -> p.cutFrom(cloth.name()).filter(c -> c.how() == Cut.How.WHOLE).isPresent())
        .anyMatch(SpreadReader::handed);
  }

  private static boolean handed(Piece piece) {
    return !Cutter.cut(piece, 1, 1).symmetric();
  }
}
