/**
 * Moves and turns all copies of a layout a little, together, until it is shorter; knows convex
 * parts and borders, not pieces of cloth.
 *
 * <p>Frame: x along the strip, y across, counter-clockwise positive, millimetres and radians. Two
 * convex parts keep apart by a side of one of them. While those sides are held, what is asked of
 * the copies is nearly linear, and is met by one correction after another (relaxation of linear
 * inequalities: Agmon 1954, Motzkin and Schoenberg 1954); the sides are chosen anew after each step
 * (as in the compaction of Li and Milenkovic 1995). {@link ellwand.nest.turning.Turner} is the way
 * in.
 */
package ellwand.nest.turning;
