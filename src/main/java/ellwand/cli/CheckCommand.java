package ellwand.cli;

import ellwand.app.Answer;
import ellwand.app.CheckRun;
import ellwand.app.JobCheck;
import ellwand.app.Refusal;
import ellwand.file.source.Folder;
import ellwand.problem.InputException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Looks for everything that is wrong with a job or a marker. */
@Command(
    mixinStandardHelpOptions = true,
    description =
        "Reads a job and reports every problem with its place; or rebuilds the job of a marker.json"
            + " and reports every rule that the marker breaks.",
    footer = {
      "",
      "Example: check sample-markers/weir-jacket/job.yaml",
      "Example: check sample-markers/weir-jacket/job.yaml --lengths",
      "Example: check sample-markers/weir-jacket/marker/main.marker.json"
    })
final class CheckCommand implements Callable<Integer> {

  @Parameters(paramLabel = "JOB.yaml|X.marker.json", description = "A job, or a marker.")
  private Path path;

  @Option(
      names = "--job",
      paramLabel = "JOB.yaml",
      description = "Hold the marker against this job instead of the one that it names.")
  private Path job;

  @Option(
      names = "--lengths",
      description =
          "Tell of a job how long every edge is when sewn: darts closed, pleats folded, gathers"
              + " drawn up.")
  private boolean lengths;

  @Mixin private ShowMixin show;
  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    boolean marker = path.toString().endsWith(".json");
    if (job != null && !marker) {
      throw new ParameterException(
          spec.commandLine(), "--job goes with a marker: a job is not held against another");
    }
    if (lengths && marker) {
      throw new ParameterException(spec.commandLine(), "--lengths goes with a job");
    }
    PrintWriter out = spec.commandLine().getOut();
    Answer checked;
    try {
      checked =
          marker
              ? CheckRun.marker(
                  path.toString(),
                  Folder.DISK,
                  Optional.ofNullable(job).map(Path::toString),
                  show.unit())
              : JobCheck.of(path.toString(), Folder.DISK, show.unit(), lengths);
    } catch (InputException e) {
      if (show.json()) {
        // Here, what is wrong is the result.
        show.print(out, new Refusal(e.problems()));
      }
      throw e;
    }
    show.print(out, checked);
    checked.remarks().forEach(spec.commandLine().getErr()::println);
    return checked.achieved() ? Main.DONE : Main.RULE_BROKEN;
  }
}
