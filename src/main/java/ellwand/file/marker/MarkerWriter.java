package ellwand.file.marker;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.ValueNode;
import ellwand.cloth.KeepOut;
import ellwand.cloth.Zone;
import ellwand.file.source.Json;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.job.Job;
import ellwand.lay.Copy;
import ellwand.lay.Marker;
import ellwand.lay.Scope;
import ellwand.rule.Stated;
import java.util.Set;
import java.util.function.DoubleFunction;

/** Writes marker.json: the same marker gives the same bytes. */
public final class MarkerWriter {

  private final DoubleFunction<ValueNode> number;

  private MarkerWriter(DoubleFunction<ValueNode> number) {
    this.number = number;
  }

  /**
   * The bytes of a marker's file.
   *
   * @param job what it was made from
   */
  public static byte[] bytes(Marker marker, Job job) {
    return bytes(marker, Set.of(), job);
  }

  /**
   * The same of one that is in a cutter's hands.
   *
   * @param pinned copies that are to stay, by their places in the marker
   */
  public static byte[] bytes(Marker marker, Set<Integer> pinned, Job job) {
    return bytes(MarkerFile.of(marker, pinned, job));
  }

  /** The same with every digit of its numbers, so that reading it gives the same marker. */
  public static byte[] exactly(Marker marker, Job job) {
    return new MarkerWriter(JsonNodeFactory.instance::numberNode)
        .written(MarkerFile.of(marker, Set.of(), job));
  }

  static byte[] bytes(MarkerFile file) {
    return new MarkerWriter(Json::number).written(file);
  }

  private byte[] written(MarkerFile file) {
    ObjectNode root = Json.object();
    root.put("ellwand", 1);
    ObjectNode job = root.putObject("job");
    job.put("path", file.jobPath()).put("sha256", file.jobSha256());
    if (file.scope() instanceof Scope.Part) {
      job.put("part", true);
    }
    if (file.scope() instanceof Scope.Garments some) {
      some.garments().forEach(job.withObject("/garments")::put);
    }
    root.put("cloth", file.cloth());
    file.remnant().ifPresent(remnant -> root.put("remnant", remnant));
    root.put("fold", file.fold().words());
    root.put("direction", file.direction().words());
    Stated stated = file.stated();
    root.set("gap", number.apply(stated.gapMm()));
    root.set("markerWidth", number.apply(stated.markerWidthMm()));
    root.set("length", number.apply(stated.lengthMm()));
    root.set("clothLength", number.apply(stated.clothLengthMm()));
    root.set("utilisation", number.apply(stated.utilisation()));
    file.search().ifPresentOrElse(search -> put(root, search), () -> root.put("byHand", true));
    ArrayNode zones = root.putArray("zones");
    file.zones().forEach(z -> zones.add(zone(z)));
    ArrayNode keepOuts = root.putArray("keepOuts");
    file.keepOuts().forEach(k -> keepOuts.add(keepOut(k)));
    ArrayNode demand = root.putArray("demand");
    file.demand().forEach(d -> demand.add(demand(d)));
    ArrayNode copies = root.putArray("copies");
    file.copies().forEach(c -> copies.add(copy(c)));
    file.pinned().forEach(i -> ((ObjectNode) copies.get(i)).put("pinned", true));
    return Json.bytes(root);
  }

  private static void put(ObjectNode root, Marker.Search search) {
    root.put("seed", search.seed());
    root.put("threads", search.threads());
    root.put("effort", search.effort());
    root.put("stoppedEarly", search.stoppedEarly());
  }

  private ObjectNode zone(Zone zone) {
    ObjectNode node = Json.object();
    node.put("id", zone.id());
    node.set("x0", number.apply(zone.box().minX()));
    node.set("x1", number.apply(zone.box().maxX()));
    node.set("y0", number.apply(zone.box().minY()));
    node.set("y1", number.apply(zone.box().maxY()));
    node.put("plies", zone.plies());
    ArrayNode folds = node.putArray("foldEdges");
    zone.foldEdges().stream().sorted().forEach(side -> folds.add(Json.word(side)));
    node.put("sideUp", Json.word(zone.sideUp()));
    return node;
  }

  private static ObjectNode demand(MarkerFile.Demand demand) {
    return Json.object()
        .put("piece", demand.piece())
        .put("size", demand.size())
        .put("garment", demand.garment())
        .put("how", Json.word(demand.how()));
  }

  private ObjectNode copy(Copy copy) {
    ObjectNode node = Json.object();
    node.put("piece", copy.piece());
    node.put("size", copy.size());
    node.put("garment", copy.garment());
    copy.secondGarment().ifPresent(second -> node.put("secondGarment", second));
    node.put("form", Json.word(copy.form()));
    node.put("zone", copy.zone());
    node.put("heading", Json.word(copy.heading()));
    Motion motion = copy.motion();
    node.set("x", number.apply(motion.x()));
    node.set("y", number.apply(motion.y()));
    node.set("turn", number.apply(motion.turnDegrees()));
    node.put("flipped", motion.flipped());
    node.set("outline", outline(copy.outline()));
    return node;
  }

  private ObjectNode keepOut(KeepOut keepOut) {
    ObjectNode node = Json.object();
    node.put("zone", keepOut.zone()).put("flaw", keepOut.flaw());
    node.set("outline", outline(keepOut.outline()));
    return node;
  }

  private ArrayNode outline(Outline outline) {
    ArrayNode points = Json.object().arrayNode();
    for (Point p : outline.points()) {
      points.addArray().add(number.apply(p.x())).add(number.apply(p.y()));
    }
    return points;
  }
}
