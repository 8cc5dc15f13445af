package ellwand.file.drawn;

import ellwand.geometry.Point;

/**
 * Words on a drawing.
 *
 * @param at where they begin
 */
public record DrawnText(String words, Point at, Label label) {}
