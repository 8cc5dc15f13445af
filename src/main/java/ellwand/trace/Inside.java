package ellwand.trace;

import ellwand.geometry.Point;
import java.util.List;

/** Whether a closed line goes round a place. */
final class Inside {

  private Inside() {}

  static boolean of(List<Point> ring, Point p) {
    boolean inside = false;
    for (int i = 0; i < ring.size(); i++) {
      Point a = ring.get(i);
      Point b = ring.get((i + 1) % ring.size());
      if (a.y() > p.y() != b.y() > p.y()
          && p.x() < a.x() + (p.y() - a.y()) * (b.x() - a.x()) / (b.y() - a.y())) {
        inside = !inside;
      }
    }
    return inside;
  }
}
