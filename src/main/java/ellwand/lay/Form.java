package ellwand.lay;

/** In which form a copy lies on the cloth. */
public enum Form {
  /** A piece as drawn; in a double zone its twin is wasted. */
  WHOLE,
  /** A half piece opened about its fold edge. */
  OPENED,
  /** A half piece with its fold edge on a fold edge of the cloth. */
  HALF,
  /** One placement in a double zone that yields a piece of each hand. */
  PAIR
}
