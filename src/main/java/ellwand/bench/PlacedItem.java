package ellwand.bench;

import ellwand.geometry.Outline;

/**
 * One copy in its place on the strip.
 *
 * @param item index into the instance's items
 * @param rotation degrees
 */
record PlacedItem(int item, double rotation, Outline polygon) {}
