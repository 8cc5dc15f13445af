package ellwand.lay;

import ellwand.cutting.CutPiece;

/** In which form a copy lies on the cloth. */
public enum Form {
  /** A piece as drawn; in a double zone its twin is wasted. */
  WHOLE,
  /** A half piece opened about its fold edge; in a double zone its twin is wasted. */
  OPENED,
  /** A half piece with its fold edge on a fold edge of the cloth. */
  HALF,
  /**
   * One placement in a double zone that yields two: a piece of each hand, or a half piece opened
   * out twice. Where neither has a hand they may be for two garments of a size.
   */
  PAIR;

  /** The piece as it lies in this form: half pieces opened unless they stand on a fold. */
  public CutPiece drawn(CutPiece cut) {
    boolean opens = this == OPENED || this == PAIR;
    return opens && cut.fold().isPresent() ? cut.opened() : cut;
  }
}
