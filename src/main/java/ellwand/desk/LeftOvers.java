package ellwand.desk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.cloth.Zone;
import ellwand.cloth.Zone.Side;
import ellwand.file.source.Json;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Region;
import ellwand.lay.Marker;
import ellwand.rule.FreePlace;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What is left of a cloth round its marker, and what of that is worth a place on the shelf. */
record LeftOvers(Marker marker, List<FreePlace> places, Unit unit) {

  /** More are not looked for; ours. */
  private static final int MOST = 6;

  /** Smaller rectangles are scraps, mm; ours. */
  private static final double LEAST_MM = 60;

  /** A fold edge is reached from here, mm. */
  private static final double REACHED_MM = 0.01;

  private static final double ROUNDING = 1e-9;

  static LeftOvers of(Marker marker, Unit unit) {
    return new LeftOvers(marker, FreePlace.several(marker, MOST, LEAST_MM), unit);
  }

  /** All that a page needs to draw it. */
  ObjectNode json() {
    ObjectNode json = Json.object();
    ArrayNode regions = json.putArray("regions");
    for (Region region : FreePlace.regions(marker)) {
      ArrayNode rings = regions.addArray();
      for (Outline ring : rings(region)) {
        rings.add(TableJson.points(ring));
      }
    }
    ArrayNode all = json.putArray("places");
    places.forEach(place -> all.add(json(place)));
    return json;
  }

  private static List<Outline> rings(Region region) {
    List<Outline> rings = new ArrayList<>(region.shells());
    rings.addAll(region.holes());
    return rings;
  }

  private ObjectNode json(FreePlace place) {
    Box box = place.box();
    ObjectNode json = Json.object();
    json.put("zone", place.zone().id());
    json.set("x", Json.number(box.minX()));
    json.set("y", Json.number(box.minY()));
    json.set("length", Json.number(box.length()));
    json.set("width", Json.number(box.width()));
    List<Box> sheets = sheets(place);
    json.put(
        "size",
        (sheets.size() > 1 ? sheets.size() + " of " : "")
            + shown(sheets.get(0).length())
            + " x "
            + shown(sheets.get(0).width()));
    json.put(
        "where",
        (place.zone().plies() > sheets.size() ? "opened out; " : "")
            + new Length(box.minX()).show(unit)
            + " from the cut end, "
            + new Length(box.minY()).show(unit)
            + " from the lower edge");
    return json;
  }

  /** What it comes to as single layers: what reaches the fold opens out to one. */
  static List<Box> sheets(FreePlace place) {
    Box box = place.box();
    if (place.zone().plies() == 1) {
      return List.of(sheet(box.length(), box.width()));
    }
    if (reaches(place, Side.LOW_Y) || reaches(place, Side.HIGH_Y)) {
      return List.of(sheet(box.length(), 2 * box.width()));
    }
    if (reaches(place, Side.LOW_X)) {
      return List.of(sheet(2 * box.length(), box.width()));
    }
    Box one = sheet(box.length(), box.width());
    return List.of(one, one);
  }

  private static Box sheet(double lengthMm, double widthMm) {
    return new Box(0, 0, lengthMm, widthMm);
  }

  private static boolean reaches(FreePlace place, Side side) {
    Zone zone = place.zone();
    double off =
        switch (side) {
          case LOW_Y -> place.box().minY() - zone.box().minY();
          case HIGH_Y -> zone.box().maxY() - place.box().maxY();
          case LOW_X -> place.box().minX() - zone.box().minX();
        };
    return zone.foldEdges().contains(side) && off < REACHED_MM;
  }

  /** A remnant's entry in a job, one for each layer. */
  List<JsonNode> entries(FreePlace place) {
    return sheets(place).stream()
        .map(
            sheet ->
                (JsonNode)
                    Json.object()
                        .put("cloth", marker.lay().cloth().name())
                        .put("length", shown(sheet.length()))
                        .put("width", shown(sheet.width()))
                        .put("selvedge", "0 mm"))
        .toList();
  }

  /** Rather too small than too large. */
  private String shown(double mm) {
    Unit fine = PiecesJson.fine(unit);
    return new Length(Math.floor(mm / fine.stepMm() + ROUNDING) * fine.stepMm()).show(fine);
  }

  /**
   * The place that a page names as it was told of it.
   *
   * @throws Declined if it is no longer left over
   */
  FreePlace named(JsonNode told) {
    return places.stream()
        .filter(place -> same(json(place), told))
        .findFirst()
        .orElseThrow(
            () ->
                Declined.asItIsNow(
                    "this is no longer left over", "Look at what is left as it lies now"));
  }

  private static boolean same(JsonNode place, JsonNode told) {
    return Set.of("zone", "x", "y", "length", "width").stream()
        .allMatch(key -> place.path(key).asText().equals(told.path(key).asText()));
  }
}
