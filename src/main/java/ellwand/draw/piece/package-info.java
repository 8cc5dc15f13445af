/** Drawings of pieces: their lines, labels, grain arrows and the names of their edges. */
package ellwand.draw.piece;
