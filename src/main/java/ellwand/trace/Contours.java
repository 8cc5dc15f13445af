package ellwand.trace;

import ellwand.geometry.Motion;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * Where light changes in a scan: lines, and the border of paper. Two scans of one place show the
 * same.
 */
final class Contours {

  private static final double PIXEL_MM = 0.5;

  /** Light that changes by less from pixel to pixel is even, a logarithm. */
  private static final double EVEN = 0.3;

  /** What lies as near is the same, pixels: 1 mm. */
  private static final int NEAR = 2;

  /** So near to the border of a scan nothing is held against another, mm. */
  private static final double BORDER_MM = 3;

  private final Lightness light;

  /** Where each change lies, mm. */
  private final List<Point> changes = new ArrayList<>();

  private final boolean[] near;

  private Contours(Lightness light) {
    this.light = light;
    near = new boolean[light.of().length];
    for (int y = 1; y < light.height() - 1; y++) {
      for (int x = 1; x < light.width() - 1; x++) {
        if (changes(x, y)) {
          changes.add(light.mm(x, y));
          for (int dy = Math.max(-NEAR, -y); dy <= Math.min(NEAR, light.height() - 1 - y); dy++) {
            for (int dx = Math.max(-NEAR, -x); dx <= Math.min(NEAR, light.width() - 1 - x); dx++) {
              near[(y + dy) * light.width() + x + dx] = true;
            }
          }
        }
      }
    }
  }

  static Contours of(View scan) {
    return new Contours(Lightness.of(scan, PIXEL_MM));
  }

  private boolean changes(int x, int y) {
    float least = Float.MAX_VALUE;
    float most = -Float.MAX_VALUE;
    for (int dy = -1; dy <= 1; dy++) {
      for (int dx = -1; dx <= 1; dx++) {
        float of = light.of()[(y + dy) * light.width() + x + dx];
        least = Math.min(least, of);
        most = Math.max(most, of);
      }
    }
    return most - least > EVEN;
  }

  /** Whether a place lies well within the scan, mm. */
  boolean shows(Point mm, double marginMm) {
    double x = mm.x() - light.first().x();
    double y = light.first().y() - mm.y();
    return Math.min(x, y) >= marginMm
        && x <= (light.width() - 1) * light.pixelMm() - marginMm
        && y <= (light.height() - 1) * light.pixelMm() - marginMm;
  }

  private boolean nearChange(Point mm) {
    int x = (int) Math.round((mm.x() - light.first().x()) / light.pixelMm());
    int y = (int) Math.round((light.first().y() - mm.y()) / light.pixelMm());
    return near[y * light.width() + x];
  }

  /**
   * What is seen again of the changes that two scans must both show.
   *
   * @param of how many there are
   */
  record Seen(int again, int of) {

    double share() {
      return of == 0 ? 1 : (double) again / of;
    }
  }

  /**
   * Holds the changes against those of another scan where both show the place.
   *
   * @param to brings this scan's places to the other's
   * @param which of them, by their places here
   */
  Seen in(Contours other, Motion to, Predicate<Point> which) {
    int of = 0;
    int again = 0;
    for (Point change : changes) {
      if (which.test(change) && shows(change, BORDER_MM)) {
        Point there = to.apply(change);
        if (other.shows(there, BORDER_MM)) {
          of++;
          again += other.nearChange(there) ? 1 : 0;
        }
      }
    }
    return new Seen(again, of);
  }
}
