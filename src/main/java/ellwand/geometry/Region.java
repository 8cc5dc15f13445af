package ellwand.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.InteriorPoint;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.distance.DistanceOp;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;
import org.locationtech.jts.operation.valid.IsSimpleOp;

/**
 * A part of the plane, perhaps with holes, perhaps in several parts, perhaps empty. Areas in mm².
 * Does not change, so that threads may share it.
 *
 * <p>Overlays move lines by up to a millionth of a mm. Distances and areas are as exact as doubles.
 */
public final class Region {

  /** The one factory: full double precision. */
  static final GeometryFactory FACTORY = new GeometryFactory();

  /**
   * Overlays snap to a millionth of a mm. Without it JTS 1.20 can take a difference of two outlines
   * that share a slanting line for the whole of the first.
   */
  static final PrecisionModel SNAPPED = new PrecisionModel(1e6);

  public static final Region EMPTY = new Region(FACTORY.createPolygon());

  /** How finely the widest place of a region is searched for, mm. */
  private static final double THICKNESS_STEP_MM = 0.01;

  /** How far a sharp corner may run out, in multiples of the widening. */
  private static final double MITRE_LIMIT = 2;

  private final Geometry geometry;

  private Region(Geometry geometry) {
    this.geometry = geometry;
  }

  public static Region of(Outline outline) {
    return new Region(polygon(outline, List.of()));
  }

  public static Region of(Box box) {
    return of(Outline.of(box));
  }

  public static Region union(Collection<Region> regions) {
    if (regions.isEmpty()) {
      return EMPTY;
    }
    return new Region(UnaryUnionNG.union(regions.stream().map(r -> r.geometry).toList(), SNAPPED));
  }

  /**
   * What a closed line encloses where it runs counter-clockwise round it once or more; the line may
   * cross itself.
   */
  public static Region enclosedBy(List<Point> line) {
    return new Region(Winding.positive(ring(line)));
  }

  static Polygon polygon(Outline shell, List<Outline> holes) {
    return FACTORY.createPolygon(
        ring(shell.points()), holes.stream().map(h -> ring(h.points())).toArray(LinearRing[]::new));
  }

  private static LinearRing ring(List<Point> points) {
    Coordinate[] coordinates = new Coordinate[points.size() + 1];
    for (int i = 0; i < points.size(); i++) {
      coordinates[i] = new Coordinate(points.get(i).x(), points.get(i).y());
    }
    coordinates[points.size()] = coordinates[0].copy();
    return FACTORY.createLinearRing(coordinates);
  }

  public Region intersect(Region other) {
    return overlay(other, OverlayNG.INTERSECTION);
  }

  public Region minus(Region other) {
    return overlay(other, OverlayNG.DIFFERENCE);
  }

  private Region overlay(Region other, int operation) {
    return new Region(OverlayNG.overlay(geometry, other.geometry, operation, SNAPPED));
  }

  /**
   * Widened all round by {@code mm} with round corners, or narrowed where it is negative. Corners
   * are drawn with 32 chords to a quarter, so that they fall short by up to 0.0003 of it.
   */
  public Region grown(double mm) {
    return new Region(geometry.buffer(mm, 32));
  }

  /**
   * Widened all round by at least {@code mm}, corners kept sharp where they are not too sharp: few
   * points, and never less than {@link #grown}.
   */
  public Region grownMitred(double mm) {
    BufferParameters mitred =
        new BufferParameters(
            1, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, MITRE_LIMIT);
    return new Region(BufferOp.bufferOp(geometry, mm, mitred));
  }

  public double area() {
    return geometry.getArea();
  }

  public boolean isEmpty() {
    return geometry.isEmpty() || geometry.getArea() == 0;
  }

  /** The exact smallest distance between the two, 0 where they touch or overlap, mm. */
  public double distance(Region other) {
    return geometry.distance(other.geometry);
  }

