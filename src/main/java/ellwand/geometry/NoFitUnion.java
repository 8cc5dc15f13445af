package ellwand.geometry;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/**
 * No-fit polygons as unions of the Minkowski sums of convex parts.
 *
 * <p>Points are snapped to a grid of about 2e-10 of the shapes' size, so the border is that exact.
 */
public final class NoFitUnion {

  private NoFitUnion() {}

  /**
   * Where {@code moving} overlaps {@code still}, by the place of its origin.
   *
   * @param still x0, y0, x1, y1, ... counter-clockwise, without crossings
   * @param moving the same
   * @return rings with the overlap on their left
   */
  public static List<double[]> rings(double[] still, double[] moving) {
    double[] turned = new double[moving.length];
    for (int i = 0; i < moving.length; i++) {
      turned[i] = -moving[i];
    }
    double size = 0;
    for (double c : still) {
      size = Math.max(size, Math.abs(c));
    }
    for (double c : moving) {
      size = Math.max(size, Math.abs(c));
    }
    double scale = Math.scalb(1.0, 32 - Math.getExponent(size));
    GeometryFactory factory = new GeometryFactory(new PrecisionModel(scale));
    List<Polygon> sums = new ArrayList<>();
    List<double[]> others = ConvexParts.of(turned);
    for (double[] a : ConvexParts.of(still)) {
      for (double[] b : others) {
        sums.add(polygon(factory, sum(a, b)));
      }
    }
    Geometry union = UnaryUnionNG.union(factory.buildGeometry(sums), factory.getPrecisionModel());
    List<double[]> rings = new ArrayList<>();
    for (int i = 0; i < union.getNumGeometries(); i++) {
      Polygon polygon = (Polygon) union.getGeometryN(i);
      add(rings, polygon.getExteriorRing(), true, 4 / scale);
      for (int k = 0; k < polygon.getNumInteriorRing(); k++) {
        add(rings, polygon.getInteriorRingN(k), false, 4 / scale);
      }
    }
    return rings;
  }

  /** The Minkowski sum of two convex rings: their sides in the order of their directions. */
  private static double[] sum(double[] a, double[] b) {
    int n = a.length / 2;
    int m = b.length / 2;
    int i = lowest(a);
    int k = lowest(b);
    double[] sum = new double[2 * (n + m)];
    int taken = 0;
    for (int s = 0, t = 0; s < n || t < m; ) {
      sum[taken++] = a[2 * i] + b[2 * k];
      sum[taken++] = a[2 * i + 1] + b[2 * k + 1];
      int ni = (i + 1) % n;
      int nk = (k + 1) % m;
      double turn =
          (a[2 * ni] - a[2 * i]) * (b[2 * nk + 1] - b[2 * k + 1])
              - (a[2 * ni + 1] - a[2 * i + 1]) * (b[2 * nk] - b[2 * k]);
      if (t == m || s < n && turn >= 0) {
        i = ni;
        s++;
      } else {
        k = nk;
        t++;
      }
    }
    return sum;
  }

  private static int lowest(double[] ring) {
    int lowest = 0;
    for (int i = 1; i < ring.length / 2; i++) {
      double dy = ring[2 * i + 1] - ring[2 * lowest + 1];
      if (dy < 0 || dy == 0 && ring[2 * i] < ring[2 * lowest]) {
        lowest = i;
      }
    }
    return lowest;
  }

  private static Polygon polygon(GeometryFactory factory, double[] ring) {
    Coordinate[] points = new Coordinate[ring.length / 2 + 1];
    for (int i = 0; i < points.length - 1; i++) {
      points[i] = new Coordinate(ring[2 * i], ring[2 * i + 1]);
    }
    points[points.length - 1] = points[0].copy();
    return factory.createPolygon(points);
  }

  /** Adds a ring without its straight corners, turned the right way; slivers are left out. */
  private static void add(List<double[]> rings, LinearRing ring, boolean border, double grid) {
    List<Coordinate> points = new ArrayList<>(List.of(ring.getCoordinates()));
    points.remove(points.size() - 1);
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
    rings.add(twice > 0 == border ? flat : reversed(flat));
  }

  private static double[] reversed(double[] ring) {
    double[] back = new double[ring.length];
    for (int i = 0; i < ring.length; i += 2) {
      back[i] = ring[ring.length - 2 - i];
      back[i + 1] = ring[ring.length - 1 - i];
    }
    return back;
  }
}
