package ellwand.cli;

import ellwand.problem.InputException;
import ellwand.work.Effort;
import ellwand.work.Progress;
import ellwand.work.Request;
import ellwand.work.Seed;
import ellwand.work.Stop;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** Options of every command that searches for markers. */
final class SearchMixin {

  /** More is hardly meant. */
  private static final int MOST_SEEDS = 1_000;

  @Option(
      names = "--effort",
      paramLabel = "TIME|STEPS",
      converter = EffortConverter.class,
      description =
          "Search for each cloth: a time (30s, 2min), counted from the first marker on, or steps"
              + " (5000steps; the same steps, seed and threads give the same marker). Default: as"
              + " long as it pays, which is until as long again as it took to the last gain has"
              + " brought nothing, for 1 s at least and 15 s at most.")
  private Effort effort = Effort.asLongAsItPays(1, 15);

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description = "Another seed tries another way. Default: ${DEFAULT-VALUE}.")
  private long seed;

  @Option(
      names = "--threads",
      paramLabel = "N",
      description = "Processors to use. Default: all; for each search of helpers 1.")
  private Optional<Integer> threads = Optional.empty();

  @Option(
      names = "--seeds",
      paramLabel = "N",
      defaultValue = "1",
      description =
          "Let so many seeds race for each marker, each with all of the effort; for its last part"
              + " all go on from the best. Worth it where as many cores are free. Default:"
              + " ${DEFAULT-VALUE}.")
  private int seeds;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  /** What is asked of a search; nobody hears of it yet. */
  Request request(Stop stop) {
    // Seeds that race share the processors.
    int threads = Math.max(1, cores() / seeds());
    return new Request(effort, new Seed(seed), threads, stop, Progress.NONE);
  }

  /** The same where others may help, who have other numbers of cores. */
  Request shared(Stop stop) {
    return request(stop).onThreads(threads.isPresent() ? cores() : 1);
  }

  /** How many seeds race for each marker. */
  int seeds() {
    if (seeds < 1 || seeds > MOST_SEEDS) {
      throw new ParameterException(
          spec.commandLine(), "--seeds takes a number from 1 to " + MOST_SEEDS);
    }
    return seeds;
  }

  /** How many cores of this machine may be used. */
  int cores() {
    int number = threads.orElseGet(Runtime.getRuntime()::availableProcessors);
    if (number < 1) {
      throw new ParameterException(spec.commandLine(), "--threads takes a number from 1 up");
    }
    return number;
  }

  /** Reads an effort. */
  static final class EffortConverter implements ITypeConverter<Effort> {
    @Override
    public Effort convert(String text) {
      try {
        return Effort.parse(text);
      } catch (InputException e) {
        throw new TypeConversionException(e.getMessage());
      }
    }
  }
}
