package ellwand.geometry;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.triangulate.polygon.ConstrainedDelaunayTriangulator;

/**
 * Cuts an outline into convex parts: triangles, joined again across every side that may go (Hertel
 * and Mehlhorn 1983, at most four times the fewest parts).
 */
public final class ConvexParts {

  private ConvexParts() {}

  /**
   * Convex parts that do not overlap and together are what the ring encloses.
   *
   * @param ring x0, y0, x1, y1, ... counter-clockwise, without crossings
   * @return the same way
   */
  public static List<double[]> of(double[] ring) {
    GeometryFactory factory = new GeometryFactory();
    Coordinate[] points = new Coordinate[ring.length / 2 + 1];
    Map<Coordinate, Integer> index = new HashMap<>();
    for (int i = 0; i < points.length - 1; i++) {
      points[i] = new Coordinate(ring[2 * i], ring[2 * i + 1]);
      index.put(points[i], i);
    }
    points[points.length - 1] = points[0];
    Geometry triangles = ConstrainedDelaunayTriangulator.triangulate(factory.createPolygon(points));
    List<List<Integer>> parts = new ArrayList<>();
    for (int i = 0; i < triangles.getNumGeometries(); i++) {
      Coordinate[] t = triangles.getGeometryN(i).getCoordinates();
      int a = index.get(t[0]);
      int b = index.get(t[1]);
      int c = index.get(t[2]);
      double bend = bend(ring, a, b, c);
      if (bend != 0) {
        parts.add(bend > 0 ? List.of(a, b, c) : List.of(a, c, b));
      }
    }
    joinAll(ring, parts);
    return parts.stream().map(part -> flat(ring, part)).toList();
  }

  private static void joinAll(double[] ring, List<List<Integer>> parts) {
    for (int i = 0; i < parts.size(); i++) {
      for (int k = i + 1; k < parts.size(); k++) {
        List<Integer> joined = joined(ring, parts.get(i), parts.get(k));
        if (joined != null) {
          parts.set(i, joined);
          parts.remove(k);
          k = i;
        }
      }
    }
  }

  /** The two in one, or null if they share no side or would not be convex. */
  private static List<Integer> joined(double[] ring, List<Integer> p, List<Integer> q) {
    for (int i = 0; i < p.size(); i++) {
      int a = p.get(i);
      int b = p.get((i + 1) % p.size());
      int at = q.indexOf(b);
      if (at >= 0 && q.get((at + 1) % q.size()) == a) {
        List<Integer> joined = new ArrayList<>();
        for (int k = 1; k <= p.size(); k++) {
          joined.add(p.get((i + k) % p.size()));
        }
        for (int k = 2; k < q.size(); k++) {
          joined.add(q.get((at + k) % q.size()));
        }
        return convex(ring, joined) ? joined : null;
      }
    }
    return null;
  }

  private static boolean convex(double[] ring, List<Integer> part) {
    int n = part.size();
    for (int i = 0; i < n; i++) {
      if (bend(ring, part.get(i), part.get((i + 1) % n), part.get((i + 2) % n)) < 0) {
        return false;
      }
    }
    return true;
  }

  private static double bend(double[] r, int a, int b, int c) {
    return (r[2 * b] - r[2 * a]) * (r[2 * c + 1] - r[2 * b + 1])
        - (r[2 * b + 1] - r[2 * a + 1]) * (r[2 * c] - r[2 * b]);
  }

  private static double[] flat(double[] ring, List<Integer> part) {
    double[] flat = new double[2 * part.size()];
    for (int i = 0; i < part.size(); i++) {
      flat[2 * i] = ring[2 * part.get(i)];
      flat[2 * i + 1] = ring[2 * part.get(i) + 1];
    }
    return flat;
  }
}
