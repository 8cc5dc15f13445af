package ellwand.desk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.app.TableRun;
import ellwand.cloth.Cloth;
import ellwand.cutting.CutPiece;
import ellwand.file.source.Json;
import ellwand.geometry.Point;
import ellwand.job.Job;
import ellwand.pattern.Edge;
import ellwand.pattern.Making;
import ellwand.pattern.Outlined;
import ellwand.pattern.Piece;
import ellwand.pattern.Workpiece;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The pieces of a job as a page draws them: mm, x along the grain, y up. */
final class PiecesJson {

  private static final double FLATTENING_MM = 0.1;

  private PiecesJson() {}

  /** Every size, and how many garments of it are wanted. */
  static ArrayNode sizes(Job job) {
    ArrayNode sizes = Json.object().arrayNode();
    for (String size : job.style().sizes()) {
      sizes.addObject().put("name", size).put("garments", job.garments().getOrDefault(size, 0));
    }
    return sizes;
  }

  /**
   * Each piece once, as cut from the first cloth that it needs, and those that others are only made
   * from.
   */
  static ObjectNode of(Job job, String size) {
    Map<String, ObjectNode> pieces = new LinkedHashMap<>();
    for (Cloth cloth : job.cloths()) {
      for (CutPiece cut : TableRun.pattern(job, size, cloth)) {
        ArrayNode cuts = pieces.computeIfAbsent(cut.name(), n -> piece(job, cut)).withArray("cut");
        cut.piece()
            .cutFrom(cloth.name())
            .ifPresent(
                how -> cuts.addObject().put("cloth", cloth.name()).put("how", how.toString()));
      }
    }
    for (Piece piece : job.style().pieces(size)) {
      if (piece.cuts().isEmpty()) {
        pieces.put(piece.name(), piece(job, piece));
      }
    }
    drawn(job, size, pieces);
    ObjectNode json = Json.object();
    json.put("size", size);
    json.putArray("pieces").addAll(pieces.values());
    return json;
  }

  private static ObjectNode piece(Job job, CutPiece cut) {
    ObjectNode json = piece(job, cut.piece());
    json.set("cutting", TableJson.points(cut.cutting()));
    ArrayNode notches = json.withArray("notches");
    for (CutPiece.Stroke notch : cut.notches()) {
      notches.add(TableJson.points(List.of(notch.from(), notch.to())));
    }
    json.putArray("lines");
    cut.innerLines().forEach(line -> json.withArray("lines").add(TableJson.points(line.points())));
    return json;
  }

  private static ObjectNode piece(Job job, Piece piece) {
    ObjectNode json = Json.object();
    json.put("name", piece.name());
    json.put("grain", piece.grain().word());
    piece.fold().ifPresent(fold -> json.put("fold", fold));
    json.putArray("cut");
    json.putArray("notches");
    ArrayNode lines = json.putArray("lines");
    piece
        .innerLines()
        .forEach(line -> lines.add(TableJson.points(line.line().flattened(FLATTENING_MM))));
    Unit unit = fine(job.unit());
    ArrayNode edges = json.putArray("edges");
    for (Edge edge : piece.edges()) {
      ObjectNode one = edges.addObject();
      one.put("name", edge.name());
      one.put("length", new Length(edge.sewnMm()).show(unit));
      one.put("allowance", new Length(edge.allowanceMm()).show(unit));
      one.put("turnedBack", edge.turnedBack());
      one.put("named", true);
      one.set("line", TableJson.points(edge.line().flattened(FLATTENING_MM)));
    }
    return json;
  }

  /** Metres and yards are too coarse for what is read off a tape. */
  static Unit fine(Unit unit) {
    return unit == Unit.M ? Unit.CM : unit == Unit.YARD ? Unit.INCH : unit;
  }

  /** What is known of pieces with an outline besides: points, what was altered, edges as drawn. */
  private static void drawn(Job job, String size, Map<String, ObjectNode> pieces) {
    Making making = job.style().design().making(size);
    for (Outlined piece : job.style().design().outlined()) {
      ObjectNode json = pieces.get(piece.name());
      if (json == null) {
        continue;
      }
      Workpiece work = making.piece(piece.name());
      ArrayNode points = json.putArray("points");
      work.marks().forEach((name, at) -> points.addObject().put("name", name).setAll(place(at)));
      ArrayNode altered = json.putArray("altered");
      piece.alter().forEach(step -> altered.add(step.alteration().words(job.unit())));
      if (!piece.alter().isEmpty()) {
        List<Point> before = new ArrayList<>();
        making.stages(piece).get(0).edges().stream()
            .flatMap(edge -> edge.line().flattened(FLATTENING_MM).stream())
            .forEach(before::add);
        json.set("before", TableJson.points(before));
      }
      for (JsonNode edge : json.path("edges")) {
        String name = edge.path("name").asText();
        boolean backwards =
            work.edges().stream().anyMatch(e -> e.name().equals(name) && e.backwards());
        ((ObjectNode) edge).put("backwards", backwards);
        ((ObjectNode) edge).put("named", named(piece, name));
      }
    }
  }

  private static ObjectNode place(Point at) {
    ObjectNode json = Json.object();
    json.set("x", Json.number(at.x()));
    json.set("y", Json.number(at.y()));
    return json;
  }

  /** Whether the file can say something of an edge: one that is called after its ends has none. */
  private static boolean named(Outlined piece, String edge) {
    return piece
        .start()
        .draft()
        .map(
            draft ->
                !piece.alter().isEmpty()
                    || draft.namedEdges().stream().anyMatch(e -> e.name().equals(edge)))
        .orElse(true);
  }
}
