package ellwand.trace;

import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.List;

/**
 * What photos or a scan show, on one plane in mm.
 *
 * @param picture seen from straight above, made of all views, to look at and to find pieces in; its
 *     mapping is a {@link FlatMapping}; transparent where nothing was seen
 * @param views the photos themselves, to trace in without the loss of straightening; a scan is its
 *     own picture and its only view
 * @param sheets where the paper of the reference sheets lies, which is no piece
 * @param notes what the user should know, sentences
 */
public record Straightened(
    View picture, List<View> views, List<Outline> sheets, List<String> notes) {

  public Straightened {
    views = List.copyOf(views);
    sheets = List.copyOf(sheets);
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
}
