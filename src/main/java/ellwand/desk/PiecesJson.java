package ellwand.desk;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.app.TableRun;
import ellwand.cloth.Cloth;
import ellwand.cutting.CutPiece;
import ellwand.file.source.Json;
import ellwand.job.Job;
import ellwand.pattern.Edge;
import ellwand.units.Length;
import java.util.LinkedHashMap;
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

  /** Each piece once, as cut from the first cloth that it needs. */
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
    ObjectNode json = Json.object();
    json.put("size", size);
    json.putArray("pieces").addAll(pieces.values());
    return json;
  }

  private static ObjectNode piece(Job job, CutPiece cut) {
    ObjectNode json = Json.object();
    json.put("name", cut.name());
    json.put("grain", cut.piece().grain().word());
    ArrayNode altered = json.putArray("altered");
    job.style().design().outlined().stream()
        .filter(drawn -> drawn.name().equals(cut.name()))
        .flatMap(drawn -> drawn.alter().stream())
        .forEach(step -> altered.add(step.alteration().words(job.unit())));
    cut.piece().fold().ifPresent(fold -> json.put("fold", fold));
    json.set("cutting", TableJson.points(cut.cutting()));
    ArrayNode edges = json.putArray("edges");
    for (Edge edge : cut.piece().edges()) {
      ObjectNode one = edges.addObject();
      one.put("name", edge.name());
      one.put("length", new Length(edge.sewnMm()).show(job.unit()));
      one.put("allowance", new Length(edge.allowanceMm()).show(job.unit()));
      one.put("turnedBack", edge.turnedBack());
      one.set("line", TableJson.points(edge.line().flattened(FLATTENING_MM)));
    }
    ArrayNode notches = json.putArray("notches");
    for (CutPiece.Stroke notch : cut.notches()) {
      notches.add(TableJson.points(java.util.List.of(notch.from(), notch.to())));
    }
    ArrayNode lines = json.putArray("lines");
    cut.innerLines().forEach(line -> lines.add(TableJson.points(line.points())));
    return json;
  }
}
