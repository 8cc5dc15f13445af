/**
 * What a drawing holds, whatever file it came from, and the pattern pieces found in it. Pages are
 * in mm, x to the right, y up.
 */
package ellwand.file.drawn;
