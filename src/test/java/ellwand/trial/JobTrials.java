package ellwand.trial;

import com.fasterxml.jackson.databind.ObjectMapper;
import ellwand.trial.JobTrial.Ending;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.logging.Level;
import java.util.logging.Logger;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Lays many jobs made at random and judges each marker. */
@Command(
    name = "trial",
    description = "Lays jobs made at random; a judge that shares nothing with the program judges.",
    mixinStandardHelpOptions = true,
    sortOptions = false)
public final class JobTrials implements Callable<Integer> {

  private static final double SLOW_SECONDS = 60;

  @Option(names = "--jobs", defaultValue = "1000", description = "Default ${DEFAULT-VALUE}.")
  private int jobs;

  @Option(
      names = "--seed",
      defaultValue = "1",
      description = "Number of the first job; default ${DEFAULT-VALUE}.")
  private long seed;

  @Option(
      names = "--steps",
      defaultValue = "3",
      description = "Effort for each cloth; default ${DEFAULT-VALUE}.")
  private int steps;

  @Option(names = "--drawn", description = "Make the drawings and sheets, too.")
  private boolean drawn;

  @Option(
      names = "--keep",
      paramLabel = "DIR",
      description = "Write the jobs that went wrong there.")
  private Path keep;

  private JobTrials() {}

  public static void main(String[] args) {
    Logger.getLogger("io.micrometer").setLevel(Level.OFF);
    System.exit(new CommandLine(new JobTrials()).execute(args));
  }

  @Override
  public Integer call() throws IOException {
    Map<Ending, Integer> endings = new EnumMap<>(Ending.class);
    Map<String, Integer> reasons = new TreeMap<>();
    boolean wrong = false;
    for (long number = seed; number < seed + jobs; number++) {
      long began = System.nanoTime();
      JobTrial trial = JobTrial.of(number, steps, drawn);
      double seconds = (System.nanoTime() - began) / 1e9;
      endings.merge(trial.ending(), 1, Integer::sum);
      if (trial.ending() == Ending.REFUSED) {
        reasons.merge(trial.said().get(0).replaceAll("[-0-9./]+", "#"), 1, Integer::sum);
      }
      if (seconds > SLOW_SECONDS) {
        System.out.printf("job %d took %.0f s%n", number, seconds);
      }
      if ((number - seed) % 100 == 99) {
        System.err.println(number - seed + 1 + " jobs: " + endings);
      }
      if (trial.wrong()) {
        wrong = true;
        System.out.println("job " + number + " " + trial.ending());
        trial.said().forEach(line -> System.out.println("  " + line));
        if (keep != null) {
          Files.createDirectories(keep);
          new ObjectMapper()
              .writerWithDefaultPrettyPrinter()
              .writeValue(keep.resolve(number + ".yaml").toFile(), RandomJob.of(number));
        }
      }
    }
    reasons.forEach((reason, times) -> System.out.println(times + " x " + reason));
    System.out.println(endings);
    return wrong ? 1 : 0;
  }
}
