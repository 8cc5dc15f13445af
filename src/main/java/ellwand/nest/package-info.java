/**
 * From a lay to a marker. OptaPlanner holds the discrete choices (where a piece is served, which
 * way a garment heads) and hosts the phases; the separation search in {@code nest.kernel} places.
 */
package ellwand.nest;
