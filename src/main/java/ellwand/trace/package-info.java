/**
 * Photographs and scans of paper pieces, seen from straight above: sheets found, lens and
 * perspective taken out, and how far that can be trusted. The only place that sees the vision
 * library. On the plane on which a piece lies lengths are in mm, x to the right, y up; in a picture
 * they are in pixels, x to the right, y down, the centre of the first pixel at 0, 0.
 */
package ellwand.trace;
