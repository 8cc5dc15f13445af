package ellwand.trace;

import ellwand.geometry.Path;

/**
 * An edge of a paper piece.
 *
 * @param name such as {@code A to B}, by its corners
 * @param path counter-clockwise round the piece, mm, y up
 */
public record NamedEdge(String name, Path path) {}
