package ellwand.draw;

import ellwand.figures.JobFigures;
import ellwand.lay.Marker;
import ellwand.units.Unit;
import java.util.List;

/** What is taken to the cutting table: pictures, tables of places, figures and cautions. */
public final class CutSheet {

  private CutSheet() {}

  /**
   * A4 pages.
   *
   * @param figures of the whole job
   * @param markers one for each of the job's cloths, in the order of {@link JobFigures#cloths}
   * @param unit that lengths are shown in
   */
  public static byte[] pdf(JobFigures figures, List<Marker> markers, Unit unit) {
    throw new UnsupportedOperationException("lands shortly, for " + figures + markers + unit);
  }
}
