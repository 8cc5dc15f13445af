package ellwand.draw.marker;

import ellwand.geometry.Box;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** Things on a drawing by the square cells that their boxes reach into, so that few are asked. */
final class Nearby<T> {

  private final double cellMm;
  private final Map<Long, List<T>> cells = new HashMap<>();

  /**
   * @param cellMm side of a cell: about as large as what is put in and asked for
   */
  Nearby(double cellMm) {
    this.cellMm = cellMm;
  }

  void add(Box box, T thing) {
    for (int x = cell(box.minX()); x <= cell(box.maxX()); x++) {
      for (int y = cell(box.minY()); y <= cell(box.maxY()); y++) {
        cells.computeIfAbsent(key(x, y), k -> new ArrayList<>()).add(thing);
      }
    }
  }

  /** Whether a test holds for something whose cells a box reaches into. */
  boolean any(Box box, Predicate<T> test) {
    for (int x = cell(box.minX()); x <= cell(box.maxX()); x++) {
      for (int y = cell(box.minY()); y <= cell(box.maxY()); y++) {
        for (T thing : cells.getOrDefault(key(x, y), List.of())) {
          if (test.test(thing)) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private int cell(double mm) {
    return (int) Math.floor(mm / cellMm);
  }

  private static long key(int x, int y) {
    return (long) x << 32 | y & 0xffffffffL;
  }
}
