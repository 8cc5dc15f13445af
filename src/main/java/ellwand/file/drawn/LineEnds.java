package ellwand.file.drawn;

import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds which lines end where others do. */
final class LineEnds {

  private record Cell(long x, long y) {}

  private final Map<Cell, List<DrawnLine>> cells = new HashMap<>();

  /** Where more lines end nearly at a place, none is the other of any. */
  private static final int MOST_ENDS = 100;

  LineEnds(List<DrawnLine> lines) {
    for (DrawnLine line : lines) {
      put(line.path().start(), line);
      put(line.path().end(), line);
    }
  }

  private void put(Point at, DrawnLine line) {
    cells.computeIfAbsent(cell(at, 0, 0), c -> new ArrayList<>()).add(line);
  }

  private static Cell cell(Point p, int right, int up) {
    double side = Closing.HAIR_MM;
    return new Cell((long) Math.floor(p.x() / side) + right, (long) Math.floor(p.y() / side) + up);
  }

  static boolean near(Point a, Point b) {
    return a.distance(b) <= Closing.HAIR_MM;
  }

  /** The other line that ends at a place and may go on from one; none if there are several. */
  Optional<DrawnLine> onlyOther(DrawnLine one, Point at) {
    DrawnLine found = null;
    for (int right = -1; right <= 1; right++) {
      for (int up = -1; up <= 1; up++) {
        List<DrawnLine> there = cells.getOrDefault(cell(at, right, up), List.of());
        if (there.size() > MOST_ENDS) {
          return Optional.empty();
        }
        for (DrawnLine line : there) {
          boolean ends = near(line.path().start(), at) || near(line.path().end(), at);
          if (line == one || line == found || !ends) {
            continue;
          }
          if (found != null) {
            return Optional.empty();
          }
          found = line;
        }
      }
    }
    return Optional.ofNullable(found).filter(l -> goOn(one, l));
  }

  /** Lines of the same role, and any with a fold line. */
  private static boolean goOn(DrawnLine one, DrawnLine other) {
    Optional<Role> role = one.label().role();
    Optional<Role> then = other.label().role();
    Optional<Role> fold = Optional.of(Role.FOLD);
    return role.equals(then) || role.equals(fold) || then.equals(fold);
  }
}
