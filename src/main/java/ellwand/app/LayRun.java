package ellwand.app;

import ellwand.cloth.Cloth;
import ellwand.figures.Figures;
import ellwand.job.Job;
import ellwand.lay.Marker;
import ellwand.units.Unit;
import ellwand.work.Request;
import java.util.ArrayList;
import java.util.List;

/** Makes the markers of a job. */
public final class LayRun {

  private LayRun() {}

  /**
   * Makes one marker for each cloth.
   *
   * @throws ellwand.problem.InputException if a piece is wider than its cloth
   * @throws IllegalStateException if a marker breaks a hard rule, which is a bug of ours
   */
  public static LaidJob make(Job job, Unit unit, Request request) {
    Format.refuseClashes(job, job.cloths().stream().map(Cloth::name).toList(), Format.JOB);
    List<Marker> markers = new ArrayList<>();
    List<Figures> figures = new ArrayList<>();
    for (Cloth cloth : job.cloths()) {
      Folded folded = Folded.make(JobLays.of(job, cloth), unit, request);
      Marker best = folded.best(job, unit);
      markers.add(best);
      figures.add(folded.figures(best, JobLays.bindings(job, cloth, unit)));
    }
    return LaidJob.of(job, markers, figures, unit);
  }
}
