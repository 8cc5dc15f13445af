package ellwand.file.drawn;

import ellwand.geometry.Path;

/**
 * A part of an outline from corner to corner.
 *
 * @param name of the edge
 * @param from number of the segment it starts with
 * @param count of its segments
 */
record Stretch(String name, int from, int count, Path path) {

  private static final double STRAIGHT_MM = 0.05;

  boolean straight() {
    return path.straight(STRAIGHT_MM);
  }
}
