package ellwand.pattern;

import ellwand.problem.InputException;
import java.util.List;

/**
 * A rectangle that is gathered onto edges, before they are measured.
 *
 * @param joined what it is gathered onto
 * @param panels as for {@link Gathered}
 * @param length finished, from the gathered edge to the hem
 * @param notches its maker's own, beside those that it gets by itself
 * @see Gathered
 */
public record GatheredPlan(
    String name,
    Extent joined,
    Fullness fullness,
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
  public GatheredPlan {
    cuts = List.copyOf(cuts);
    notches = List.copyOf(notches);
    new Gathered(
            name,
            Span.given(ANY_MM),
            fullness,
            ANY_MM,
            seams,
            panels,
            grain,
            cuts,
            Notch.atStarts(notches))
        .piece();
  }

  /** One of a given fullness, in as few panels as the cloth asks for. */
  public GatheredPlan(
      String name,
      Extent joined,
      double fullness,
      Extent length,
      Gathered.Seams seams,
      Grain grain,
      List<Cut> cuts) {
    this(name, joined, Fullness.of(fullness), length, seams, 0, grain, cuts, List.of());
  }

  @Override
  public PieceSet addedTo(PieceSet pieces, String size) {
    return pieces.with(
        new Gathered(
            name,
            joined.span(size, pieces, cuts),
            fullness,
            length.mm(size, pieces),
            seams,
            panels,
            grain,
            cuts,
            notches));
  }
}
