package ellwand.app;

import ellwand.cloth.Cloth;
import ellwand.figures.Buying;
import ellwand.figures.Figures;
import ellwand.job.Job;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.units.Unit;
import ellwand.work.Progress;
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
    return make(job, unit, request, Hands.OWN);
  }

  /**
   * The same by others.
   *
   * @see #make(Job, Unit, Request)
   */
  public static LaidJob make(Job job, Unit unit, Request request, Hands hands) {
    Format.refuseClashes(job, job.cloths().stream().map(Cloth::name).toList(), Format.JOB);
    List<Lay> lays = job.cloths().stream().map(cloth -> JobLays.of(job, cloth)).toList();
    Foreseen.refuse(job, lays, unit);
    List<Marker> markers = new ArrayList<>();
    List<Figures> figures = new ArrayList<>();
    for (Lay lay : lays) {
      Cloth cloth = lay.cloth();
      Request priced = request.with(priced(cloth, request.progress()));
      Folded folded = Folded.make(lay, unit, priced, hands);
      Marker best = folded.best(job, unit);
      markers.add(best);
      figures.add(folded.figures(best, JobLays.bindings(job, cloth, unit)));
    }
    return LaidJob.of(job, markers, figures, unit);
  }

  /** Says beside the length of each marker what its cloth costs. */
  private static Progress priced(Cloth cloth, Progress progress) {
    return news ->
        progress.hear(
            news instanceof Progress.Shorter marker
                ? Buying.costInWords(cloth, marker.clothMm()).map(marker::costing).orElse(marker)
                : news);
  }
}
