package ellwand.pattern;

import ellwand.problem.InputException;

/** A piece that nobody draws: its size follows from a few lengths and from the edges it joins. */
public sealed interface Computed permits BindingPlan, GatheredPlan, PleatedPlan, BandPlan {

  String name();

  /**
   * The pieces of a size, and this one.
   *
   * @param pieces that it may measure
   * @throws InputException if it cannot be made of them
   */
  PieceSet addedTo(PieceSet pieces, String size);
}
