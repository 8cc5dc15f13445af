package ellwand.trace;

import ellwand.geometry.Point;
import java.util.Map;

/**
 * A reference sheet as one photo shows it.
 *
 * @param corners the field's inner corners that were measured, by their place in {@link
 *     ReferenceSheet#corners}: pixels
 */
record SeenSheet(ReferenceSheet sheet, Map<Integer, Point> corners) {

  SeenSheet {
    corners = Map.copyOf(corners);
  }
}
