package ellwand.rule;

import ellwand.lay.Marker;
import ellwand.pattern.Match;
import ellwand.units.Unit;
import java.util.Optional;

/**
 * Of all that matches in a marker, what misses by most.
 *
 * @param mm by how much, 0 or more
 */
public record WorstMatch(Match match, double mm) {

  /** Less than this nobody can lay, mm; our own choice. */
  private static final double EXACT_MM = 0.05;

  /** The worst of a marker; empty if nothing is to match on its cloth. */
  public static Optional<WorstMatch> of(Marker marker) {
    return InRepeat.worst(Inspection.of(marker));
  }

  /** {@code met exactly}, or what misses by how much. */
  public String words(Unit unit) {
    return exact()
        ? "met exactly"
        : "missed by %s at most: %s.%s and %s.%s"
            .formatted(
                Say.small(mm, unit),
                match.piece(),
                match.mark(),
                match.otherPiece(),
                match.otherMark());
  }

  /** Whether nobody could lay it better. */
  public boolean exact() {
    return mm < EXACT_MM;
  }
}
