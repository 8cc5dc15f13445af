package ellwand.desk;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.cloth.Cloth;
import ellwand.cloth.Fold;
import ellwand.cloth.KeepOut;
import ellwand.cloth.Zone;
import ellwand.edit.HandLaid;
import ellwand.figures.Buying;
import ellwand.file.source.Json;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.lay.Copy;
import ellwand.lay.Marker;
import ellwand.rule.Finding;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A table as a page draws it: shapes once, copies as places of shapes, so that a better marker is a
 * few kilobytes. mm, x along the cloth, y up across it.
 */
final class TableJson {

  private TableJson() {}

  static ObjectNode goods(Cloth cloth) {
    ObjectNode json = Json.object();
    json.put("name", cloth.name());
    json.set("widthMm", Json.number(cloth.usableWidthMm()));
    json.set("gapMm", Json.number(cloth.gapMm()));
    json.put("direction", cloth.direction().words());
    ArrayNode ways = json.putArray("ways");
    for (Fold fold : cloth.folds()) {
      ObjectNode way = ways.addObject().put("name", fold.words());
      cloth.barred(fold).ifPresent(problem -> way.put("why", problem.clause()));
    }
    return json;
  }

  /** With its shapes. */
  static ObjectNode whole(Table table, HandLaid hand) {
    Map<String, Outline> shapes = new LinkedHashMap<>();
    for (Copy copy : hand.marker().copies()) {
      shapes.computeIfAbsent(shape(copy), s -> copy.outline().moved(copy.motion().inverse()));
    }
    ObjectNode json = event(table, hand);
    ObjectNode outlines = json.putObject("shapes");
    shapes.forEach((name, outline) -> outlines.set(name, points(outline)));
    return json;
  }

  /** Without its shapes. */
  static ObjectNode event(Table table, HandLaid hand) {
    ObjectNode json = about(table, hand);
    ArrayNode copies = json.putArray("copies");
    hand.marker().copies().forEach(copy -> copies.add(copy(copy)));
    return json;
  }

  /** Of its copies only those that lie otherwise than before, by their places among all. */
  static ObjectNode moved(Table table, HandLaid before, HandLaid hand) {
    ObjectNode json = about(table, hand);
    json.put("after", table.laid() - 1);
    ObjectNode moved = json.putObject("moved");
    List<Copy> copies = hand.marker().copies();
    for (int i = 0; i < copies.size(); i++) {
      if (copies.get(i) != before.marker().copies().get(i)) {
        moved.set(Integer.toString(i), copy(copies.get(i)));
      }
    }
    return json;
  }

  private static ObjectNode about(Table table, HandLaid hand) {
    Marker marker = hand.marker();
    Unit unit = table.job().unit();
    Cloth cloth = marker.lay().cloth();
    double buy = Buying.lengthMm(cloth, marker.clothLengthMm());
    ObjectNode json = Json.object();
    json.put("cloth", table.cloth());
    json.put("told", table.tell());
    json.put("laid", table.laid());
    json.put("undo", table.canUndo());
    json.put("fold", marker.fold().words());
    json.set("widthMm", Json.number(marker.markerWidthMm()));
    json.set("lengthMm", Json.number(marker.lengthMm()));
    json.put("length", new Length(marker.clothLengthMm()).show(unit));
    json.put("buy", Buying.shown(buy, unit));
    json.put("cost", money(Buying.cost(cloth, buy), cloth));
    json.put("used", String.format(Locale.ROOT, "%.1f %%", 100 * marker.utilisation()));
    zones(marker, json.putArray("zones"));
    ArrayNode flaws = json.putArray("flaws");
    for (KeepOut keepOut : marker.keepOuts()) {
      flaws.addObject().put("name", keepOut.flaw()).set("outline", points(keepOut.outline()));
    }
    ArrayNode pinned = json.putArray("pinned");
    hand.pinned().stream().sorted().forEach(pinned::add);
    ArrayNode findings = json.putArray("findings");
    hand.findings().forEach(finding -> findings.add(finding(finding, unit)));
    return json;
  }

  /** Nothing where the price is unknown. */
  static String money(double cost, Cloth cloth) {
    return cost == 0 ? "" : String.format(Locale.ROOT, "%.2f %s", cost, cloth.currency()).strip();
  }

  private static void zones(Marker marker, ArrayNode zones) {
    for (Zone zone : marker.zones()) {
      ObjectNode json = zones.addObject();
      json.put("id", zone.id());
      json.set("x0", Json.number(zone.box().minX()));
      json.set("y0", Json.number(zone.box().minY()));
      json.set("x1", Json.number(zone.box().maxX()));
      json.set("y1", Json.number(zone.box().maxY()));
      json.put("plies", zone.plies());
      ArrayNode folds = json.putArray("folds");
      zone.foldEdges().forEach(side -> folds.add(Json.word(side)));
    }
  }

  private static String shape(Copy copy) {
    return copy.piece() + "|" + copy.size() + "|" + Json.word(copy.form());
  }

  private static ObjectNode copy(Copy copy) {
    Motion motion = copy.motion();
    ObjectNode json = Json.object();
    json.put("shape", shape(copy));
    json.put("piece", copy.piece());
    json.put("size", copy.size());
    json.put("garment", copy.garment());
    json.put("form", Json.word(copy.form()));
    json.put("zone", copy.zone());
    json.set("x", Json.number(motion.x()));
    json.set("y", Json.number(motion.y()));
    json.set("turn", Json.number(motion.turnDegrees()));
    json.put("flipped", motion.flipped());
    return json;
  }

  private static ObjectNode finding(Finding finding, Unit unit) {
    ObjectNode json = Json.object();
    json.put("words", finding.sentence(unit));
    ArrayNode copies = json.putArray("copies");
    finding.copies().forEach(copies::add);
    finding
        .place()
        .ifPresent(
            place -> {
              json.set("x", Json.number(place.x()));
              json.set("y", Json.number(place.y()));
            });
    return json;
  }

  static ArrayNode points(Outline outline) {
    return points(outline.points());
  }

  static ArrayNode points(Iterable<Point> line) {
    ArrayNode points = Json.object().arrayNode();
    for (Point p : line) {
      points.add(Json.number(Math.round(p.x() * 100) / 100.0));
      points.add(Json.number(Math.round(p.y() * 100) / 100.0));
    }
    return points;
  }
}
