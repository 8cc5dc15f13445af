/** Goes on from the shortest marker to what serves the cutter's wishes. */
package ellwand.nest.wish;
