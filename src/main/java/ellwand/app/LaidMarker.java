package ellwand.app;

import ellwand.draw.marker.MarkerDrawing;
import ellwand.draw.marker.MarkerHead;
import ellwand.figures.Figures;
import ellwand.job.Job;
import ellwand.lay.Marker;
import ellwand.units.Unit;

/**
 * A marker that has passed the check, as it is written and drawn.
 *
 * @param job what it was made from
 */
record LaidMarker(Job job, Marker marker, MarkerDrawing drawing) {

  /**
   * @param unit that lengths are shown in
   */
  static LaidMarker of(Job job, Marker marker, Figures figures, MarkerHead head, Unit unit) {
    return new LaidMarker(job, marker, MarkerDrawing.of(marker, figures, head, unit));
  }
}
