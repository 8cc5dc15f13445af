package ellwand.trial;

import com.fasterxml.jackson.databind.JsonNode;
import ellwand.trial.Sheets.Sheet;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;

/** Whether pieces lie where they ask to in the repeat; half drops are left aside. */
final class InStripes {

  private static final double OFF_MM = 0.02;

  /** Matches may miss each other by so much unless the job says otherwise. */
  private static final double MATCH_OFF_MM = 0.52;

  private final JsonNode job;
  private final JsonNode cloth;
  private final List<Laid> copies;
  private final Map<String, Drawing> drawings;
  private final Map<String, List<Sheet>> sheets;
  private final List<String> faults = new ArrayList<>();

  InStripes(
      JsonNode job,
      JsonNode cloth,
      List<Laid> copies,
      Map<String, Drawing> drawings,
      Map<String, List<Sheet>> sheets) {
    this.job = job;
    this.cloth = cloth;
    this.copies = copies;
    this.drawings = drawings;
    this.sheets = sheets;
  }

  List<String> faults() {
    if (cloth.has("repeat") && !cloth.get("repeat").has("half-drop") && !cloth.has("shrinkage")) {
      copies.forEach(this::place);
      job.get("style").path("match").forEach(this::match);
    }
    return faults;
  }

  private double period(String way) {
    return cloth.get("repeat").path(way).asDouble(0);
  }

  /** How far along the cloth a drawn place is from the middle of a bar, towards its piece's top. */
  private double along(Laid copy, Coordinate drawn) {
    double start = cloth.get("repeat").path("start").path("along").asDouble(0);
    return copy.up() * (copy.at(drawn).x - start);
  }

  /** How far across it is, to the left of that as drawn, on the ply that lies right side up. */
  private double across(Laid copy, Coordinate drawn) {
    List<Sheet> plies = sheets.get(copy.zone());
    Sheet ply = plies.get(plies.size() - 1);
    double start =
        cloth.get("repeat").path("start").path("across").asDouble(0)
            - cloth.path("selvedge").asDouble(0);
    int left = copy.up() * (copy.flipped() ? -1 : 1) * ply.alongY();
    return left * (ply.y(copy.at(drawn).y) - start);
  }

  private static boolean off(double mm, double period, double most) {
    return period > 0 && Math.abs(Math.IEEEremainder(mm, period)) > most;
  }

  private void place(Laid copy) {
    Drawing drawing = drawings.get(copy.piece());
    if (drawing == null
        || !drawing.piece().has("place")
        || !drawing.piece().path("grain").asText("along").equals("along")
        || job.has("sizes")) {
      return;
    }
    JsonNode place = drawing.piece().get("place");
    Coordinate mark = drawing.at(place.get("at").asText());
    if (place.has("along")
        && off(along(copy, mark) - place.get("along").asDouble(), period("along"), OFF_MM)) {
      faults.add(copy + " is off its place along the cloth");
    }
    if (place.has("across")
        && off(across(copy, mark) - place.get("across").asDouble(), period("across"), OFF_MM)) {
      faults.add(copy + " is off its place across the cloth");
    }
  }

  private void match(JsonNode match) {
    JsonNode points = match.isArray() ? match : match.get("points");
    String bars = match.path("bars").asText("across");
    String[] one = points.get(0).asText().split("\\.", 2);
    String[] other = points.get(1).asText().split("\\.", 2);
    for (Laid a : copies) {
      for (Laid b : copies) {
        if (a.piece().equals(one[0])
            && b.piece().equals(other[0])
            && !Collections.disjoint(a.garments(), b.garments())
            && !job.has("sizes")) {
          Coordinate at = drawings.get(a.piece()).at(one[1]);
          Coordinate otherAt = drawings.get(b.piece()).at(other[1]);
          if (!bars.equals("along")
              && off(along(a, at) - along(b, otherAt), period("along"), MATCH_OFF_MM)) {
            faults.add(a + " does not match " + b + " along the cloth");
          }
          boolean wholes = whole(a) && whole(b);
          if (!bars.equals("across")
              && wholes
              && off(across(a, at) - across(b, otherAt), period("across"), MATCH_OFF_MM)) {
            faults.add(a + " does not match " + b + " across the cloth");
          }
        }
      }
    }
  }

  private boolean whole(Laid copy) {
    return copy.form().equals("whole")
        && sheets.get(copy.zone()).size() == 1
        && drawings.get(copy.piece()).piece().get("cut").findValuesAsText("main").stream()
            .allMatch(cut -> cut.matches("\\d+"));
  }
}
