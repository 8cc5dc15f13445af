/** What a marker comes to: lengths, utilisation, cost, left-overs, cautions. */
package ellwand.figures;
