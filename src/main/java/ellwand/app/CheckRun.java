package ellwand.app;

import ellwand.cloth.Cloth;
import ellwand.file.job.JobReader;
import ellwand.file.marker.MarkerFile;
import ellwand.file.marker.MarkerReader;
import ellwand.file.source.Folder;
import ellwand.file.source.WholeFile;
import ellwand.job.Job;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.lay.Scope;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.rule.Check;
import ellwand.units.Unit;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Checks a marker file against the job it was made from: all is rebuilt from the job. */
public final class CheckRun {

  private CheckRun() {}

  /**
   * Checks a marker file.
   *
   * @see #rebuilt
   */
  public static CheckedMarker marker(
      String name, Folder from, Optional<String> job, Optional<Unit> unit) {
    return rebuilt(name, from, job, unit).checked();
  }

  /**
   * A marker file with its job, checked.
   *
   * @param name of the marker file: its path, or a name for it
   * @param job the job to hold it against; if absent, the one that the marker names
   * @param unit that lengths are shown in; if absent, that of the job
   * @throws InputException if either cannot be read
   */
  public static RebuiltMarker rebuilt(
      String name, Folder from, Optional<String> job, Optional<Unit> unit) {
    MarkerFile file = MarkerReader.read(name, from);
    Job whole = JobReader.read(job.orElseGet(() -> named(name, from, file)), from);
    Job read =
        file.scope() instanceof Scope.Garments some ? whole.withGarments(some.garments()) : whole;
    Cloth cloth = cloth(read, file, name);
    Marker marker = file.on(lay(read, cloth, file));
    CheckedMarker checked =
        new CheckedMarker(
            Check.of(marker, file.stated()),
            !read.origin().sha256().equals(file.jobSha256()),
            unit.orElse(read.unit()));
    return new RebuiltMarker(read, marker, checked);
  }

  private static Lay lay(Job job, Cloth cloth, MarkerFile file) {
    if (file.scope() instanceof Scope.Part) {
      // What it has a part of was worked out for the cloth as bought.
      return file.of(JobLays.of(job, Shelf.cloth(job, file.cloth()))).on(cloth);
    }
    return JobLays.of(job, cloth);
  }

  private static Cloth cloth(Job job, MarkerFile file, String name) {
    try {
      Cloth cloth = Shelf.cloth(job, file.cloth());
      return file.remnant()
          .map(on -> Shelf.remnant(job, on, Optional.of(file.cloth())).laidAs(cloth))
          // Flaws are cut out before an order is spread.
          .orElse(file.scope() instanceof Scope.Garments ? cloth.flawed(List.of()) : cloth);
    } catch (InputException e) {
      throw new InputException(
          e.problems().stream()
              .map(p -> Problem.of(p.what(), "Check against another job").at(name, 0))
              .toList());
    }
  }

  /** The job as the marker names it: seen from here, else from the marker's own folder upward. */
  private static String named(String marker, Folder from, MarkerFile file) {
    if (from.holds(file.jobPath())) {
      return file.jobPath();
    }
    if (WholeFile.canBeCalled(file.jobPath())) {
      Path name = Path.of(file.jobPath()).getFileName();
      for (Path folder = Path.of(marker).toAbsolutePath().getParent();
          folder != null && name != null;
          folder = folder.getParent()) {
        String beside = folder.resolve(name).toString();
        if (from.holds(beside)) {
          return beside;
        }
      }
    }
    throw new InputException(
        Problem.of(
                "the job it was made from, " + file.jobPath() + ", is not there",
                "Name the job (--job JOB.yaml)")
            .at(marker, 0));
  }
}
