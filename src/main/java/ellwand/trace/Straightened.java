package ellwand.trace;

import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What photos or a scan show, on one plane in mm.
 *
 * @param picture seen from straight above, made of all views, to look at and to find pieces in; its
 *     mapping is a {@link FlatMapping}; transparent where nothing was seen
 * @param views the photos themselves, to trace in without the loss of straightening; a single scan
 *     is its own picture and its only view
 * @param sheets where the paper of the reference sheets lies, which is no piece; none of scans
 * @param crosses by which scans were joined
 * @param notes what the user should know, sentences
 */
public record Straightened(
    View picture,
    List<View> views,
    List<Outline> sheets,
    List<SharedCross> crosses,
    List<String> notes) {

  private static final double SLANTED_DEGREES = 42;

  private static final double FEW_PIXELS = 1;

  public Straightened {
    views = List.copyOf(views);
    sheets = List.copyOf(sheets);
    crosses = List.copyOf(crosses);
    notes = List.copyOf(notes);
  }

  /** Whether any view shows a place on the plane. */
  public boolean seen(Point mm) {
    return views.stream().anyMatch(v -> v.shows(mm));
  }

  /**
   * How far off a place may be in the view that knows it best, mm; infinite where none shows it.
   */
  public double errorMm(Point mm) {
    return views.stream()
        .filter(v -> v.shows(mm))
        .mapToDouble(v -> v.mapping().errorMm(mm))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** What most likely makes a place on the plane so unsure, a clause: "it lies ...". */
  public String reason(Point mm) {
    Optional<View> best =
        views.stream()
            .filter(v -> v.shows(mm))
            .min(Comparator.comparingDouble(v -> v.mapping().errorMm(mm)));
    if (best.isEmpty()) {
      return "no photo shows it";
    }
    if (sheets.isEmpty()) {
      return "the crosses by which the scans are joined tell no better how they lie";
    }
    double slant = best.get().slantDegrees(mm);
    if (slant > SLANTED_DEGREES) {
      return String.format(Locale.ROOT, "the photo is taken aslant, by %.0f degrees", slant);
    }
    double perMm = best.get().pixelsPerMm(mm);
    if (perMm < FEW_PIXELS) {
      return String.format(
          Locale.ROOT, "the camera was too far off, with %.1f pixels to the mm", perMm);
    }
    double cm = sheets.stream().mapToDouble(sheet -> away(sheet, mm)).min().orElse(Double.NaN) / 10;
    return String.format(Locale.ROOT, "it lies %.0f cm from the nearest reference sheet", cm);
  }

  /** What makes places surer, a sentence without its full stop. */
  public String remedy() {
    return sheets.isEmpty()
        ? "Draw the crosses farther apart, and a third"
        : "Lay sheets round it on all sides, hold the camera level and nearer, or take more photos";
  }

  private static double away(Outline sheet, Point mm) {
    List<Point> corners = sheet.points();
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < corners.size(); i++) {
      Point next = corners.get((i + 1) % corners.size());
      for (double share = 0; share < 1; share += 0.05) {
        nearest = Math.min(nearest, corners.get(i).towards(next, share).distance(mm));
      }
    }
    return nearest;
  }
}
