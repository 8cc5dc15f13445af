package ellwand.cli;

import ellwand.app.Answer;
import ellwand.app.CompareRun;
import ellwand.app.Hands;
import ellwand.job.Job;
import ellwand.many.JobFiles;
import ellwand.problem.InputException;
import ellwand.units.Unit;
import ellwand.work.Request;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Compares widths and ways of laying. */
@Command(
    mixinStandardHelpOptions = true,
    description =
        "Lays one cloth of a job in several widths and in every way in which it may lie: a table, a"
            + " chart, and what to buy.",
    footer = {
      "",
      "The effort is for all widths together and shared out evenly.",
      "",
      "Example: compare sample-markers/weir-jacket/job.yaml --widths 90cm,115cm,140cm",
      "Exit code 1: no width will do."
    })
final class CompareCommand extends RunCommand<Job> {

  @Option(
      names = "--widths",
      paramLabel = "WIDTH",
      split = ",",
      description =
          "Widths as bought, such as 90cm,115cm. Default: that of the job and those it has prices"
              + " for, or 90, 115, 140 and 150 cm where it has none.")
  private List<String> widths = List.of();

  @Option(names = "--cloth", paramLabel = "NAME", description = "Default: the job's first cloth.")
  private Optional<String> clothName;

  CompareCommand() {
    super(JobFiles::job, Job::unit, "-compare");
  }

  @Override
  Answer make(Job job, Unit shown, Request request, Hands hands) {
    CompareRun run = CompareRun.of(job, clothName).by(hands);
    List<Double> asked = widths.stream().map(text -> widthMm(run, text)).distinct().toList();
    return run.make(asked, shown, request);
  }

  private double widthMm(CompareRun run, String text) {
    try {
      return run.widthMm(text);
    } catch (InputException e) {
      throw new ParameterException(spec().commandLine(), "--widths: " + e.getMessage(), e);
    }
  }
}
