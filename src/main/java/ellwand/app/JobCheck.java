package ellwand.app;

import ellwand.file.job.JobReader;
import ellwand.file.source.Folder;
import ellwand.job.Job;
import ellwand.nest.repeat.Matching;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Unit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads all of a job, down to its cutting lines, without laying it. */
public final class JobCheck {

  private JobCheck() {}

  /**
   * Reads a job and cuts all its pieces in every size.
   *
   * @param name of the job: its path, or a name for it
   * @param unit that lengths are shown in; if absent, that of the job
   * @throws InputException with every problem of the job
   */
  public static CheckedJob of(String name, Folder from, Optional<Unit> unit) {
    Job read = JobReader.read(name, from);
    Map<String, Integer> everySize = new LinkedHashMap<>();
    read.style().sizes().forEach(size -> everySize.put(size, 1));
    Job job = read.withGarments(everySize);
    List<Problem> unmatched =
        job.cloths().stream()
            .flatMap(cloth -> Matching.problems(JobLays.of(job, cloth)).stream())
            .distinct()
            .toList();
    if (!unmatched.isEmpty()) {
      throw new InputException(unmatched);
    }
    return new CheckedJob(
        job.origin(),
        job.cloths().stream()
            .flatMap(cloth -> JobLays.cautions(job, cloth, unit.orElse(job.unit())).stream())
            .distinct()
            .toList());
  }
}
