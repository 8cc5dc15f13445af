package ellwand.app;

import ellwand.figures.Figures;
import ellwand.job.Job;
import ellwand.lay.Marker;
import java.util.List;

/** A marker from its file, with the job that it was made from, and what the check found. */
public record RebuiltMarker(Job job, Marker marker, CheckedMarker checked) {

  /**
   * The same as a run that has made it.
   *
   * @throws IllegalStateException if it breaks a rule
   */
  public LaidJob laid() {
    if (!checked.achieved()) {
      throw new IllegalStateException("a marker that breaks a rule is not laid");
    }
    List<String> bindings = JobLays.bindings(job, marker.lay().cloth(), checked.unit());
    return LaidJob.of(job, List.of(marker), List.of(Figures.of(marker, bindings)), checked.unit());
  }
}
