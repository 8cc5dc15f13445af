package ellwand.trial;

import com.fasterxml.jackson.databind.JsonNode;
import ellwand.trial.Sheets.Sheet;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;

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

  private double start(String way) {
    return cloth.get("repeat").path("start").path(way).asDouble(0);
  }

  /**
   * A mark of a piece that was cut, with the piece turned so that it heads up: how far it is from
   * the middle of a bar along the cloth and, to the left, across it, right side up.
   *
   * @param over the piece, or the half that the mark is on, is the mirror image of the drawn one
   */
  private record Sewn(boolean over, double along, double across) {}

  private String cut(Laid copy) {
    String name = job.get("cloths").get("main") == cloth ? "main" : "lining";
    return drawings.get(copy.piece()).piece().get("cut").path(name).asText();
  }

  /** Of all that is kept of a copy; a piece on the fold has the mark on both of its sides. */
  private List<Sewn> sewn(Laid copy, Coordinate drawn) {
    boolean half = cut(copy).contains("fold");
    boolean pair = cut(copy).contains("pair");
    boolean both = copy.form().equals("pair") || copy.form().equals("half");
    List<Sheet> plies = sheets.get(copy.zone());
    List<Sewn> sewn = new ArrayList<>();
    for (int i = 0; i < plies.size(); i++) {
      Sheet ply = plies.get(i);
      boolean over = copy.flipped() != (ply.alongX() * ply.alongY() < 0);
      if (!half && !pair && over && both) {
        // It is kept as one that is as drawn, so that the mark is on its other side.
        sewn.add(sewn(copy, ply, mirrored(copy, drawn), false));
      } else if (both || (half || pair ? i == plies.size() - 1 : !over)) {
        sewn.add(sewn(copy, ply, drawn, over));
        if (half && !copy.form().equals("half")) {
          sewn.add(sewn(copy, ply, mirrored(copy, drawn), !over));
        }
      }
    }
    return sewn;
  }

  private Sewn sewn(Laid copy, Sheet ply, Coordinate drawn, boolean over) {
    Coordinate at = copy.at(drawn);
    // A fold across lies along the middle of a bar, from which bars are counted on both plies.
    boolean fromFold =
        sheets.values().stream().anyMatch(plies -> plies.stream().anyMatch(p -> p.alongX() < 0));
    double along = copy.up() * (at.x - (fromFold ? 0 : start("along")));
    double fromLine = ply.y(at.y) - start("across") + cloth.path("selvedge").asDouble(0);
    return new Sewn(over, along, copy.up() * ply.alongX() * fromLine);
  }

  private Coordinate mirrored(Laid copy, Coordinate drawn) {
    Drawing drawing = drawings.get(copy.piece());
    double line =
        drawing.fold().isPresent()
            ? drawing.fold().get().getCoordinate().y
            : copy.drawn().getEnvelopeInternal().centre().y;
    return new Coordinate(drawn.x, 2 * line - drawn.y);
  }

  private static boolean off(double mm, double period, double most) {
    return period > 0 && Math.abs(Math.IEEEremainder(mm, period)) > most;
  }

  /** Whether the judge knows how it lies: along its grain, and folded along that. */
  private boolean known(Laid copy) {
    Drawing drawing = drawings.get(copy.piece());
    return drawing != null
        && drawing.piece().path("grain").asText("along").equals("along")
        && !job.has("sizes")
        && drawing.fold().map(f -> f.getEnvelopeInternal().getHeight() < 1e-9).orElse(true);
  }

  private void place(Laid copy) {
    if (!known(copy) || !drawings.get(copy.piece()).piece().has("place")) {
      return;
    }
    Drawing drawing = drawings.get(copy.piece());
    JsonNode place = drawing.piece().get("place");
    Coordinate mark = drawing.at(place.get("at").asText());
    for (Sewn at : sewn(copy, mark)) {
      if (place.has("along")
          && off(at.along - place.get("along").asDouble(), period("along"), OFF_MM)) {
        faults.add(copy + " is off its place along the cloth");
      }
      // The other half of a piece on the fold is wherever that brings it; of a pair it mirrors.
      int left = at.over ? -1 : 1;
      if (place.has("across")
          && !(at.over && cut(copy).contains("fold"))
          && off(left * at.across - place.get("across").asDouble(), period("across"), OFF_MM)) {
        faults.add(copy + " is off its place across the cloth");
      }
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
            && known(a)
            && known(b)) {
          match(bars, a, one[1], b, other[1]);
        }
      }
    }
  }

  private void match(String bars, Laid a, String one, Laid b, String other) {
    Seam seam = seam(a, one, b, other);
    for (Sewn at : sewn(a, drawings.get(a.piece()).at(one))) {
      for (Sewn otherAt : sewn(b, drawings.get(b.piece()).at(other))) {
        if (!bars.equals("along") && off(at.along - otherAt.along, period("along"), MATCH_OFF_MM)) {
          faults.add(a + " does not match " + b + " along the cloth");
        }
        double across = at.across - (seam.chevron ? -1 : 1) * otherAt.across;
        if (!bars.equals("across")
            && !seam.doubtful
            && (at.over == otherAt.over) == seam.sameHand
            && off(across, period("across"), MATCH_OFF_MM)) {
          faults.add(a + " does not match " + b + " across the cloth");
        }
      }
    }
  }

  /**
   * How two pieces are sewn together, from which way the cloth lies beside their seam; bars meet in
   * a chevron where it leans across half a repeat or more.
   *
   * @param doubtful it cannot be told from so little
   */
  private record Seam(boolean sameHand, boolean chevron, boolean doubtful) {}

  private Seam seam(Laid a, String one, Laid b, String other) {
    if (cut(a).matches("\\d+") && cut(b).matches("\\d+")) {
      return new Seam(true, false, false);
    }
    Drawing first = drawings.get(a.piece());
    Drawing second = drawings.get(b.piece());
    LineString seam = first.edge(one.split(" @ ")[0]);
    LineString otherSeam = second.edge(other.split(" @ ")[0]);
    // Along an edge the piece is on the left.
    Coordinate to = towards(seam);
    Coordinate otherTo = towards(otherSeam);
    double facing = Math.min(Math.abs(to.x), Math.abs(otherTo.x));
    boolean oneSide = to.x * otherTo.x > 0 && facing > 0.1;
    double crossed =
        Math.min(
            seam.getEnvelopeInternal().getHeight(), otherSeam.getEnvelopeInternal().getHeight());
    boolean doubtful =
        first.curved()
            || second.curved()
            || Math.abs(facing - 0.1) < 1e-3
            || Math.abs(crossed - period("across") / 2) < 0.1;
    return new Seam(!oneSide, to.y * otherTo.y > 0 && crossed >= period("across") / 2, doubtful);
  }

  private static Coordinate towards(LineString line) {
    Coordinate from = line.getCoordinateN(0);
    Coordinate to = line.getCoordinateN(line.getNumPoints() - 1);
    double length = from.distance(to);
    return new Coordinate((to.x - from.x) / length, (to.y - from.y) / length);
  }
}
