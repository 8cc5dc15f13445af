package ellwand.trial;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.linearref.LengthIndexedLine;

/** A piece as its job draws it: sewing line and places on it, mm. */
record Drawing(JsonNode piece, List<Coordinate> points, List<String> names, boolean curved) {

  private static final int PARTS = 64;

  static Drawing of(JsonNode piece) {
    List<Coordinate> points = new ArrayList<>();
    List<String> names = new ArrayList<>();
    boolean curved = false;
    Coordinate before = place(piece.get("outline").get(piece.get("outline").size() - 1).get("at"));
    for (JsonNode at : piece.get("outline")) {
      Coordinate here = place(at.get("at"));
      if (at.has("curve")) {
        curved = true;
        Coordinate first = place(at.get("curve").get(0));
        Coordinate second = place(at.get("curve").get(1));
        for (int i = 1; i < PARTS; i++) {
          points.add(cubic(before, first, second, here, i / (double) PARTS));
          names.add("");
        }
      }
      points.add(here);
      names.add(at.get("point").asText());
      before = here;
    }
    return new Drawing(piece, points, names, curved);
  }

  static Coordinate place(JsonNode at) {
    return new Coordinate(at.get(0).asDouble(), at.get(1).asDouble());
  }

  private static Coordinate cubic(
      Coordinate a, Coordinate b, Coordinate c, Coordinate d, double t) {
    double u = 1 - t;
    return new Coordinate(
        u * u * u * a.x + 3 * u * u * t * b.x + 3 * u * t * t * c.x + t * t * t * d.x,
        u * u * u * a.y + 3 * u * u * t * b.y + 3 * u * t * t * c.y + t * t * t * d.y);
  }

  Polygon sewing() {
    List<Coordinate> ring = new ArrayList<>(points);
    ring.add(points.get(0));
    return Laid.GEOMETRY.createPolygon(ring.toArray(new Coordinate[0]));
  }

  /** An edge from its first point on. */
  LineString edge(String name) {
    JsonNode edge = piece.get("edges").get(name);
    int from = names.indexOf(edge.get("from").asText());
    int to = names.indexOf(edge.get("to").asText());
    List<Coordinate> along = new ArrayList<>();
    for (int i = from; i != to; i = (i + 1) % points.size()) {
      along.add(points.get(i));
    }
    along.add(points.get(to));
    return Laid.GEOMETRY.createLineString(along.toArray(new Coordinate[0]));
  }

  /** The place that {@code edge @ 12} names. */
  Coordinate at(String words) {
    String[] parts = words.split(" @ ");
    return new LengthIndexedLine(edge(parts[0])).extractPoint(Double.parseDouble(parts[1]));
  }

  Optional<LineString> fold() {
    return piece.has("fold") ? Optional.of(edge(piece.get("fold").asText())) : Optional.empty();
  }

  /** Both halves of one that is cut on the fold. */
  Geometry opened() {
    LineString fold = fold().orElseThrow();
    Coordinate a = fold.getCoordinateN(0);
    Coordinate b = fold.getCoordinateN(fold.getNumPoints() - 1);
    return sewing()
        .union(AffineTransformation.reflectionInstance(a.x, a.y, b.x, b.y).transform(sewing()));
  }

  /** The widest allowance that it may have anywhere. */
  double widest(double usual) {
    double widest = piece.has("allowance") ? piece.get("allowance").asDouble() : usual;
    if (piece.has("edges")) {
      for (JsonNode edge : piece.get("edges")) {
        widest =
            edge.has("allowance") ? Math.max(widest, edge.get("allowance").asDouble()) : widest;
      }
    }
    return widest;
  }

  /** Places that tell one side of it from the other besides its outline. */
  List<Coordinate> signs() {
    List<Coordinate> signs = new ArrayList<>();
    for (JsonNode notch : piece.path("notches")) {
      signs.add(at(notch.get("edge").asText() + " @ " + notch.get("at").asText()));
    }
    for (JsonNode line : piece.path("lines")) {
      line.get("path").forEach(p -> signs.add(place(p)));
    }
    return signs;
  }
}
