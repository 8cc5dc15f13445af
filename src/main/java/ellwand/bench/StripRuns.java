package ellwand.bench;

import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lays public instances and tells how dense the layouts are. */
@Command(
    name = "run",
    description = "Lays instances of strip packing and checks and measures the layouts.",
    mixinStandardHelpOptions = true,
    sortOptions = false)
public final class StripRuns implements Callable<Integer> {

  @Parameters(
      paramLabel = "FILE-or-DIR",
      arity = "1..*",
      description = "Instances in ESICUP XML, or directories of them.")
  private List<Path> paths;

  @Option(
      names = "--seconds",
      defaultValue = "30",
      description = "For each; default ${DEFAULT-VALUE}.")
  private double seconds;

  @Option(names = "--steps", description = "Steps for each instead of seconds; such a run repeats.")
  private Long steps;

  @Option(names = "--seed", defaultValue = "1", description = "Default ${DEFAULT-VALUE}.")
  private long seed;

  @Option(names = "--threads", defaultValue = "1", description = "Default ${DEFAULT-VALUE}.")
  private int threads;

  @Option(
      names = "--rotations",
      split = ",",
      description = "Degrees allowed for every item, for example 0,180, instead of its own.")
  private List<Double> rotations;

  @Option(
      names = "--scale",
      split = ",",
      description = "Measure each instance with its demands raised to so many copies.")
  private List<Integer> scale;

  @Option(names = "--out", paramLabel = "RESULT.json", description = "Where results are written.")
  private Path out;

  @Option(names = "--draw", paramLabel = "DIR", description = "Where drawings are written.")
  private Path draw;

  public static void main(String[] arguments) {
    Locale.setDefault(Locale.ROOT);
    System.exit(
        new CommandLine(new StripRuns())
            .setExecutionExceptionHandler(
                (e, line, parsed) -> {
                  if (e instanceof IOException || e instanceof IllegalArgumentException) {
                    line.getErr().println(e.getMessage());
                    return 2;
                  }
                  throw e;
                })
            .execute(arguments));
  }

  @Override
  public Integer call() throws IOException {
    List<Instance> instances = instances();
    List<Result> results = new ArrayList<>();
    boolean legal = true;
    System.out.printf(
        "%-18s %6s %5s %7s %8s %9s %8s %8s %10s %8s%n",
        "instance",
        "copies",
        "seed",
        "threads",
        "seconds",
        "density",
        "first s",
        "to 2% s",
        "poses/s",
        "heap MB");
    for (Instance instance : instances) {
      PeakHeap.reset();
      Result result = Trial.run(instance, Request.of(effort(), new Seed(seed)).onThreads(threads));
      long heap = PeakHeap.megabytes();
      List<String> faults = Judge.faults(instance, result.placed());
      faults.forEach(f -> System.err.println(instance.name() + ": " + f));
      legal &= faults.isEmpty();
      results.add(result);
      print(result, heap);
      if (draw != null) {
        ResultDrawing.write(draw, result);
      }
    }
    if (out != null) {
      ResultFile.write(out, results);
    }
    return legal ? 0 : 1;
  }

  private void print(Result result, long heap) {
    System.out.printf(
        "%-18s %6d %5d %7d %8.1f %8.3f%% %8.2f %8.2f %10.0f %8d%n",
        result.instance().name(),
        result.placed().size(),
        seed,
        threads,
        result.seconds(),
        100 * result.density(),
        result.firstLegalSeconds(),
        result.secondsToWithin(0.02),
        result.moves() / result.seconds(),
        heap);
  }

  private Effort effort() {
    return steps != null ? Effort.ofSteps(steps) : Effort.ofSeconds(seconds);
  }

  private List<Instance> instances() throws IOException {
    List<Instance> instances = new ArrayList<>();
    for (Path path : paths) {
      for (Path file : InstanceFile.in(path)) {
        Instance read = InstanceFile.read(file);
        Instance instance = rotations == null ? read : read.turned(rotations);
        if (scale == null) {
          instances.add(instance);
        } else {
          scale.forEach(copies -> instances.add(instance.enlarged(copies)));
        }
      }
    }
    return instances;
  }
}
