package ellwand.cli;

import ellwand.app.Answer;
import ellwand.app.FitRun;
import ellwand.app.Hands;
import ellwand.app.MostRun;
import ellwand.job.Job;
import ellwand.many.JobFiles;
import ellwand.units.Unit;
import ellwand.work.Request;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Says whether a job can be cut from a piece of cloth that is there. */
@Command(
    mixinStandardHelpOptions = true,
    description =
        "Says whether the pieces of one cloth fit on a remnant: yes with a marker, or no with the"
            + " pieces that do fit and the length that would be needed. Ends with code 1 for no.",
    footer = {
      "",
      "Example: fit sample-markers/tarn-waistcoat/job.yaml --on 'tweed offcut'",
      "Example: fit sample-markers/tarn-waistcoat/job.yaml --on '150cm x 1.2m' --most"
    })
final class FitCommand extends RunCommand<Job> {

  @Option(
      names = "--on",
      required = true,
      paramLabel = "REMNANT",
      description = "A remnant named in the job, or width x length: '150cm x 1.2m'.")
  private String on;

  @Option(
      names = "--cloth",
      paramLabel = "NAME",
      description = "Which cloth of the job width x length is a piece of. Default: the first.")
  private Optional<String> cloth;

  @Option(
      names = "--most",
      description =
          "Say how many garments can be cut from it, in whole orders of the job; with --json how"
              + " many times over, as a number.")
  private boolean most;

  FitCommand() {
    super(JobFiles::job, Job::unit, "-fit");
  }

  @Override
  Answer make(Job job, Unit shown, Request request, Hands hands) {
    return most
        ? MostRun.most(job, on, cloth, request, hands)
        : FitRun.fit(job, on, cloth, shown, request, hands);
  }
}
