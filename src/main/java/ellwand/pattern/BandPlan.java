package ellwand.pattern;

import java.util.List;

/**
 * A band before the edges that it joins are measured.
 *
 * @param joined what all of it is sewn to
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
    List<Cut> cuts)
    implements Computed {

  /** To try the rest with. */
  private static final double ANY_MM = 1_000;

  /**
   * Plans a band.
   *
   * @throws ellwand.problem.InputException if it could not be cut, however long the edges are
   */
  public BandPlan {
    cuts = List.copyOf(cuts);
    new Band(name, Span.given(ANY_MM), share, overlapMm, ANY_MM, doubled, seams, grain, cuts)
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
            cuts));
  }
}
