package ellwand.nest;

import ellwand.cutting.CutPiece;
import ellwand.lay.Form;
import ellwand.lay.Wanted;

/**
 * One placement to be made.
 *
 * @param wanted what it serves (the first of two, where a pair serves two of the same)
 * @param drawn the piece as it lies in its form
 * @param hand which hands may be seen from above
 */
record Request(Wanted wanted, Form form, CutPiece drawn, Hand hand) {

  /** Which hands of a piece may be seen from above. */
  enum Hand {
    AS_DRAWN,
    MIRRORED,
    FREE
  }

  static Request of(Wanted wanted, Form form, Hand hand) {
    return new Request(wanted, form, form.drawn(wanted.cut()), hand);
  }
}
