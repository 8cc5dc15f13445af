package ellwand.geometry;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/** What a closed line that crosses itself encloses. */
final class Winding {

  private Winding() {}

  /** The part of the plane round which the line runs counter-clockwise once or more. */
  static Geometry positive(Geometry ring) {
    Polygonizer faces = new Polygonizer();
    faces.add(UnaryUnionNG.union(ring, Region.SNAPPED));
    List<Geometry> inside = new ArrayList<>();
    @SuppressWarnings("unchecked")
    Collection<Polygon> polygons = faces.getPolygons();
    for (Polygon face : polygons) {
      if (turns(ring.getCoordinates(), face.getInteriorPoint().getCoordinate()) > 0) {
        inside.add(face.norm());
      }
    }
    // The library finds them, and where each begins, by hashes that differ from run to run.
    Collections.sort(inside);
    return UnaryUnionNG.union(inside, Region.SNAPPED);
  }

  /** How many times the line runs counter-clockwise round the place. */
  private static int turns(Coordinate[] line, Coordinate place) {
    int turns = 0;
    for (int i = 1; i < line.length; i++) {
      Coordinate a = line[i - 1];
      Coordinate b = line[i];
      boolean up = a.y <= place.y && b.y > place.y;
      boolean down = a.y > place.y && b.y <= place.y;
      double side = (b.x - a.x) * (place.y - a.y) - (place.x - a.x) * (b.y - a.y);
      if (up && side > 0) {
        turns++;
      } else if (down && side < 0) {
        turns--;
      }
    }
    return turns;
  }
}
