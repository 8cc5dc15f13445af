package ellwand.draw.sheet;

import ellwand.geometry.Box;

/**
 * A photo beneath a drawing.
 *
 * @param box that it fills, mm, y up
 * @param jpeg as a file
 */
public record Backdrop(Box box, byte[] jpeg) {}
