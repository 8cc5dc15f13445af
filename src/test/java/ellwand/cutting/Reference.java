package ellwand.cutting;

import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.pattern.Edge;
import ellwand.pattern.Piece;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** Outlines made by general-purpose libraries, to compare ours with. */
final class Reference {

  private static final double FINE_MM = 1e-3;
  private static final double NEAR_END = 1e-3;
  private static final GeometryFactory JTS = new GeometryFactory();

  private Reference() {}

  /** Points of the finely flattened sewing line, closest at the ends of its curves. */
  private static List<Point> sewing(Piece piece) {
    List<Point> ring = new ArrayList<>();
    for (Edge edge : piece.edges()) {
      for (Segment segment : edge.line().segments()) {
        // The first and last chords must have the direction in which mitres run on.
        for (Segment part :
            List.of(
                segment.between(0, NEAR_END),
                segment.between(NEAR_END, 1 - NEAR_END),
                segment.between(1 - NEAR_END, 1))) {
          ring.add(part.start());
          part.flattenInto(ring, FINE_MM);
          ring.remove(ring.size() - 1);
        }
      }
    }
    return ring;
  }

  /** The JTS buffer with mitred corners. */
  static List<Outline> jts(Piece piece, double mm) {
    List<Point> ring = new ArrayList<>(sewing(piece));
    ring.add(ring.get(0));
    Geometry polygon =
        JTS.createPolygon(
            ring.stream().map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new));
    BufferParameters mitred =
        new BufferParameters(
            8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, Cutter.MITRE_LIMIT);
    mitred.setSimplifyFactor(1e-5);
    Geometry buffer = BufferOp.bufferOp(polygon, mm, mitred);
    List<Outline> rings = new ArrayList<>();
    Geometry lines = buffer.getBoundary();
    for (int i = 0; i < lines.getNumGeometries(); i++) {
      rings.add(
          Outline.of(
              Arrays.stream(lines.getGeometryN(i).getCoordinates())
                  .map(c -> new Point(c.x, c.y))
                  .toList()));
    }
    return rings;
  }

  /** The area of the JDK's stroke along the sewing line, and what it encloses. */
  static List<Outline> awt(Piece piece, double mm) {
    Path2D path = new Path2D.Double();
    List<Point> ring = sewing(piece);
    path.moveTo(ring.get(0).x(), ring.get(0).y());
    ring.subList(1, ring.size()).forEach(p -> path.lineTo(p.x(), p.y()));
    path.closePath();
    Area area =
        new Area(
            new BasicStroke((float) (2 * mm), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10)
                .createStrokedShape(path));
    area.add(new Area(path));
    return rings(area);
  }

  private static List<Outline> rings(Shape shape) {
    List<Outline> rings = new ArrayList<>();
    List<Point> points = new ArrayList<>();
    double[] c = new double[6];
    for (PathIterator i = shape.getPathIterator(null, FINE_MM); !i.isDone(); i.next()) {
      int kind = i.currentSegment(c);
      if (kind == PathIterator.SEG_CLOSE) {
        // The JDK leaves specks behind where stretches of the stroke overlap.
        if (Math.abs(area(points)) > 1e-3) {
          rings.add(Outline.of(points));
        }
        points.clear();
      } else {
        points.add(new Point(c[0], c[1]));
      }
    }
    return rings;
  }

  private static double area(List<Point> ring) {
    double twice = 0;
    for (int i = 0; i < ring.size(); i++) {
      twice += ring.get(i).cross(ring.get((i + 1) % ring.size()));
    }
    return twice / 2;
  }

  /** The greatest distance of any place on either lines from the other lines, mm (Hausdorff). */
  static double apart(List<Outline> a, List<Outline> b) {
    return Math.max(oneWay(a, b), oneWay(b, a));
  }

  /** The greatest distance of any place on the first lines from the others, mm. */
  static double oneWay(List<Outline> from, List<Outline> to) {
    double most = 0;
    for (Outline line : from) {
      List<Point> points = line.points();
      for (int i = 0; i < points.size(); i++) {
        Point a = points.get(i);
        Point b = points.get((i + 1) % points.size());
        int steps = (int) Math.ceil(a.distance(b) / 2);
        for (int k = 0; k <= steps; k++) {
          Point p = a.towards(b, steps == 0 ? 0 : (double) k / steps);
          most = Math.max(most, to.stream().mapToDouble(o -> o.distance(p)).min().orElseThrow());
        }
      }
    }
    return most;
  }
}
