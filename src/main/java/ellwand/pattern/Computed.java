package ellwand.pattern;

import ellwand.problem.InputException;

/** A piece that nobody draws: its size follows from a few lengths and from the edges it joins. */
public sealed interface Computed permits BindingPlan, GatheredPlan, PleatedPlan, BandPlan {

  /** For lengths that are not known yet, to try all else that is asked with, mm. */
  double ANY_MM = 1_000;

  String name();

  /**
   * The pieces of a size, and this one.
   *
   * @param pieces that it may measure
   * @throws InputException if it cannot be made of them
   */
  PieceSet addedTo(PieceSet pieces, String size);
}
