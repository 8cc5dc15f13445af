/** Cloth as it is bought and as it lies on the table. */
package ellwand.cloth;
