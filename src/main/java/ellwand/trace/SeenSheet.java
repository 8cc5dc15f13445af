package ellwand.trace;

import ellwand.geometry.Point;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * A reference sheet as one photo shows it.
 *
 * @param corners the field's inner corners that were measured, by their place in {@link
 *     ReferenceSheet#corners}: pixels
 */
record SeenSheet(ReferenceSheet sheet, Map<Integer, Point> corners) {

  SeenSheet {
    // In their order, for sums come out otherwise in another.
    corners = Collections.unmodifiableMap(new TreeMap<>(corners));
  }
}
