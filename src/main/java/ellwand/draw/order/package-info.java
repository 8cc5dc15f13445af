/** What goes with a cut order on paper: its report with a ticket for each lay, bundle labels. */
package ellwand.draw.order;
