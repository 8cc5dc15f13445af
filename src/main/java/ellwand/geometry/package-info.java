/**
 * Plane geometry of the cutting table.
 *
 * <p>One frame everywhere: x runs along the warp (the length of the cloth), y across it from one
 * selvedge or fold edge, angles are counter-clockwise positive in degrees, lengths are millimetres.
 * JTS is used only here.
 */
package ellwand.geometry;
