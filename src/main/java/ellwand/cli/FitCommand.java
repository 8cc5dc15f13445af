package ellwand.cli;

import ellwand.app.FitRun;
import ellwand.app.LayRun;
import ellwand.figures.FiguresText;
import ellwand.figures.Fitting;
import ellwand.file.job.JobReader;
import ellwand.file.source.Json;
import ellwand.job.Job;
import ellwand.units.Unit;
import ellwand.work.Request;
import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Says whether a job can be cut from a piece of cloth that is there. */
@Command(
    name = "fit",
    mixinStandardHelpOptions = true,
    description =
        "Says whether the pieces of one cloth fit on a remnant: yes with a marker, or no with the"
            + " pieces that do fit and the length that would be needed. Ends with code 1 for no.",
    footer = {
      "",
      "Example: fit sample-markers/tarn-waistcoat/job.yaml --on 'tweed offcut'",
      "Example: fit sample-markers/tarn-waistcoat/job.yaml --on '150cm x 1.2m' --most"
    })
final class FitCommand implements Callable<Integer> {

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

  @Mixin private JobMixin file;
  @Mixin private SearchMixin search;
  @Mixin private ShowMixin show;
  @ParentCommand private Main main;
  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    Job job = JobReader.read(file.path());
    Unit unit = show.unit().orElse(job.unit());
    Request request = search.request(main.stop());
    PrintWriter err = spec.commandLine().getErr();
    PrintWriter results = spec.commandLine().getOut();
    try (Console console = Console.open(err, request.effort(), unit)) {
      if (most) {
        int times = FitRun.most(job, on, cloth, request.with(console));
        results.println(show.json() ? times : Fitting.most(on, times, job.garmentCount()));
        return times > 0 ? Main.DONE : Main.RULE_BROKEN;
      }
      FitRun.Answer answer = FitRun.fit(job, on, cloth, request.with(console));
      show.print(
          results, () -> Json.bytes(answer.fitting()), () -> answer.fitting().sentences(unit));
      if (answer.marker().isEmpty()) {
        return Main.RULE_BROKEN;
      }
      LayRun.Made made = FitRun.made(job, answer, unit);
      LayRun.write(made, file.folder("-fit"))
          .forEach(written -> err.println("Written: " + written));
      if (!show.json()) {
        results.println(FiguresText.of(made.figures(), unit));
      }
      return Main.DONE;
    }
  }
}
