/**
 * Large drawings on paper: shared out to pages that overlap, or on a roll, with what joins them.
 */
package ellwand.draw.tiles;
