package ellwand.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

  /** Corners that lie no farther off a straight line are left out, in grids. */
  private static final double STRAIGHT = 4;

  /** Rings no wider than half of that are left out, in grids. */
  private static final double SLIVER = 256;

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
    double[] turned = onGrid(moving, grid);
    for (int i = 0; i < turned.length; i++) {
      turned[i] = -turned[i];
    }
    List<Convolution.Stretch> line = Convolution.of(onGrid(still, grid), turned);
    WoundPlane plane = SnapRounding.plane(line);
    if (!plane.wound()) {
      plane = noded(line);
      plane.wound();
    }
    List<double[]> rings = new ArrayList<>();
    for (double[] border : plane.borders()) {
      add(rings, border, grid);
    }
    return rings;
  }

  /**
   * In whole numbers of the grid. A side of no length has no direction, so the convolution would
   * not close there.
   */
  private static double[] onGrid(double[] ring, double grid) {
    double[] kept = new double[ring.length];
    int n = 0;
    for (int i = 0; i < ring.length; i += 2) {
      double x = Math.rint(ring[i] / grid);
      double y = Math.rint(ring[i + 1] / grid);
      int next = (i + 2) % ring.length;
      if (x != Math.rint(ring[next] / grid) || y != Math.rint(ring[next + 1] / grid)) {
        kept[n++] = x;
        kept[n++] = y;
      }
    }
    return Arrays.copyOf(kept, n);
  }

  /** The same by JTS, for what is beyond our own rounding. */
  static WoundPlane noded(List<Convolution.Stretch> stretches) {
    List<SegmentString> strings = new ArrayList<>();
    for (Convolution.Stretch s : stretches) {
      Coordinate from = new Coordinate(s.fromX(), s.fromY());
      Coordinate to = new Coordinate(s.toX(), s.toY());
      strings.add(new NodedSegmentString(new Coordinate[] {from, to}, s.forward()));
    }
    SnapRoundingNoder noder = new SnapRoundingNoder(new PrecisionModel(1));
    noder.computeNodes(strings);
    Map<Coordinate, Integer> nodes = new LinkedHashMap<>();
    for (Object noded : noder.getNodedSubstrings()) {
      for (Coordinate at : ((SegmentString) noded).getCoordinates()) {
        nodes.putIfAbsent(at, nodes.size());
      }
    }
    WoundPlane plane =
        new WoundPlane(
            nodes.keySet().stream().mapToDouble(Coordinate::getX).toArray(),
            nodes.keySet().stream().mapToDouble(Coordinate::getY).toArray(),
            nodes.size());
    for (Object noded : noder.getNodedSubstrings()) {
      SegmentString string = (SegmentString) noded;
      int times = (Boolean) string.getData() ? 1 : -1;
      for (int i = 1; i < string.size(); i++) {
        int from = nodes.get(string.getCoordinate(i - 1));
        int to = nodes.get(string.getCoordinate(i));
        if (from != to) {
          plane.add(from, to, times);
        }
      }
    }
    return plane;
  }

  /**
   * Adds a border without its straight corners; slivers are left out.
   *
   * @param border in whole numbers of the grid
   */
  private static void add(List<double[]> rings, double[] border, double grid) {
    int n = border.length / 2;
    double[] kept = border.clone();
    for (int i = 0; i < n && n > 3; ) {
      int a = 2 * ((i + n - 1) % n);
      int b = 2 * i;
      int c = 2 * ((i + 1) % n);
      double ux = kept[c] - kept[a];
      double uy = kept[c + 1] - kept[a + 1];
      double inX = kept[b] - kept[a];
      double inY = kept[b + 1] - kept[a + 1];
      double away = Math.abs(ux * inY - uy * inX) / Math.sqrt(ux * ux + uy * uy);
      if (away <= STRAIGHT && inX * (ux - inX) + inY * (uy - inY) >= 0) {
        System.arraycopy(kept, b + 2, kept, b, 2 * (n - i - 1));
        n--;
      } else {
        i++;
      }
    }
    double twice = 0;
    double round = 0;
    for (int i = 0; i < 2 * n; i += 2) {
      int k = (i + 2) % (2 * n);
      double ax = kept[i] - kept[0];
      double ay = kept[i + 1] - kept[1];
      double dx = kept[k] - kept[i];
      double dy = kept[k + 1] - kept[i + 1];
      twice += ax * dy - ay * dx;
      round += Math.sqrt(dx * dx + dy * dy);
    }
    if (Math.abs(twice) > SLIVER * round) {
      double[] ring = new double[2 * n];
      Arrays.setAll(ring, i -> kept[i] * grid);
      rings.add(ring);
    }
  }
}
