/**
 * Lays what was decided on the stretches of a cloth with the kernel, and turns the layouts into
 * markers.
 */
package ellwand.nest.stretch;
