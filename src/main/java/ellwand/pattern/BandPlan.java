package ellwand.pattern;

import java.util.List;

/**
 * A band before the edges that it joins are measured.
 *
 * @param joined what all of it is sewn to
 * @param notches its maker's own, beside those that it gets by itself
 * @see Band
 */
public record BandPlan(
    String name,
    Extent joined,
    double share,
    double overlapMm,
    Extent height,
    boolean doubled,
    Band.Seams seams,
    Grain grain,
    List<Cut> cuts,
    List<Notch> notches)
    implements Computed {

  /**
   * Plans a band.
   *
   * @throws ellwand.problem.InputException if it could not be cut, however long the edges are
   */
  public BandPlan {
    cuts = List.copyOf(cuts);
    notches = List.copyOf(notches);
    new Band(
            name,
            Span.given(ANY_MM),
            share,
            overlapMm,
            ANY_MM,
            doubled,
            seams,
            grain,
            cuts,
            Notch.atStarts(notches))
        .piece();
  }

  @Override
  public PieceSet addedTo(PieceSet pieces, String size) {
    return pieces.with(
        new Band(
            name,
            joined.span(size, pieces, cuts),
            share,
            overlapMm,
            height.mm(size, pieces),
            doubled,
            seams,
            grain,
            cuts,
            notches));
  }
}
