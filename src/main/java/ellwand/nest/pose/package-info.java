/**
 * How one piece may lie in a band of the cloth, and at which places in the cloth what is wanted can
 * be served.
 */
package ellwand.nest.pose;
