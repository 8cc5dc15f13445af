package ellwand.trial;

import com.fasterxml.jackson.databind.JsonNode;
import ellwand.trial.Sheets.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/**
 * Says what is wrong with a marker on the cloth as it comes off the roll, on which every ply takes
 * its own place.
 *
 * @param usableMm what of the width may be cut
 */
record OnTheRoll(
    JsonNode job,
    JsonNode cloth,
    JsonNode marker,
    List<Laid> copies,
    Map<String, Drawing> drawings,
    double usableMm) {

  /** An overlap up to this share of the smaller is none; the README promises as much. */
  private static final double OVERLAP_SHARE = 1.01e-6;

  /** A ply of a copy on the cloth as it comes off the roll. */
  private record Taken(Laid copy, Polygon ply) {}

  /** What is wrong where the cloth lies on such sheets. */
  List<String> faults(Map<String, List<Sheet>> sheets) {
    List<String> wrong = new ArrayList<>();
    List<Taken> taken = new ArrayList<>();
    for (Laid copy : copies) {
      for (Sheet sheet : sheets.getOrDefault(copy.zone(), List.of())) {
        Polygon ply = sheet.unrolled(copy.outline());
        Envelope box = ply.getEnvelopeInternal();
        if (box.getMinX() < -Judge.ROUNDING_MM
            || box.getMaxX() > marker.get("clothLength").asDouble() + Judge.ROUNDING_MM
            || box.getMinY() < -Judge.ROUNDING_MM
            || box.getMaxY() > usableMm + Judge.ROUNDING_MM) {
          wrong.add(copy + " lies beyond the cloth");
        }
        taken.add(new Taken(copy, ply));
      }
    }
    for (int i = 0; i < taken.size(); i++) {
      PreparedGeometry one = PreparedGeometryFactory.prepare(taken.get(i).ply);
      for (int k = i + 1; k < taken.size(); k++) {
        if (one.intersects(taken.get(k).ply) && tooMuch(taken.get(i).ply, taken.get(k).ply)) {
          wrong.add(taken.get(i).copy + " takes cloth of " + taken.get(k).copy);
        }
      }
    }
    for (JsonNode flaw : cloth.path("flaws")) {
      Polygon barred = flaw(flaw);
      for (Taken t : taken) {
        if (tooMuch(t.ply, barred)) {
          wrong.add(t.copy + " takes flawed cloth");
        }
      }
    }
    wrong.addAll(new InStripes(job, cloth, copies, drawings, sheets).faults());
    return wrong;
  }

  private static boolean tooMuch(Polygon a, Polygon b) {
    return a.getEnvelopeInternal().intersects(b.getEnvelopeInternal())
        && a.intersection(b).getArea() > OVERLAP_SHARE * Math.min(a.getArea(), b.getArea());
  }

  /** A rectangle, or what surely lies inside a round flaw; x along, y from the first line. */
  private Polygon flaw(JsonNode flaw) {
    Coordinate at = Drawing.place(flaw.get("at"));
    double y = at.y - cloth.path("selvedge").asDouble();
    if (flaw.has("radius")) {
      return (Polygon)
          Laid.GEOMETRY
              .createPoint(new Coordinate(at.x, y))
              .buffer(flaw.get("radius").asDouble() - Judge.ROUNDING_MM);
    }
    return (Polygon)
        Laid.GEOMETRY.toGeometry(
            new Envelope(
                at.x, at.x + flaw.path("length").asDouble(), y, y + flaw.path("width").asDouble()));
  }
}
