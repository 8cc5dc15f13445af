/**
 * Alterations of a piece: each a record that takes a {@link ellwand.pattern.Workpiece} and gives
 * another. Mm, in the piece's own frame, x along the grain.
 */
package ellwand.pattern.alter;
