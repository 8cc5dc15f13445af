package ellwand.bench;

import ellwand.app.LaidJob;
import ellwand.app.LayRun;
import ellwand.cloth.Fold;
import ellwand.figures.Figures;
import ellwand.file.job.JobReader;
import ellwand.job.Job;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.nest.Nester;
import ellwand.work.Effort;
import ellwand.work.Progress;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Measures whole lays: the sample jobs at several efforts, and styles made at random. */
@Command(
    name = "lays",
    description =
        "Lays jobs at several efforts and tells first and last length; every marker is checked.",
    mixinStandardHelpOptions = true,
    sortOptions = false)
public final class Lays implements Callable<Integer> {

  @Parameters(paramLabel = "JOB.yaml", arity = "0..*", description = "Jobs to lay.")
  private List<Path> jobs = List.of();

  @Option(
      names = "--seconds",
      split = ",",
      defaultValue = "5,30,120",
      description = "Efforts for each cloth; default ${DEFAULT-VALUE}.")
  private List<Double> seconds;

  @Option(names = "--seed", defaultValue = "1", description = "Default ${DEFAULT-VALUE}.")
  private long seed;

  @Option(names = "--threads", defaultValue = "2", description = "Default ${DEFAULT-VALUE}.")
  private int threads;

  @Option(
      names = "--generated",
      defaultValue = "0",
      description = "Lay so many styles made at random, seeds 1 to N, at the first effort.")
  private int generated;

  private Lays() {}

  public static void main(String[] args) {
    System.exit(new CommandLine(new Lays()).execute(args));
  }

  @Override
  public Integer call() {
    System.out.println(
        "lay                            seed threads seconds  first legal    first mm     last mm"
            + "  used %");
    jobs.forEach(this::layJob);
    if (generated > 0) {
      layGenerated();
    }
    return 0;
  }

  private void layJob(Path path) {
    Job job = JobReader.read(path);
    for (double effort : seconds) {
      Map<String, Progress.Shorter> first = new HashMap<>();
      LaidJob made =
          LayRun.make(
              job, job.unit(), request(effort, found -> first.putIfAbsent(found.cloth(), found)));
      for (Figures cloth : made.figures().cloths()) {
        row(
            job.style().name() + ", " + cloth.lies().cloth(),
            seed,
            effort,
            first.get(cloth.lies().cloth()),
            cloth.lengths().markerMm(),
            cloth.areas().utilisation());
      }
    }
  }

  private void layGenerated() {
    int shorter = 0;
    for (int style = 1; style <= generated; style++) {
      Lay lay = GeneratedLay.of(style);
      Fold fold = lay.cloth().folds().get(0);
      Progress.Shorter[] first = new Progress.Shorter[1];
      Marker marker =
          Nester.nest(
              lay,
              fold,
              request(seconds.get(0), found -> first[0] = first[0] == null ? found : first[0]));
      row(
          lay.style() + ", " + fold.words() + ", " + marker.copies().size() + " copies",
          style,
          seconds.get(0),
          first[0],
          marker.lengthMm(),
          marker.utilisation());
      shorter += marker.lengthMm() < first[0].clothMm() ? 1 : 0;
    }
    System.out.println(
        "shorter than the first marker: " + shorter + " of " + generated + " generated styles");
  }

  private Request request(double effort, Consumer<Progress.Shorter> hearing) {
    return Request.of(Effort.ofSeconds(effort), new Seed(seed))
        .onThreads(threads)
        .with((Progress) news -> hearing.accept((Progress.Shorter) news));
  }

  private void row(
      String name, long number, double effort, Progress.Shorter first, double lastMm, double used) {
    System.out.printf(
        Locale.ROOT,
        "%-32s %4d %6d %7.0f %11.2fs %11.1f %11.1f %7.2f%n",
        name,
        number,
        threads,
        effort,
        first.seconds(),
        first.clothMm(),
        lastMm,
        100 * used);
  }
}
