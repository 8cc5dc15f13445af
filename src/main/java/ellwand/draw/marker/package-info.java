/** Drawings of markers, the cut sheet of a job, and the widths of a cloth compared. */
package ellwand.draw.marker;
