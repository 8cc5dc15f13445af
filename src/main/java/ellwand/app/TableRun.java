package ellwand.app;

import ellwand.cloth.Cloth;
import ellwand.cloth.Fold;
import ellwand.cutting.CutPiece;
import ellwand.cutting.Cutter;
import ellwand.edit.HandLaid;
import ellwand.figures.Figures;
import ellwand.file.marker.MarkerFile;
import ellwand.file.marker.MarkerReader;
import ellwand.file.marker.MarkerWriter;
import ellwand.file.source.Folder;
import ellwand.job.Job;
import ellwand.lay.Marker;
import ellwand.nest.MarkerListener;
import ellwand.nest.Nester;
import ellwand.problem.InputException;
import ellwand.rule.Check;
import ellwand.units.Unit;
import ellwand.work.Request;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A job at the cutting table: its markers one cloth at a time, watched, kept and drawn. */
public final class TableRun {

  private TableRun() {}

  /**
   * The marker of one cloth.
   *
   * @param folds in which of the ways that it can lie it may
   * @param listener hears every better marker on the way
   * @throws InputException if a piece fits in none of them
   */
  public static Marker lay(
      Job job, Cloth cloth, List<Fold> folds, Request request, MarkerListener listener) {
    return Folded.make(JobLays.of(job, cloth), folds, job.unit(), request, listener)
        .best(job, job.unit());
  }

  /**
   * A marker gone on from as it lies: what overlaps is parted, what can be pushed together is;
   * nothing is turned, and what is pinned stays.
   *
   * @param listener hears every better marker on the way
   * @throws InputException if nothing that could be cut is found from there
   */
  public static Marker tidy(HandLaid from, Request request, MarkerListener listener) {
    return Nester.tidy(from.marker(), from.pinned(), request, listener)
        .orElseThrow(
            () ->
                InputException.of(
                    "nothing that could be cut was found from here",
                    "Mend what is told of it other than overlaps, or take pins out"));
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
  public static byte[] bytes(Job job, HandLaid laid) {
    return MarkerWriter.bytes(laid.marker(), laid.pinned(), job);
  }

  /**
   * A marker that was kept, held against the job as that is now: rules that it breaks are its
   * findings.
   *
   * @return nothing if it is none of this cloth's
   */
  public static Optional<HandLaid> kept(Job job, Cloth cloth, String name, Folder from) {
    try {
      MarkerFile file = MarkerReader.read(name, from);
      return file.cloth().equals(cloth.name())
          ? Optional.of(HandLaid.of(file.on(JobLays.of(job, cloth)), file.pinned()))
          : Optional.empty();
    } catch (InputException e) {
      return Optional.empty();
    }
  }

  /** The same marker held against the job as that is now. */
  public static HandLaid of(Job job, Cloth cloth, Marker marker, Set<Integer> pinned) {
    return HandLaid.of(marker.of(JobLays.of(job, cloth)), pinned);
  }

  /** The pieces of one size that are cut from a cloth, as large as their pattern. */
  public static List<CutPiece> pattern(Job job, String size, Cloth cloth) {
    return JobLays.cutPieces(job, size, cloth).stream()
        .map(cut -> Cutter.cut(cut.piece(), 1, 1))
        .toList();
  }
}
