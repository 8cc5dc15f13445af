package ellwand.nest.kernel;

/**
 * Something fixed that no copy may overlap: a flaw, a part of the cloth that isn't there.
 *
 * @param shape index into the strip's shapes
 * @param x place of the shape's origin
 * @param y place of the shape's origin
 */
public record Obstacle(int shape, double x, double y) {}
