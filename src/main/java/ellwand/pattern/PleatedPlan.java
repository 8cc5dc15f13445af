package ellwand.pattern;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.List;
import java.util.Optional;

/**
 * A rectangle that is pleated onto edges, before they are measured. Two of pleats, depth and
 * fullness are given; the third follows in each size.
 *
 * @param joined what it is sewn to
 * @param pleats how many
 * @param depthMm of each fold
 * @param fullness above 1
 * @param length finished, from the pleated edge to the hem
 * @param notches its maker's own, beside those that it gets by itself
 * @see Pleated
 */
public record PleatedPlan(
    String name,
    Extent joined,
    Pleating.Kind kind,
    Optional<Integer> pleats,
    Optional<Double> depthMm,
    Optional<Double> fullness,
    Extent length,
    Gathered.Seams seams,
    int panels,
    Grain grain,
    List<Cut> cuts,
    List<Notch> notches)
    implements Computed {

  /**
   * Plans a rectangle.
   *
   * @throws InputException if it could not be cut, however long the edges are
   */
  public PleatedPlan {
    cuts = List.copyOf(cuts);
    notches = List.copyOf(notches);
    if (pleats.isPresent() && depthMm.isPresent() && fullness.isPresent()
        || pleats.isEmpty() && depthMm.isEmpty()
        || depthMm.isEmpty() && fullness.isEmpty()
        || pleats.isEmpty() && fullness.isEmpty()) {
      throw new InputException(
          Problem.inPiece(
              name,
              "two of pleats, depth and fullness say how it is pleated",
              "Give two of them, for example pleats: 12, depth: 3 cm"));
    }
    if (fullness.filter(f -> !(f > 1)).isPresent()) {
      throw new InputException(
          Problem.inPiece(
              name, "a fullness of 1 or less leaves nothing to pleat", "Write for example 3"));
    }
    int panelsTried = pleats.isPresent() ? panels : 0;
    new Pleated(
            name,
            Span.given(ANY_MM),
            pleating(kind, pleats, depthMm, fullness, ANY_MM),
            ANY_MM,
            seams,
            panelsTried,
            grain,
            cuts,
            Notch.atStarts(notches))
        .piece();
  }

  private static Pleating pleating(
      Pleating.Kind kind,
      Optional<Integer> pleats,
      Optional<Double> depthMm,
      Optional<Double> fullness,
      double joinedMm) {
    if (pleats.isPresent()) {
      return depthMm.isPresent()
          ? new Pleating(kind, pleats.get(), depthMm.get())
          : Pleating.full(kind, pleats.get(), fullness.orElseThrow(), joinedMm);
    }
    return Pleating.deep(kind, depthMm.orElseThrow(), fullness.orElseThrow(), joinedMm);
  }

  @Override
  public PieceSet addedTo(PieceSet pieces, String size) {
    Span span = joined.span(size, pieces, cuts);
    return pieces.with(
        new Pleated(
            name,
            span,
            pleating(kind, pleats, depthMm, fullness, span.mm()),
            length.mm(size, pieces),
            seams,
            panels,
            grain,
            cuts,
            notches));
  }
}
