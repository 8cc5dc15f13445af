package ellwand.app;

import ellwand.cloth.Cloth;
import ellwand.file.job.JobReader;
import ellwand.file.marker.MarkerFile;
import ellwand.file.marker.MarkerReader;
import ellwand.job.Job;
import ellwand.lay.Lay;
import ellwand.lay.Scope;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.rule.Check;
import ellwand.units.Unit;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Checks a marker file against the job it was made from: all is rebuilt from the job. */
public final class CheckRun {

  private CheckRun() {}

  /**
   * Checks a marker file.
   *
   * @param job the job to hold it against; if absent, the one that the marker names
   * @param unit that lengths are shown in; if absent, that of the job
   * @throws InputException if either cannot be read
   */
  public static CheckedMarker marker(Path markerPath, Optional<Path> job, Optional<Unit> unit) {
    MarkerFile file = MarkerReader.read(markerPath);
    Job whole = JobReader.read(job.orElseGet(() -> named(markerPath, file)));
    Job read =
        file.scope() instanceof Scope.Garments some ? whole.withGarments(some.garments()) : whole;
    Cloth cloth = cloth(read, file, markerPath);
    return new CheckedMarker(
        Check.of(file.on(lay(read, cloth, file)), file.stated()),
        !read.origin().sha256().equals(file.jobSha256()),
        unit.orElse(read.unit()));
  }

  private static Lay lay(Job job, Cloth cloth, MarkerFile file) {
    if (file.scope() instanceof Scope.Part) {
      // What it has a part of was worked out for the cloth as bought.
      return file.of(JobLays.of(job, Shelf.cloth(job, file.cloth()))).on(cloth);
    }
    return JobLays.of(job, cloth);
  }

  private static Cloth cloth(Job job, MarkerFile file, Path markerPath) {
    try {
      Cloth cloth = Shelf.cloth(job, file.cloth());
      return file.remnant()
          .map(on -> Shelf.remnant(job, on, Optional.of(file.cloth())).laidAs(cloth))
          // Flaws are cut out before an order is spread.
          .orElse(file.scope() instanceof Scope.Garments ? cloth.flawed(List.of()) : cloth);
    } catch (InputException e) {
      throw new InputException(
          e.problems().stream()
              .map(
                  p ->
                      Problem.of(p.what(), "Check against another job")
                          .at(markerPath.toString(), 0))
              .toList());
    }
  }

  /** The job as the marker names it: seen from here, else from the marker's own folder upward. */
  private static Path named(Path markerPath, MarkerFile file) {
    Path name;
    try {
      name = Path.of(file.jobPath());
    } catch (InvalidPathException e) {
      throw notThere(markerPath, file);
    }
    if (Files.exists(name)) {
      return name;
    }
    for (Path folder = markerPath.toAbsolutePath().getParent();
        folder != null;
        folder = folder.getParent()) {
      Path beside = folder.resolve(name.getFileName());
      if (Files.exists(beside)) {
        return beside;
      }
    }
    throw notThere(markerPath, file);
  }

  private static InputException notThere(Path markerPath, MarkerFile file) {
    return new InputException(
        Problem.of(
                "the job it was made from, " + file.jobPath() + ", is not there",
                "Name the job with --job JOB.yaml")
            .at(markerPath.toString(), 0));
  }
}
