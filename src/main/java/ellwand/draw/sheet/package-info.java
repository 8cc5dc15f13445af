/**
 * What every drawing is made of and written with: items and blocks on sheets, SVG, PNG and PDF.
 *
 * <p>A drawing is first made as plain {@link ellwand.draw.sheet.Item}s in the frame of the cutting
 * table (mm, y up), then written out; only the writers turn y over. In SVG one user unit is 1 mm.
 */
package ellwand.draw.sheet;
