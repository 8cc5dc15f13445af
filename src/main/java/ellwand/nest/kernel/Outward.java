package ellwand.nest.kernel;

import java.util.ArrayList;
import java.util.List;

/**
 * Thins an outline by adding area only, so that what is legal for the thinned one is legal for the
 * true one: a hollow is filled by its chord, a short side is removed by lengthening its neighbours.
 */
final class Outward {

  private record Corner(double x, double y, double strayed) {}

  private final List<Corner> ring = new ArrayList<>();
  private final double bound;

  private Outward(double[] outline, double bound) {
    this.bound = bound;
    for (int i = 0; i < outline.length; i += 2) {
      ring.add(new Corner(outline[i], outline[i + 1], 0));
    }
  }

  /**
   * @param outline counter-clockwise and without crossings
   * @param bound no added point is farther than this from the true outline
   * @param few outlines up to so many points are left as they are
   */
  static double[] thinned(double[] outline, double bound, int few) {
    Outward outward = new Outward(outline, bound);
    while (outward.ring.size() > few && outward.step()) {
      // each step takes one corner away
    }
    double[] thinned = new double[outward.ring.size() * 2];
    for (int i = 0; i < outward.ring.size(); i++) {
      thinned[2 * i] = outward.ring.get(i).x;
      thinned[2 * i + 1] = outward.ring.get(i).y;
    }
    return thinned;
  }

  /** Takes away the corner that adds the least area; false when none may go. */
  private boolean step() {
    double least = Double.POSITIVE_INFINITY;
    double strays = 0;
    int at = -1;
    Corner replacement = null;
    for (int i = 0; i < ring.size(); i++) {
      Corner a = corner(i - 1);
      Corner b = corner(i);
      Corner c = corner(i + 1);
      double bend = cross(a, b, c);
      if (bend <= 0) {
        double added = -bend;
        double strayed =
            Math.max(b.strayed, Math.max(a.strayed, c.strayed))
                + added / Math.hypot(c.x - a.x, c.y - a.y);
        if (added < least && strayed <= bound && open(a, b, c, i)) {
          least = added;
          strays = strayed;
          at = i;
          replacement = null;
        }
      } else {
        Corner tip = tip(a, b, c, corner(i + 2));
        if (tip != null && cross(b, tip, c) < least && clear(b, tip, c, i + 2, i - 1)) {
          least = cross(b, tip, c);
          at = i;
          replacement = tip;
        }
      }
    }
    if (at < 0) {
      return false;
    }
    if (replacement != null) {
      ring.set((at + 1) % ring.size(), replacement);
    } else {
      stray(Math.floorMod(at - 1, ring.size()), strays);
      stray((at + 1) % ring.size(), strays);
    }
    ring.remove(at);
    return true;
  }

  /** The side that begins or ends here is so far from the true outline. */
  private void stray(int i, double strayed) {
    Corner c = ring.get(i);
    ring.set(i, new Corner(c.x, c.y, Math.max(c.strayed, strayed)));
  }

  /** Where the sides before b and after c meet when lengthened; null if too far or never. */
  private Corner tip(Corner a, Corner b, Corner c, Corner d) {
    double ux = b.x - a.x;
    double uy = b.y - a.y;
    double vx = c.x - d.x;
    double vy = c.y - d.y;
    double sine = vx * uy - vy * ux;
    if (cross(b, c, d) <= 0 || sine <= 0) {
      return null;
    }
    double along = (vx * (c.y - b.y) - vy * (c.x - b.x)) / sine;
    if (!(along > 0)) {
      return null;
    }
    // Counted from b: where the sides are nearly parallel the tip is too far off for its own place.
    double fromX = along * ux;
    double fromY = along * uy;
    double side = Math.hypot(c.x - b.x, c.y - b.y);
    double foot = (fromX * (c.x - b.x) + fromY * (c.y - b.y)) / side;
    double past = Math.max(0, Math.max(-foot, foot - side));
    double high = Math.hypot(past, (fromX * (c.y - b.y) - fromY * (c.x - b.x)) / side);
    double strayed = Math.max(b.strayed, c.strayed) + high;
    return strayed <= bound ? new Corner(b.x + fromX, b.y + fromY, strayed) : null;
  }

  /** Whether the hollow at corner i can be filled without meeting another side. */
  private boolean open(Corner a, Corner b, Corner c, int i) {
    return clear(a, b, c, i + 2, i - 2)
        && !holds(a, b, c, corner(i + 2))
        && !holds(a, b, c, corner(i - 2));
  }

  private static boolean holds(Corner a, Corner b, Corner c, Corner p) {
    return cross(a, b, p) <= 0 && cross(b, c, p) <= 0 && cross(c, a, p) <= 0;
  }

  /** Whether the sides that begin at corners from first to before last keep off the triangle. */
  private boolean clear(Corner a, Corner b, Corner c, int first, int last) {
    double minX = Math.min(a.x, Math.min(b.x, c.x));
    double maxX = Math.max(a.x, Math.max(b.x, c.x));
    double minY = Math.min(a.y, Math.min(b.y, c.y));
    double maxY = Math.max(a.y, Math.max(b.y, c.y));
    for (int k = first; k < last + ring.size(); k++) {
      Corner p = corner(k);
      Corner q = corner(k + 1);
      boolean apart =
          Math.max(p.x, q.x) < minX
              || Math.min(p.x, q.x) > maxX
              || Math.max(p.y, q.y) < minY
              || Math.min(p.y, q.y) > maxY;
      if (!apart) {
        return false;
      }
    }
    return true;
  }

  private Corner corner(int i) {
    return ring.get(Math.floorMod(i, ring.size()));
  }

  /** Twice the area of the triangle, positive when it bends to the left. */
  private static double cross(Corner a, Corner b, Corner c) {
    return (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
  }
}
