package ellwand.app;

import ellwand.cloth.Cloth;
import ellwand.cutting.CutPiece;
import ellwand.cutting.Cutter;
import ellwand.figures.Figures;
import ellwand.file.marker.MarkerFile;
import ellwand.file.marker.MarkerReader;
import ellwand.file.marker.MarkerWriter;
import ellwand.file.source.Folder;
import ellwand.job.Job;
import ellwand.lay.Marker;
import ellwand.nest.MarkerListener;
import ellwand.problem.InputException;
import ellwand.rule.Check;
import ellwand.units.Unit;
import ellwand.work.Request;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A job at the cutting table: its markers one cloth at a time, watched, kept and drawn. */
public final class TableRun {

  private TableRun() {}

  /**
   * The marker of one cloth.
   *
   * @param listener hears every better marker on the way
   * @throws InputException if a piece fits in no way
   */
  public static Marker lay(
      Job job, Cloth cloth, Unit unit, Request request, MarkerListener listener) {
    return Folded.make(JobLays.of(job, cloth), unit, request, listener).best(job, unit);
  }

  /**
   * Markers that were made before, one for each cloth of the job, with figures and drawings.
   *
   * @throws IllegalStateException if one breaks a hard rule
   */
  public static LaidJob laid(Job job, List<Marker> markers, Unit unit) {
    List<Figures> figures = new ArrayList<>();
    for (Marker marker : markers) {
      Check.passed(marker);
      figures.add(Figures.of(marker, JobLays.bindings(job, marker.lay().cloth(), unit)));
    }
    return LaidJob.of(job, markers, figures, unit);
  }

  /** A marker as it is kept. */
  public static byte[] bytes(Job job, Marker marker) {
    return MarkerWriter.bytes(marker, job);
  }

  /**
   * A marker that was kept, held against the job as that is now: rules that it breaks are its
   * findings.
   *
   * @return nothing if it is none of this cloth's
   */
  public static Optional<Marker> kept(Job job, Cloth cloth, String name, Folder from) {
    try {
      MarkerFile file = MarkerReader.read(name, from);
      return file.cloth().equals(cloth.name())
          ? Optional.of(file.on(JobLays.of(job, cloth)))
          : Optional.empty();
    } catch (InputException e) {
      return Optional.empty();
    }
  }

  /** The same marker held against the job as that is now. */
  public static Marker of(Job job, Cloth cloth, Marker marker) {
    return marker.of(JobLays.of(job, cloth));
  }

  /** The pieces of one size that are cut from a cloth, as large as their pattern. */
  public static List<CutPiece> pattern(Job job, String size, Cloth cloth) {
    return JobLays.cutPieces(job, size, cloth).stream()
        .map(cut -> Cutter.cut(cut.piece(), 1, 1))
        .toList();
  }
}
