/**
 * Going on from a marker as it lies: what overlaps is parted and the marker shortened, nothing is
 * turned, what is pinned stays.
 */
package ellwand.nest.tidy;