  /** Midway between the two where they are nearest each other. */
  public Point narrowest(Region other) {
    Coordinate[] ends = DistanceOp.nearestPoints(geometry, other.geometry);
    return new Point((ends[0].x + ends[1].x) / 2, (ends[0].y + ends[1].y) / 2);
  }

  public boolean contains(Point point) {
    return geometry.covers(FACTORY.createPoint(new Coordinate(point.x(), point.y())));
  }

  /** The smallest box round it; not for an empty region. */
  public Box box() {
    Envelope e = geometry.getEnvelopeInternal();
    return new Box(e.getMinX(), e.getMinY(), e.getMaxX(), e.getMaxY());
  }

  /** The diameter of the largest circle that fits in, to 0.02 mm; 0 for an empty region. */
  public double thickness() {
    return isEmpty() ? 0 : 2 * largestPart().map(Region::circleRadius).orElse(0.0);
  }

  /** The middle of the largest circle that fits in, to 0.5 mm: a good place for a name. */
  public Point middle() {
    org.locationtech.jts.geom.Point centre =
        new MaximumInscribedCircle(largestPart().orElseThrow(), 0.5).getCenter();
    return new Point(centre.getX(), centre.getY());
  }

  /** A place inside, found quickly; of a region that is not empty. */
  public Point somewhereInside() {
    Coordinate inside = InteriorPoint.getInteriorPoint(geometry);
    return new Point(inside.x, inside.y);
  }

  private static double circleRadius(Polygon part) {
    return new MaximumInscribedCircle(part, THICKNESS_STEP_MM).getRadiusLine().getLength();
  }

  private Optional<Polygon> largestPart() {
    return polygons().stream()
        .max((a, b) -> Double.compare(a.getArea(), b.getArea()))
        .filter(p -> p.getArea() > 0);
  }

  /** The outer lines of its parts. */
  public List<Outline> shells() {
    return polygons().stream().map(p -> outline(p.getExteriorRing())).toList();
  }

  /** The lines of all its holes. */
  public List<Outline> holes() {
    List<Outline> holes = new ArrayList<>();
    for (Polygon p : polygons()) {
      for (int i = 0; i < p.getNumInteriorRing(); i++) {
        holes.add(outline(p.getInteriorRingN(i)));
      }
    }
    return holes;
  }

  private List<Polygon> polygons() {
    List<Polygon> polygons = new ArrayList<>();
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      if (geometry.getGeometryN(i) instanceof Polygon p && !p.isEmpty()) {
        polygons.add(p);
      }
    }
    return polygons;
  }

  private static Outline outline(LinearRing ring) {
    return Outline.of(Arrays.stream(ring.getCoordinates()).map(c -> new Point(c.x, c.y)).toList());
  }

  /**
   * Whether lines and others are the same lines, both ways and all along, however they are cut up.
   *
   * @param mm how far apart they may run; told to a hundredth of it
   */
  public static boolean sameLines(List<List<Point>> lines, List<List<Point>> others, double mm) {
    if (lines.isEmpty() || others.isEmpty()) {
      return lines.isEmpty() && others.isEmpty();
    }
    Geometry one = lines(lines);
    Geometry other = lines(others);
    return one.buffer(mm).covers(other) && other.buffer(mm).covers(one);
  }

  private static Geometry lines(List<List<Point>> lines) {
    return FACTORY.createMultiLineString(
        lines.stream()
            .map(
                line ->
                    FACTORY.createLineString(
                        line.stream()
                            .map(p -> new Coordinate(p.x(), p.y()))
                            .toArray(Coordinate[]::new)))
            .toArray(LineString[]::new));
  }

  /** Where a closed line crosses or touches itself, if it does. */
  public static Optional<Point> crossing(List<Point> ring) {
    IsSimpleOp simple = new IsSimpleOp(ring(ring));
    if (simple.isSimple()) {
      return Optional.empty();
    }
    Coordinate at = simple.getNonSimpleLocation();
    return Optional.of(new Point(at.x, at.y));
  }
}
