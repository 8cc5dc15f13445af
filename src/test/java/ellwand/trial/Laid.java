package ellwand.trial;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.linearref.LengthIndexedLine;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/**
 * A copy as it stands in a marker's file.
 *
 * @param secondGarment that gets the other ply, where two garments share a copy
 */
record Laid(
    String piece,
    String size,
    int garment,
    OptionalInt secondGarment,
    String form,
    String zone,
    double turn,
    boolean flipped,
    AffineTransformation motion,
    Polygon outline) {

  static final GeometryFactory GEOMETRY = new GeometryFactory();

  static Laid of(JsonNode copy) {
    double turn = copy.get("turn").asDouble();
    boolean flipped = copy.get("flipped").asBoolean();
    AffineTransformation motion = AffineTransformation.scaleInstance(1, flipped ? -1 : 1);
    motion.rotate(Math.toRadians(turn));
    motion.translate(copy.get("x").asDouble(), copy.get("y").asDouble());
    return new Laid(
        copy.get("piece").asText(),
        copy.get("size").asText(),
        copy.get("garment").asInt(),
        copy.has("secondGarment")
            ? OptionalInt.of(copy.get("secondGarment").asInt())
            : OptionalInt.empty(),
        copy.get("form").asText(),
        copy.get("zone").asText(),
        turn,
        flipped,
        motion,
        polygon(copy.get("outline")));
  }

  static Polygon polygon(JsonNode points) {
    Coordinate[] ring = new Coordinate[points.size() + 1];
    for (int i = 0; i < ring.length; i++) {
      JsonNode point = points.get(i % points.size());
      ring[i] = new Coordinate(point.get(0).asDouble(), point.get(1).asDouble());
    }
    return GEOMETRY.createPolygon(ring);
  }

  /** Its outline as the piece is drawn. */
  Polygon drawn() {
    try {
      return (Polygon) motion.getInverse().transform(outline);
    } catch (org.locationtech.jts.geom.util.NoninvertibleTransformationException e) {
      throw new AssertionError(e);
    }
  }

  Coordinate at(Coordinate drawn) {
    return motion.transform(drawn, new Coordinate());
  }

  /** 1 where its drawn x axis points along the cloth, away from the cut end; else -1. */
  int up() {
    return Math.cos(Math.toRadians(turn)) >= 0 ? 1 : -1;
  }

  /** Garments that get of it, with their size. */
  List<String> garments() {
    return secondGarment.isPresent()
        ? List.of(size + " " + garment, size + " " + secondGarment.getAsInt())
        : List.of(size + " " + garment);
  }

  @Override
  public String toString() {
    return piece + " of garment " + garment + " (" + size + ")";
  }

  /** The zone of its marker in which it lies. */
  Optional<JsonNode> zoneOf(JsonNode marker) {
    for (JsonNode its : marker.get("zones")) {
      if (its.get("id").asText().equals(zone)) {
        return Optional.of(its);
      }
    }
    return Optional.empty();
  }

  /** How far a place on the one line is from the other line at the most, either way, mm. */
  static double farthest(Polygon a, Polygon b) {
    return Math.max(farthestFrom(a, b), farthestFrom(b, a));
  }

  private static double farthestFrom(Polygon a, Polygon b) {
    IndexedFacetDistance other = new IndexedFacetDistance(b.getExteriorRing());
    LengthIndexedLine line = new LengthIndexedLine(a.getExteriorRing());
    double worst = 0;
    for (Coordinate corner : a.getCoordinates()) {
      worst = Math.max(worst, other.distance(GEOMETRY.createPoint(corner)));
    }
    for (int i = 0; i < 200; i++) {
      Coordinate at = line.extractPoint(line.getEndIndex() * i / 200);
      worst = Math.max(worst, other.distance(GEOMETRY.createPoint(at)));
    }
    return worst;
  }
}
