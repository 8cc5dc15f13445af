/** Reads public instances of strip packing, lays them, judges the layouts and writes results. */
package ellwand.bench;
