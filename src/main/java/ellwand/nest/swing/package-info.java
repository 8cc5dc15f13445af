/** Turns pieces off their grain, as far as they may, where that saves cloth. */
package ellwand.nest.swing;
