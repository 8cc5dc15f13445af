/**
 * Orders in several sizes and colours, and how they are cut: which lays, which sizes in each
 * marker, how many plies of which colour. Lengths in mm.
 */
package ellwand.order;
