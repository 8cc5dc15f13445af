package ellwand.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snapround.SnapRoundingNoder;

/**
 * No-fit polygons: the union of all places at which one outline overlaps another, as what the
 * convolution of the two winds about.
 *
 * <p>Points are snapped to a grid of about 2e-10 of the shapes' size, so the border is that exact.
 */
public final class NoFitUnion {

  private NoFitUnion() {}

  /**
   * Where {@code moving} overlaps {@code still}, by the place of its origin.
   *
   * @param still x0, y0, x1, y1, ... counter-clockwise, without crossings; a point may stand twice
   * @param moving the same
   * @return rings with the overlap on their left
   */
  public static List<double[]> rings(double[] still, double[] moving) {
    double size = 0;
    for (double c : still) {
      size = Math.max(size, Math.abs(c));
    }
    for (double c : moving) {
      size = Math.max(size, Math.abs(c));
    }
    double grid = Math.scalb(1.0, Math.getExponent(size) - 32);
    double[] turned = withoutRepeats(moving, grid);
    for (int i = 0; i < turned.length; i++) {
      turned[i] = -turned[i];
    }
    WoundPlane plane = new WoundPlane();
    for (Object noded : noded(Convolution.of(withoutRepeats(still, grid), turned), grid)) {
      SegmentString string = (SegmentString) noded;
      int times = (Boolean) string.getData() ? 1 : -1;
      for (int i = 1; i < string.size(); i++) {
        plane.add(string.getCoordinate(i - 1), string.getCoordinate(i), times);
      }
    }
    List<double[]> rings = new ArrayList<>();
    for (List<Coordinate> border : plane.borders()) {
      add(rings, border, 4 * grid);
    }
    return rings;
  }

  /** A side of no length has no direction, so the convolution would not close there. */
  private static double[] withoutRepeats(double[] ring, double grid) {
    double[] kept = new double[ring.length];
    int n = 0;
    for (int i = 0; i < ring.length; i += 2) {
      int next = (i + 2) % ring.length;
      if (Math.hypot(ring[next] - ring[i], ring[next + 1] - ring[i + 1]) > grid) {
        kept[n++] = ring[i];
        kept[n++] = ring[i + 1];
      }
    }
    return Arrays.copyOf(kept, n);
  }

  private static Collection<?> noded(List<Convolution.Stretch> stretches, double grid) {
    List<SegmentString> strings = new ArrayList<>();
    for (Convolution.Stretch s : stretches) {
      Coordinate from = new Coordinate(s.fromX(), s.fromY());
      Coordinate to = new Coordinate(s.toX(), s.toY());
      strings.add(new NodedSegmentString(new Coordinate[] {from, to}, s.forward()));
    }
    SnapRoundingNoder noder = new SnapRoundingNoder(new PrecisionModel(1 / grid));
    noder.computeNodes(strings);
    return noder.getNodedSubstrings();
  }

  /** Adds a border without its straight corners; slivers are left out. */
  private static void add(List<double[]> rings, List<Coordinate> border, double grid) {
    List<Coordinate> points = new ArrayList<>(border);
    for (int i = 0; i < points.size() && points.size() > 3; ) {
      Coordinate a = points.get((i + points.size() - 1) % points.size());
      Coordinate b = points.get(i);
      Coordinate c = points.get((i + 1) % points.size());
      double away = Math.abs((c.x - a.x) * (b.y - a.y) - (c.y - a.y) * (b.x - a.x)) / a.distance(c);
      boolean between = (b.x - a.x) * (c.x - b.x) + (b.y - a.y) * (c.y - b.y) >= 0;
      if (away <= grid && between) {
        points.remove(i);
      } else {
        i++;
      }
    }
    double[] flat = new double[points.size() * 2];
    double twice = 0;
    double round = 0;
    for (int i = 0; i < points.size(); i++) {
      Coordinate a = points.get(i);
      Coordinate b = points.get((i + 1) % points.size());
      flat[2 * i] = a.x;
      flat[2 * i + 1] = a.y;
      twice += (a.x - points.get(0).x) * (b.y - a.y) - (a.y - points.get(0).y) * (b.x - a.x);
      round += a.distance(b);
    }
    if (Math.abs(twice) <= 64 * grid * round) {
      return;
    }
    rings.add(flat);
  }
}
