package ellwand.app;

import ellwand.cloth.Cloth;
import ellwand.figures.EdgeLength;
import ellwand.file.job.JobReader;
import ellwand.file.job.OrderJobReader;
import ellwand.file.source.Folder;
import ellwand.job.Job;
import ellwand.job.OrderJob;
import ellwand.lay.Lay;
import ellwand.problem.InputException;
import ellwand.units.Unit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Reads all of a job or an order, down to its cutting lines, without laying it. */
public final class JobCheck {

  private JobCheck() {}

  /**
   * Reads a job or an order and cuts all its pieces in every size.
   *
   * @param name of the job: its path, or a name for it
   * @param unit that lengths are shown in; if absent, that of the job
   * @throws InputException with every problem of the job
   */
  public static CheckedJob of(String name, Folder from, Optional<Unit> unit) {
    return of(name, from, unit, false);
  }

  /**
   * The same, perhaps with how long every edge is when it is sewn.
   *
   * @throws InputException with every problem of the job
   */
  public static CheckedJob of(String name, Folder from, Optional<Unit> unit, boolean lengths) {
    if (!OrderJobReader.isOrder(name, from)) {
      return of(JobReader.read(name, from), unit, lengths);
    }
    OrderJob order = OrderJobReader.read(name, from);
    return order
        .style()
        .map(garments -> of(garments, unit, lengths))
        .orElseGet(
            () ->
                new CheckedJob(
                    order.origin(), List.of(), List.of(), List.of(), unit.orElse(order.unit())));
  }

  private static CheckedJob of(Job read, Optional<Unit> unit, boolean lengths) {
    Map<String, Integer> everySize = new LinkedHashMap<>();
    read.style().sizes().forEach(size -> everySize.put(size, 1));
    Job job = read.withGarments(everySize);
    List<Lay> lays = job.cloths().stream().map(cloth -> JobLays.of(job, cloth)).toList();
    Unit shown = unit.orElse(job.unit());
    Foreseen.refuse(job, lays, shown);
    return new CheckedJob(
        job.origin(),
        of(job, cloth -> JobLays.notes(job, cloth, shown)),
        of(job, cloth -> JobLays.doubts(job, cloth, shown)),
        lengths ? EdgeLength.of(job.style()) : List.of(),
        shown);
  }

  private static List<String> of(Job job, Function<Cloth, List<String>> said) {
    return job.cloths().stream().flatMap(c -> said.apply(c).stream()).distinct().toList();
  }
}
