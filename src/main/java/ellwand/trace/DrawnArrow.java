package ellwand.trace;

import ellwand.geometry.Point;

/**
 * A straight arrow drawn on a paper piece.
 *
 * @param from its tail, or its lower end where both ends have a head; mm
 * @param to its tip
 * @param sure whether nothing else on the piece may be meant
 */
public record DrawnArrow(Point from, Point to, boolean sure) {

  public double lengthMm() {
    return from.distance(to);
  }
}
