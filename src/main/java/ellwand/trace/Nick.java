package ellwand.trace;

import ellwand.geometry.Point;

/**
 * A nick in the border of a piece: a slit, a triangle, or a tab left standing.
 *
 * @param mouth the middle of its mouth, on the line of the border
 * @param tip its deepest place, or a tab's highest
 */
public record Nick(Point mouth, Point tip) {}
