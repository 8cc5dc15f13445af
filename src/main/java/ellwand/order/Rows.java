package ellwand.order;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * Mixes that are cut with markers laid end to end, of which what is too much is left out: each as
 * the shortest row of those that are there. For use by one thread at a time.
 */
public final class Rows {

  private final Map<SizeMix, Double> there;
  private final DoubleUnaryOperator nextMm;
  private final Map<SizeMix, Row> known = new HashMap<>();

  /** A marker, and behind it the row of what it leaves. */
  private record Row(SizeMix first, double lengthMm) {}

  /**
   * @param there lengths of the markers that are there, mm
   * @param nextMm where the next may begin behind one of a length, mm
   */
  public Rows(Map<SizeMix, Double> there, DoubleUnaryOperator nextMm) {
    // In a lasting order, so that sums come out the same each time.
    this.there = Collections.unmodifiableMap(new LinkedHashMap<>(there));
    this.nextMm = nextMm;
  }

  /** Length of the row that holds a mix, mm; infinite if nothing there holds one of its sizes. */
  public double lengthMm(SizeMix mix) {
    return row(mix).lengthMm;
  }

  /** The markers of that row, one after another; empty if there is none. */
  public List<SizeMix> markers(SizeMix mix) {
    List<SizeMix> markers = new ArrayList<>();
    SizeMix left = lengthMm(mix) < Double.POSITIVE_INFINITY ? mix : null;
    while (left != null) {
      markers.add(row(left).first);
      left = left.without(row(left).first).orElse(null);
    }
    return markers;
  }

  private Row row(SizeMix mix) {
    Row row = known.get(mix);
    if (row == null) {
      row = shortest(mix);
      known.put(mix, row);
    }
    return row;
  }

  private Row shortest(SizeMix mix) {
    // One of the row holds this size, and may as well be the first.
    String size = Collections.min(mix.garments().keySet());
    Row shortest = new Row(mix, Double.POSITIVE_INFINITY);
    for (Map.Entry<SizeMix, Double> marker : there.entrySet()) {
      if (marker.getKey().count(size) > 0) {
        double lengthMm =
            mix.without(marker.getKey())
                .map(left -> nextMm.applyAsDouble(marker.getValue()) + lengthMm(left))
                .orElse(marker.getValue());
        if (lengthMm < shortest.lengthMm) {
          shortest = new Row(marker.getKey(), lengthMm);
        }
      }
    }
    return shortest;
  }
}
